import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { createActor, fromPromise, type SnapshotFrom } from 'xstate';
import { type SortEvent, sortMachine } from '../flows/sort.ts';
import type { SortWork } from '../flows/sort-work.ts';
import type { PickupSheet } from '../notebook/index.ts';
import { show, useDrawn } from './answered.ts';
import { type Ports, usePorts } from './ports.ts';

export type SortSnapshot = SnapshotFrom<ReturnType<typeof sortMachine>>;
type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
/** What a screen says to the sorter; the moment is added on the way. */
export type SortSay = (said: DistributiveOmit<SortEvent, 'at'>) => void;

export interface SortRoom {
  readonly snapshot: ReadonlySignal<SortSnapshot>;
  readonly say: SortSay;
  /** The sheet as it stands, stored or not. */
  sheet(): PickupSheet;
}

/** The sorting of this sheet's pickup for as long as the component stands. */
export function useSort(sheet: PickupSheet): SortRoom {
  const ports = usePorts();
  const room = useMemo(() => startSort(sheet, ports), [sheet, ports]);
  useEffect(() => () => room.stop(), [room]);
  useDrawn(room.snapshot.value);
  return room;
}

/** The sorting began on a sheet, and every act hands back the rest of the object. */
const asSheet = (work: SortWork): PickupSheet => work as PickupSheet;

function startSort(sheet: PickupSheet, ports: Ports): SortRoom & { stop(): void } {
  const machine = sortMachine().provide({
    actors: {
      sort: fromPromise(({ input }) => ports.engine.sort(input)),
      save: fromPromise(
        async ({ input }) => (await ports.notebook.sheets.write(asSheet(input))) as PickupSheet,
      ),
    },
  });
  const actor = createActor(machine, { input: { work: sheet } });
  const snapshot = signal(actor.getSnapshot());
  actor.subscribe((next) => show(snapshot, next));
  actor.start();
  const unwatch = ports.notebook.watch(({ id, what }) => {
    if (id !== sheet.id || what !== 'written') return;
    ports.notebook.sheets.read(id).then(
      (work) => {
        if (work.format === 'lugwise-pickup') actor.send({ type: 'CHANGED_ELSEWHERE', work });
      },
      () => {
        // It is joined with the next act that is stored here.
      },
    );
  });
  snapshot.value = actor.getSnapshot();
  return {
    snapshot,
    say: (said) => actor.send({ ...said, at: ports.now() } as SortEvent),
    sheet: () => asSheet(snapshot.value.context.work),
    stop: () => {
      unwatch();
      actor.stop();
    },
  };
}
