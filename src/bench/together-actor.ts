import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { createActor, fromPromise, type SnapshotFrom } from 'xstate';
import { type TogetherEvent, type TogetherWork, togetherMachine } from '../flows/together.ts';
import type { TogetherSheet } from '../notebook/index.ts';
import { show, useDrawn } from './answered.ts';
import { type Ports, usePorts } from './ports.ts';

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
/** What a screen says; the moment is added on the way. */
export type TogetherSay = (said: DistributiveOmit<TogetherEvent, 'at'>) => void;

export type TogetherSnapshot = SnapshotFrom<ReturnType<typeof togetherMachine>>;

export interface TogetherRoom {
  readonly snapshot: ReadonlySignal<TogetherSnapshot>;
  readonly say: TogetherSay;
  /** The sheet as it stands, stored or not. */
  sheet(): TogetherSheet;
}

export function useTogether(sheet: TogetherSheet): TogetherRoom {
  const ports = usePorts();
  const room = useMemo(() => start(sheet, ports), [sheet, ports]);
  useEffect(() => () => room.stop(), [room]);
  useDrawn(room.snapshot.value);
  return room;
}

/** It began on a sheet, and every act hands back the rest of the object. */
const asSheet = (work: TogetherWork): TogetherSheet => work as TogetherSheet;

function start(sheet: TogetherSheet, ports: Ports): TogetherRoom & { stop(): void } {
  const { sheets } = ports.notebook;
  const machine = togetherMachine().provide({
    actors: {
      save: fromPromise(async ({ input }) => (await sheets.write(asSheet(input))) as TogetherSheet),
    },
  });
  const actor = createActor(machine, { input: { work: sheet } });
  const snapshot = signal(actor.getSnapshot());
  actor.subscribe((next) => show(snapshot, next));
  actor.start();
  snapshot.value = actor.getSnapshot();
  const unwatch = ports.notebook.watch(({ id, what }) => {
    if (id !== sheet.id || what !== 'written') return;
    sheets.read(id).then(
      (work) => {
        if (work.format === 'lugwise-together') actor.send({ type: 'CHANGED_ELSEWHERE', work });
      },
      () => {
        // It is joined with the next act that is stored here.
      },
    );
  });
  return {
    snapshot,
    say: (said) => actor.send({ ...said, at: ports.now() } as TogetherEvent),
    sheet: () => asSheet(snapshot.value.context.work),
    stop: () => {
      unwatch();
      actor.stop();
    },
  };
}
