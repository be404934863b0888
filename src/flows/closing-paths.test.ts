import { describe, expect, it } from 'vitest';
import { fromPromise } from 'xstate';
import { ohms, seconds } from '../circuit/units.ts';
import type { Closing, ClosingEvidence, ClosingItem, Mark } from '../closing/closing.ts';
import type { Ask } from '../readings/reading.ts';
import { sameAsk } from './acts.ts';
import { closingMachine } from './closing.ts';
import type { ClosingContext, ClosingEvent } from './closing-conversation.ts';
import { everyPath, type Flow, type Step, says } from './every-path.fixture.ts';
import { atJack, closedWork, inside, ready } from './hunt.fixture.ts';
import type { Work } from './work.ts';

const LENGTH = Number(process.env['LUGWISE_PATHS'] ?? 5);
const at = { at: '2030-01-02T00:00:00.000Z' };
const listed = [atJack, inside];
const [LOW, HIGH] = [ohms(7000), ohms(8000)];

/** A list of two readings, the first of which shows most; one that is off twice fails. */
function check({ readings, refused }: ClosingEvidence): Closing {
  const items = listed.map((ask): ClosingItem => {
    const taken = readings.filter((one) => sameAsk(one.ask, ask));
    const off = ({ seen }: (typeof taken)[number]) =>
      seen.kind === 'ohms' && (seen.ohms === 'open' || seen.ohms < LOW || seen.ohms > HIGH);
    const wrong = taken.filter(off).length;
    const newest = taken.at(-1);
    const mark: Mark =
      wrong > 1 ? 'failed' : !newest ? 'open' : wrong > 0 && off(newest) ? 'again' : 'fits';
    return {
      ask,
      askText: 'R on the tip, B on the sleeve',
      expected: { text: '7.4 kΩ', low: LOW, high: HIGH },
      passes: { low: LOW, high: HIGH },
      times: 1,
      taken: taken.length,
      mark,
      answers: taken.map(({ id }) => id),
      readings: taken.map(({ id }) => id),
    };
  });
  const left = items.filter(
    ({ ask, mark }) => mark !== 'fits' && !refused.some((one) => sameAsk(one, ask)),
  );
  return {
    items: items.filter((item) => item.mark === 'fits' || left.includes(item)),
    readings: listed.length,
    atLeast: listed.length,
    effort: seconds(60),
    left: seconds(20 * left.length),
    state: items.some(({ mark }) => mark === 'failed')
      ? 'failed'
      : left.length === 0
        ? 'passed'
        : 'checking',
    first: {
      items: 1,
      readings: 1,
      share: 0.8,
      effort: seconds(20),
      passed: items[0]?.mark === 'fits',
    },
    ruledOut: [],
    cannotSee: [],
    learned: [],
    changes: [],
  };
}

const item = (ask: Ask) => {
  const found = check({ ...closedWork, repairs: [], stage: 'open' }).items.find((one) =>
    sameAsk(one.ask, ask),
  );
  if (!found) throw new Error('The list has no such reading.');
  return found;
};
const enter = (figure: number): Step<ClosingEvent> =>
  says({ type: 'ENTER', seen: { kind: 'ohms', ohms: ohms(figure) }, ...at });
const steps: readonly Step<ClosingEvent>[] = [
  says({ type: 'START', stage: 'open', ...at }),
  says({ type: 'START', stage: 'open', ...at }, 'save'),
  says({ type: 'START', stage: 'open', ...at }, 'check'),
  says({ type: 'CAUTIONS_READ', ...at }),
  says({ type: 'CAUTIONS_READ', ...at }, 'check'),
  says({ type: 'LIST' }),
  says({ type: 'GO_ON' }),
  says({ type: 'ENOUGH' }),
  says({ type: 'CHOOSE', item: item(inside) }),
  enter(7400),
  { ...enter(7400), crossed: true },
  { ...enter(7400), fails: 'save' },
  { ...enter(7400), fails: 'check' },
  enter(9500),
  { ...enter(9500), crossed: true },
  // A k left out: asked about before it is kept.
  enter(7.4),
  says({ type: 'ENTERED_RIGHT', ...at }),
  says({ type: 'TAKE_BETTER', ...at }),
  says({ type: 'TYPE', text: '7.4' }),
  says({ type: 'BACK' }),
  says({ type: 'HELP' }),
  says({ type: 'CANNOT_REACH', ...at }),
  says({ type: 'JUMPS' }),
  says({ type: 'JUMPS_AT', site: 'jackHot', ...at }),
  says({ type: 'END', celsius: 21, ...at }),
  says({ type: 'END', ...at }, 'save'),
  says({ type: 'RETRY' }),
  says({ type: 'GO_ON_UNSAVED' }),
  says({ type: 'UNDO', ...at }),
];

/** A check under way of which one reading is through. */
const underWay: Work = {
  ...ready,
  access: 'open',
  checks: [{ stage: 'open', startedAt: '2030-01-01T00:00:02.000Z' }],
  readings: [{ id: 'r1', ask: atJack, seen: { kind: 'ohms', ohms: ohms(7400) }, ...at, round: 0 }],
};

const closing: Flow<Work, ClosingContext, ClosingEvent> = {
  machine: (port, save) =>
    closingMachine().provide({
      actors: {
        check: fromPromise(port('check', check)),
        save: fromPromise(save),
      },
    }),
  starts: [closedWork, underWay],
  steps,
  aside: ['UNDO'],
  tells: ({ item: asked, typed, doubt, answered, listing, further }) => [
    asked?.ask,
    typed,
    doubt !== null,
    answered !== null,
    listing,
    further,
  ],
  check({ value, context: { item: asked, work }, path }, where) {
    // A line of the list can be chosen at any time.
    if (!value.includes('asking') || path.includes('CHOOSE')) return;
    expect(asked?.mark, `asked again for nothing: ${where}`).not.toBe('fits');
    expect(work.refused, `asked though it cannot be done: ${where}`).not.toContainEqual(asked?.ask);
  },
};

describe(`every path of a closing check up to ${LENGTH} acts`, () => {
  it('loses no reading, stores what was entered before it asks on, and leaves a way out', async () => {
    const { states, places } = await everyPath(closing, LENGTH);
    for (const state of [
      '"starting"',
      '"cautions"',
      '"list"',
      '"halfway"',
      '{"asking":"entry"}',
      '{"asking":"doubtful"}',
      '{"asking":"jumping"}',
      '{"asking":"help"}',
      '"failed"',
      '"passed"',
      '"engineFailed"',
      '"storageFailed"',
    ])
      expect([...states]).toContain(state);
    expect(places).toBeGreaterThan(100);
  }, 120_000);
});
