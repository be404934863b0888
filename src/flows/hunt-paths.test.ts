import { describe, expect, it } from 'vitest';
import { fromPromise } from 'xstate';
import { ohms } from '../circuit/units.ts';
import type { Assessment, Evidence, Standing } from '../diagnosis/assessment.ts';
import type { Ask } from '../readings/reading.ts';
import { sameAsk } from './acts.ts';
import type { HuntContext, HuntEvent } from './conversation.ts';
import { everyPath, type Flow, type Step, says } from './every-path.fixture.ts';
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
import type { Work } from './work.ts';

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

const figure = { kind: 'ohms', ohms: ohms(7400) } as const;
const steps: readonly Step<HuntEvent>[] = [
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
  { ...says({ type: 'ENTER', seen: figure, ...at }), crossed: true },
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
/** An open guitar with one reading taken. */
const underWay: Work = {
  ...ready,
  access: 'open',
  readings: [{ id: 'first', ask: atJack, seen: figure, ...at, round: 0 }],
};

const hunt: Flow<Work, HuntContext, HuntEvent> = {
  machine: (port, save) =>
    huntMachine().provide({
      actors: {
        stand: fromPromise(port('stand', (evidence: Evidence): Standing => engine(evidence))),
        assess: fromPromise(port('assess', engine)),
        assessMeanwhile: fromPromise(port('assess', engine)),
        expect: fromPromise(port('expect', () => ({ text: '7.4 kΩ' }))),
        save: fromPromise(save),
      },
    }),
  starts: [closedWork, underWay],
  steps,
  aside: ['OWN_ASK', 'UNDO', 'PUT_BACK'],
  tells: ({ question, typed, doubt, newest, takenBack, staysClosed }) => [
    question?.ask,
    question?.purpose,
    typed,
    doubt !== null,
    newest !== null,
    takenBack !== null,
    staysClosed,
  ],
  check({ value, context: { question, work } }, where) {
    if (!value.includes('asking') || question?.purpose !== 'hunt') return;
    expect(
      work.readings.some(
        (one) => one.round === work.repairs.length && sameAsk(one.ask, question.ask),
      ),
      `asked again for nothing: ${where}`,
    ).toBe(false);
  },
};

describe(`every path of a hunt up to ${LENGTH} acts`, () => {
  it('loses no reading, stores what was entered before it asks on, asks nothing twice for nothing, and leaves a way out', async () => {
    const { states, places } = await everyPath(hunt, LENGTH);
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
      expect([...states]).toContain(state);
    expect(places).toBeGreaterThan(200);
  }, 120_000);
});
