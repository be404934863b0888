import { type ReadonlySignal, signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { createActor, fromPromise, type SnapshotFrom } from 'xstate';
import type { Evidence } from '../diagnosis/assessment.ts';
import {
  evidenceOf,
  type HuntEvent,
  huntMachine,
  listeningPlaces,
  type Work,
} from '../flows/index.ts';
import type { Job } from '../notebook/job.ts';
import type { Reading } from '../readings/reading.ts';
import { markAnswered, show } from './answered.ts';
import { nextTask } from './next-task.ts';
import { painted } from './pieces/after-paint.ts';
import { type Ports, usePorts } from './ports.ts';
import { asTaken, toldOf } from './told.ts';
import { typedAhead } from './typed-ahead.ts';

export type HuntSnapshot = SnapshotFrom<ReturnType<typeof huntMachine>>;
type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
/** What a screen says to the hunt; the moment is added on the way. */
export type Said = DistributiveOmit<HuntEvent, 'at'>;
export type Say = (said: Said) => void;
/** A screen that says no more than these may stand in other conversations that know them. */
export type Says<Type extends Said['type']> = (said: Extract<Said, { type: Type }>) => void;

export interface Hunt {
  readonly snapshot: ReadonlySignal<HuntSnapshot>;
  readonly say: Say;
  /** The job as it stands, stored or not. */
  job(): Job;
}

/** A hunt on this job for as long as the component stands; undefined until it has begun, which takes several tasks. */
export function useHunt(job: Job): Hunt | undefined {
  const ports = usePorts();
  const [hunt, setHunt] = useState<Hunt>();
  useEffect(() => {
    let [here, stop] = [true, () => {}];
    void (async () => {
      const begun = await startHunt(job, ports, () => here);
      if (!begun) return;
      stop = begun.stop;
      setHunt(begun);
    })();
    return () => {
      here = false;
      stop();
    };
  }, [job, ports]);
  return hunt;
}

/**
 * While the first words are read and what is heard is told, the engine can get to know the circuit and how it sounds in each
 * position; what it answers comes too early to be used.
 */
function warmUp({ engine }: Ports, work: Work): void {
  if (work.cautionsReadAt || work.closedAt) return;
  const evidence = evidenceOf(work);
  const heard = listeningPlaces(work.circuit).map(
    ({ ask }, at): Reading => ({
      id: `foreseen${at}`,
      ask,
      seen: { kind: 'listen', heard: 'normal' },
      at: '',
      round: 0,
    }),
  );
  const readings = evidence.readings.length > 0 ? evidence.readings : heard;
  engine.foresee({ ...evidence, readings });
}

/** Work shorter than this has no screen of its own, milliseconds: the one that was answered stays, and takes no second answer. */
const UNSEEN = 150;
const ANSWERS: ReadonlySet<Said['type']> = new Set([
  'HEARD',
  'SKIP',
  'CAUTIONS_READ',
  'ENTER',
  'ENTERED_RIGHT',
  'TAKE_BETTER',
  'JUMPS_AT',
  'CANNOT_REACH',
  'OPENED',
  'ON',
  'UNDO',
  'PUT_BACK',
]);
const WORKING = ['saving', 'placing', 'standing', 'assessing', 'expecting', 'onward'] as const;
const isWorking = (snapshot: HuntSnapshot) =>
  WORKING.some((state) => snapshot.matches(state)) ||
  (snapshot.matches('taking') && !showsChange(snapshot));

/** Whether what the newest reading changed is on the screen: not, once something else is wished for. */
export const showsChange = (snapshot: HuntSnapshot): boolean =>
  snapshot.context.change !== null &&
  (snapshot.matches('changed') || (snapshot.matches('taking') && snapshot.context.wish === null));

/** The hunt began on a job, and every act hands back the rest of the object: fields taken out stay out. */
const asJob = (work: Work): Job => work as Job;

/** @param wanted whether it still is; where it is not, nothing was begun */
async function startHunt(
  job: Job,
  ports: Ports,
  wanted: () => boolean,
): Promise<(Hunt & { stop(): void }) | null> {
  // Each of these takes long enough for a task of its own.
  huntMachine();
  await nextTask();
  const assess = (evidence: Evidence) => ports.engine.assess(asTaken(evidence));
  const machine = huntMachine().provide({
    actors: {
      stand: fromPromise(({ input }) => ports.engine.stand(asTaken(input))),
      assess: fromPromise(({ input }) => assess(input)),
      assessMeanwhile: fromPromise(async ({ input, signal }) => {
        // A slow phone has its hands full until the screen stands.
        await painted();
        // Asked now, it would put out of date what was asked since.
        if (signal.aborted) throw signal.reason;
        return assess(input);
      }),
      expect: fromPromise(({ input: { work, ask } }) =>
        ports.engine.expect({ circuit: work.circuit, meter: work.meter, ask }),
      ),
      save: fromPromise(({ input }): Promise<Work> => {
        // What follows from it is worked out while it is stored; of an answer, what it changed, first.
        if (input.closedAt === undefined && !actor.getSnapshot().matches('taking'))
          ports.engine.foresee(toldOf(input));
        return ports.notebook.write(asJob(input));
      }),
    },
  });
  await nextTask();
  const actor = createActor(machine, { input: { work: job } });
  await nextTask();
  if (!wanted()) return null;
  const snapshot = signal(actor.getSnapshot());
  let calm = false;
  let holding: ReturnType<typeof setTimeout> | undefined;
  const showNow = () => {
    clearTimeout(holding);
    const next = actor.getSnapshot();
    // It stood there while it was worked out, and is drawn anew or not at all.
    if (holding !== undefined) markAnswered(next !== snapshot.value);
    [calm, holding] = [false, undefined];
    show(snapshot, next);
    // Taking a guitar apart takes minutes, in which it is worked out what to read inside.
    if (next.matches('opening'))
      ports.engine.foresee(toldOf({ ...next.context.work, access: 'open' }));
  };
  actor.subscribe((next) => {
    if (!calm || !isWorking(next)) showNow();
    else if (holding === undefined) {
      holding = setTimeout(showNow, UNSEEN);
      markAnswered(true);
    }
  });
  actor.start();
  const unwatch = ports.notebook.watch(({ id, what }) => {
    if (id !== job.id || what !== 'written') return;
    ports.notebook.read(id).then(
      (work) => actor.send({ type: 'CHANGED_ELSEWHERE', work }),
      () => {
        // It is joined with the next act that is stored here.
      },
    );
  });
  snapshot.value = actor.getSnapshot();
  setTimeout(() => wanted() && warmUp(ports, job), 0);
  const ahead = typedAhead(ports);
  return {
    snapshot,
    say(said) {
      const { work, question } = actor.getSnapshot().context;
      if (said.type === 'TYPE' && question) ahead.typed(work, question.ask, said.text);
      else ahead.forget();
      calm = ANSWERS.has(said.type);
      actor.send({ ...said, at: ports.now() } as HuntEvent);
    },
    job: () => asJob(snapshot.value.context.work),
    stop: () => {
      clearTimeout(holding);
      unwatch();
      ahead.forget();
      actor.stop();
    },
  };
}
