import { describe, expect, it } from 'vitest';
import { fromPromise } from 'xstate';
import { bits, ohms, probability } from '../circuit/units.ts';
import type { Ask } from '../readings/reading.ts';
import { lead } from '../sorter/ideal.fixture.ts';
import type { SortEvidence, Sorting, SortQuestion } from '../sorter/sort.ts';
import { sameAsk } from './acts.ts';
import { everyPath, type Flow, type Step, says } from './every-path.fixture.ts';
import { type SortContext, type SortEvent, sortMachine } from './sort.ts';
import { freshSort, type SortWork } from './sort-work.ts';

const LENGTH = Number(process.env['LUGWISE_PATHS'] ?? 4);
const MOMENT = '2030-01-02T00:00:00.000Z';
const at = { at: MOMENT };
const setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] } as const;
const points = { red: 'whiteEnd.joint', black: 'blackEnd.joint', setting };
const figureAsk: Ask = { kind: 'ohms', ...points };
const tapAsk: Ask = { kind: 'tap', coil: 'a', ...points };
const poleAsk = { kind: 'pole', coil: 'a', setting } as const satisfies Ask;
const question = (ask: Ask): SortQuestion => ({
  ask,
  askText: ask.kind,
  worthBits: bits(1),
  likely: ask.kind === 'ohms' ? [{ low: ohms(5000), high: ohms(9000) }] : [],
});

/** A sorter that asks for ohms, then for two taps, finds that two swings disagree, and is done after all three. */
function sorter({ readings, refused }: SortEvidence): Sorting {
  const taken = (ask: Ask) => readings.filter((one) => sameAsk(one.ask, ask)).length;
  const open = [figureAsk, ...(taken(tapAsk) < 2 ? [tapAsk] : [])].filter(
    (ask) => (ask === tapAsk || taken(ask) === 0) && !refused.some((one) => sameAsk(one, ask)),
  );
  const swings = readings.filter(({ ask }) => ask.kind === 'tap');
  const [first, second] = swings;
  const disagree = first && second && JSON.stringify(first.seen) !== JSON.stringify(second.seen);
  return {
    leads: [],
    probability: probability(0.9),
    others: [],
    state: open.length > 0 ? 'asking' : refused.length > 0 ? 'stuck' : 'settled',
    troubles: [],
    onPlate: null,
    // Who wants to be surer is asked for the swing once more.
    next: (open.length > 0 ? open : [tapAsk]).map(question),
    contradiction: disagree
      ? { readings: [second.id, first.id], texts: ['', ''], repeatText: 'the swing' }
      : null,
    poles: {},
    poleAsks: readings.some(({ ask }) => ask.kind === 'pole') ? [] : [question(poleAsk)],
  };
}

const steps: readonly Step<SortEvent>[] = [
  says({ type: 'CAUTIONS_READ', ...at }),
  says({ type: 'CAUTIONS_READ', ...at }, 'save'),
  says({ type: 'CAUTIONS_READ', ...at }, 'sort'),
  says({ type: 'TYPE', text: '6.2' }),
  ...(['ohms', 'plus', 'minus', 'south'] as const).flatMap((word) => {
    const seen =
      word === 'ohms'
        ? ({ kind: 'ohms', ohms: ohms(6200) } as const)
        : word === 'south'
          ? ({ kind: 'pole', pole: 'south' } as const)
          : ({ kind: 'tap', swing: word } as const);
    const enter: Step<SortEvent> = says({ type: 'ENTER', seen, ...at });
    return [enter, { ...enter, crossed: true }, { ...enter, fails: 'save' }];
  }),
  // A k left out: asked about before it is kept.
  says({ type: 'ENTER', seen: { kind: 'ohms', ohms: ohms(6.2) }, ...at }),
  says({ type: 'ENTERED_RIGHT', ...at }),
  says({ type: 'TAKE_BETTER', ...at }),
  says({ type: 'UNCLEAR' }),
  says({ type: 'HELP' }),
  says({ type: 'BACK' }),
  says({ type: 'CANNOT_REACH', ...at }),
  says({ type: 'REPEAT', reading: 'r1' }),
  says({ type: 'SURER' }),
  says({ type: 'ASK_REFUSED', ...at }),
  says({ type: 'POLES' }),
  says({ type: 'RETRY' }),
  says({ type: 'UNDO', ...at }),
  says({ type: 'PUT_BACK' }),
];

const pickup = {
  coils: 1,
  leads: [lead('white'), lead('black')],
  plate: true,
  cover: false,
} as const;
const fresh = freshSort(pickup, '2030-01-01T00:00:00.000Z');
const underWay: SortWork = {
  ...fresh,
  cautionsReadAt: MOMENT,
  readings: [
    { id: 'r1', ask: figureAsk, seen: { kind: 'ohms', ohms: ohms(6200) }, ...at, round: 0 },
  ],
};

const sorting: Flow<SortWork, SortContext, SortEvent> = {
  machine: (port, save) =>
    sortMachine().provide({
      actors: {
        sort: fromPromise(port('sort', sorter)),
        save: fromPromise(save),
      },
    }),
  starts: [fresh, underWay],
  steps,
  aside: ['UNDO', 'PUT_BACK'],
  tells: ({ question: asked, typed, doubt, beyond, takenBack }) => [
    asked?.ask,
    typed,
    doubt !== null,
    beyond,
    takenBack !== null,
  ],
};

describe(`every path of a sorting up to ${LENGTH} acts`, () => {
  it('loses no reading, stores what was entered before it asks on, and leaves a way out', async () => {
    const { states, places } = await everyPath(sorting, LENGTH);
    for (const state of [
      '"cautions"',
      '{"asking":"entry"}',
      '{"asking":"doubtful"}',
      '{"asking":"unclear"}',
      '{"asking":"help"}',
      '"sorted"',
      '"sortFailed"',
      '"storageFailed"',
    ])
      expect([...states]).toContain(state);
    expect(places).toBeGreaterThan(100);
  }, 120_000);
});
