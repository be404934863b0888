import { describe, expect, it } from 'vitest';
import { createActor, fromPromise, type Snapshot } from 'xstate';
import { ohms } from '../circuit/units.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import type { Ask } from '../readings/reading.ts';
import { sameAsk } from './acts.ts';
import type { HuntContext, HuntEvent } from './conversation.ts';
import {
  assessment,
  atJack,
  closedWork,
  inside,
  listening,
  next,
  ready,
  verdict,
} from './hunt.fixture.ts';
import { huntMachine } from './hunt.ts';

/** Every path of the hunt, up to a length, walked; what is the same place reached in two ways is gone on from once. */
const LENGTH = Number(process.env['LUGWISE_PATHS'] ?? 5);
const MOMENT = '2030-01-02T00:00:00.000Z';
const at = { at: MOMENT };
const third: Ask = {
  kind: 'ohms',
  red: 'bridgeVolume.2',
  black: 'jack.sleeve',
  setting: atJack.setting,
};
const asks = [atJack, inside, third];

/** An engine that asks what is left, and knows the fault after two readings. */
function engine({ readings, repairs, refused }: Evidence): Assessment {
  const round = readings.filter((one) => one.round === repairs.length && one.seen.kind === 'ohms');
  const open = asks.filter(
    (ask) =>
      !round.some((one) => sameAsk(one.ask, ask)) && !refused.some((one) => sameAsk(one, ask)),
  );
  const done = round.length >= 2;
  return assessment({
    next: done ? [] : open.map((ask) => next(ask)),
    verdict: done ? verdict : null,
  });
}

interface Step {
  readonly event: HuntEvent;
  /** The port that fails while the event is worked on. */
  readonly fails?: 'save' | 'stand' | 'assess' | 'expect';
}
const says = (event: HuntEvent, fails?: Step['fails']): Step => ({
  event,
  ...(fails && { fails }),
});
const figure = { kind: 'ohms', ohms: ohms(7400) } as const;
const steps: readonly Step[] = [
  says({
    type: 'HEARD',
    answers: [{ ask: listening, seen: { kind: 'listen', heard: 'silent' } }],
    ...at,
  }),
  says({ type: 'SKIP' }),
  says({ type: 'CAUTIONS_READ', ...at }),
  says({ type: 'CAUTIONS_READ', ...at }, 'save'),
  says({ type: 'CAUTIONS_READ', ...at }, 'assess'),
  says({ type: 'ENTER', seen: figure, ...at }),
  says({ type: 'ENTER', seen: figure, ...at }, 'save'),
  says({ type: 'ENTER', seen: figure, ...at }, 'stand'),
  // A k left out: asked about before it is kept.
  says({ type: 'ENTER', seen: { kind: 'ohms', ohms: ohms(7.4) }, ...at }),
  says({ type: 'ENTERED_RIGHT', ...at }),
  says({ type: 'TAKE_BETTER', ...at }),
  says({ type: 'CANNOT_REACH', ...at }),
  says({ type: 'JUMPS' }),
  says({ type: 'JUMPS_AT', site: 'jackHot', ...at }),
  says({ type: 'HELP' }),
  says({ type: 'BACK' }),
  says({ type: 'VOLUNTEER' }),
  says({ type: 'OWN_ASK', ask: third }),
  says({ type: 'OWN_ASK', ask: third }, 'expect'),
  says({ type: 'OPENED', ...at }),
  says({ type: 'STAY_CLOSED' }),
  says({ type: 'ON' }),
  says({ type: 'TO_REPAIR' }),
  says({ type: 'REPAIRED', repair: 'coil', title: 'Mend the coil', ...at }),
  says({ type: 'CLOSE', ...at }),
  says({ type: 'REOPEN', ...at }),
  says({ type: 'RETRY' }),
  says({ type: 'GO_ON_UNSAVED' }),
  says({ type: 'UNDO', ...at }),
  says({ type: 'PUT_BACK' }),
];
/** What another tab or the values screen says; a state that knows nothing else holds the person fast. */
const own = steps.filter(({ event }) => !['OWN_ASK', 'UNDO', 'PUT_BACK'].includes(event.type));

/** An open guitar with one reading taken. */
const underWay: HuntContext['work'] = {
  ...ready,
  access: 'open',
  readings: [{ id: 'first', ask: atJack, seen: figure, ...at, round: 0 }],
};

interface Place {
  readonly snapshot: Snapshot<unknown>;
  readonly value: string;
  readonly context: HuntContext;
  /** What is on the disk. */
  readonly disk: HuntContext['work'] | null;
  readonly path: readonly string[];
}

