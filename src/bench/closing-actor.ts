import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { createActor, fromPromise, type SnapshotFrom } from 'xstate';
import { type ClosingEvent, closingMachine, type Work } from '../flows/index.ts';
import type { Job } from '../notebook/job.ts';
import { show, useDrawn } from './answered.ts';
import { type Ports, usePorts } from './ports.ts';

export type ClosingSnapshot = SnapshotFrom<ReturnType<typeof closingMachine>>;
type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
/** What a screen says to the closing check; the moment is added on the way. */
export type ClosingSay = (said: DistributiveOmit<ClosingEvent, 'at'>) => void;

interface ClosingCheck {
  readonly snapshot: ReadonlySignal<ClosingSnapshot>;
  readonly say: ClosingSay;
  /** The job as it stands, stored or not. */
  job(): Job;
}

/** A closing check on this job for as long as the component stands. */
export function useClosing(job: Job): ClosingCheck {
  const ports = usePorts();
  const check = useMemo(() => startClosing(job, ports), [job, ports]);
  useEffect(() => () => check.stop(), [check]);
  useDrawn(check.snapshot.value);
  return check;
}

/** The check began on a job, and every act hands back the rest of the object. */
const asJob = (work: Work): Job => work as Job;

function startClosing(job: Job, ports: Ports): ClosingCheck & { stop(): void } {
  const machine = closingMachine().provide({
    actors: {
      check: fromPromise(({ input }) => ports.engine.close(input)),
      save: fromPromise(({ input }): Promise<Work> => ports.notebook.write(asJob(input))),
    },
  });
  const actor = createActor(machine, { input: { work: job } });
  const snapshot = signal(actor.getSnapshot());
  actor.subscribe((next) => show(snapshot, next));
  actor.start();
  snapshot.value = actor.getSnapshot();
  const unwatch = ports.notebook.watch(({ id, what }) => {
    if (id !== job.id || what !== 'written') return;
    ports.notebook.read(id).then(
      (work) => actor.send({ type: 'CHANGED_ELSEWHERE', work }),
      () => {
        // It is joined with the next act that is stored here.
      },
    );
  });
  return {
    snapshot,
    say: (said) => actor.send({ ...said, at: ports.now() } as ClosingEvent),
    job: () => asJob(snapshot.value.context.work),
    stop: () => {
      unwatch();
      actor.stop();
    },
  };
}