async function walk(
  from: Place | null,
  step: Step | null,
  work: HuntContext['work'] = closedWork,
): Promise<Place | null> {
  let disk = from?.disk ?? null;
  const failing = (port: Step['fails']) => step?.fails === port;
  const machine = huntMachine().provide({
    actors: {
      stand: fromPromise(async ({ input }) => {
        if (failing('stand')) throw new Error('The engine stopped.');
        return engine(input);
      }),
      assess: fromPromise(async ({ input }) => {
        if (failing('assess')) throw new Error('The engine stopped.');
        return engine(input);
      }),
      expect: fromPromise(async () => {
        if (failing('expect')) throw new Error('There is no such point.');
        return { text: '7.4 kΩ' };
      }),
      save: fromPromise(async ({ input }) => {
        if (failing('save')) throw new Error('The phone is full.');
        disk = input;
        return input;
      }),
    },
  });
  const options = { input: { work } };
  const actor = from
    ? createActor(machine, { ...options, snapshot: from.snapshot as never })
    : createActor(machine, options);
  actor.start();
  if (step) {
    if (!actor.getSnapshot().can(step.event)) return null;
    actor.send(step.event);
  }
  // Every port answers at once: what is left to do is a few turns of promises.
  for (let turn = 0; turn < 40; turn += 1) await Promise.resolve();
  const { value, context } = actor.getSnapshot();
  const snapshot = actor.getPersistedSnapshot();
  actor.stop();
  const name = step ? `${step.event.type}${step.fails ? ` (${step.fails} fails)` : ''}` : 'start';
  return {
    snapshot,
    value: JSON.stringify(value),
    context,
    disk,
    path: [...(from?.path ?? []), name],
  };
}

const placeKey = ({
  value,
  context: { work, question, typed, doubt, newest, takenBack, staysClosed },
}: Place) =>
  JSON.stringify([
    value,
    {
      ...work,
      changedAt: '',
      readings: work.readings.map(({ ask, seen, round }) => ({ ask, seen, round })),
    },
    question?.ask,
    question?.purpose,
    typed,
    doubt !== null,
    newest !== null,
    takenBack !== null,
    staysClosed,
  ]);

describe(`every path of a hunt up to ${LENGTH} acts`, () => {
  it('loses no reading, stores what was entered before it asks on, asks nothing twice for nothing, and leaves a way out', async () => {
    const starts = [(await walk(null, null)) as Place, (await walk(null, null, underWay)) as Place];
    const seen = new Set(starts.map(placeKey));
    const values = new Set(starts.map(({ value }) => value));
    let edge: readonly Place[] = starts;
    for (let length = 0; length < LENGTH && edge.length > 0; length += 1) {
      const found: Place[] = [];
      for (const place of edge) {
        let ways = 0;
        for (const step of steps) {
          const after = await walk(place, step);
          if (!after) continue;
          if (own.includes(step)) ways += 1;
          check(place, step, after);
          values.add(after.value);
          const key = placeKey(after);
          if (seen.has(key)) continue;
          seen.add(key);
          found.push(after);
        }
        expect(ways, `no way out of ${place.value} after ${place.path.join(', ')}`).toBeGreaterThan(
          0,
        );
      }
      edge = found;
    }
    // Every state in which a person is waited for was come to.
    for (const state of [
      '"symptom"',
      '"cautions"',
      '{"asking":"entry"}',
      '{"asking":"doubtful"}',
      '{"asking":"jumping"}',
      '{"asking":"help"}',
      '"opening"',
      '"volunteering"',
      '"changed"',
      '"verdict"',
      '"repairing"',
      '"storageFailed"',
      '"engineFailed"',
    ])
      expect([...values]).toContain(state);
    expect(seen.size).toBeGreaterThan(200);
  }, 120_000);
});

function check(before: Place, { event }: Step, after: Place): void {
  const where = `${after.value} after ${after.path.join(', ')}`;
  const ids = new Set(after.context.work.readings.map(({ id }) => id));
  if (event.type !== 'UNDO' && event.type !== 'PUT_BACK')
    for (const { id } of before.context.work.readings)
      expect(ids, `a reading is lost: ${where}`).toContain(id);
  expect(after.value, `still at work: ${where}`).not.toMatch(
    /saving|standing|assessing|expecting|placing|onward/,
  );
  const unsaved = after.path.some((name) => name.includes('save fails'));
  if (!unsaved && after.disk)
    expect(after.disk.readings.length, `not stored: ${where}`).toBe(
      after.context.work.readings.length,
    );
  const { question, work } = after.context;
  if (after.value.includes('asking') && question?.purpose === 'hunt')
    expect(
      work.readings.some(
        (one) => one.round === work.repairs.length && sameAsk(one.ask, question.ask),
      ),
      `asked again for nothing: ${where}`,
    ).toBe(false);
}
