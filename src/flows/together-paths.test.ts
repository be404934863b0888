import { describe, expect, it } from 'vitest';
import { fromPromise } from 'xstate';
import { everyPath, type Flow, type Step, says } from './every-path.fixture.ts';
import { circuit } from './hunt.fixture.ts';
import {
  type TogetherContext,
  type TogetherEvent,
  type TogetherWork,
  togetherMachine,
} from './together.ts';

const LENGTH = Number(process.env['LUGWISE_PATHS'] ?? 4);
const at = { at: '2030-01-02T00:00:00.000Z' };

const steps: readonly Step<TogetherEvent>[] = [
  says({ type: 'CAUTIONS_READ', ...at }),
  says({ type: 'CAUTIONS_READ', ...at }, 'save'),
  ...(['plus', 'minus', 'north'] as const).flatMap((word) => {
    const seen =
      word === 'north'
        ? ({ kind: 'pole', pole: word } as const)
        : ({ kind: 'tap', swing: word } as const);
    const enter: Step<TogetherEvent> = says({ type: 'ENTER', seen, ...at });
    return [enter, { ...enter, crossed: true }, { ...enter, fails: 'save' }];
  }),
  says({ type: 'COMPASS', is: false, ...at }),
  says({ type: 'COMPASS', is: true, ...at }),
  says({ type: 'MEANT', meant: { circuit, places: {} }, ...at }),
  { ...says({ type: 'MEANT', meant: { circuit, places: {} }, ...at }), crossed: true },
  says({ type: 'ASK_AGAIN', pickup: 'one', ...at }),
  says({ type: 'HELP' }),
  says({ type: 'BACK' }),
  says({ type: 'RETRY' }),
  says({ type: 'UNDO', ...at }),
  says({ type: 'PUT_BACK' }),
];

const fresh: TogetherWork = {
  pickups: [
    { id: 'one', title: 'neck', coils: 1 },
    { id: 'two', title: 'bridge', coils: 1 },
  ],
  readings: [],
  changedAt: '2030-01-01T00:00:00.000Z',
};
/** Both taps are seen, and there is no compass. */
const known: TogetherWork = {
  ...fresh,
  cautionsReadAt: at.at,
  noCompass: true,
  readings: [
    { id: 'r1', pickup: 'one', coil: 'a', seen: { kind: 'tap', swing: 'plus' }, ...at },
    { id: 'r2', pickup: 'two', coil: 'a', seen: { kind: 'tap', swing: 'minus' }, ...at },
  ],
};

const together: Flow<TogetherWork, TogetherContext, TogetherEvent> = {
  machine: (_, save) =>
    togetherMachine().provide({
      actors: {
        save: fromPromise(save),
      },
    }),
  starts: [fresh, known],
  steps,
  // What is known stays on the screen: there is nothing more to be asked.
  aside: ['UNDO', 'PUT_BACK'],
  tells: ({ ask, takenBack }) => [ask, takenBack !== null],
};

describe(`every path of pickups that play together up to ${LENGTH} acts`, () => {
  it('loses no reading, stores what was entered before it asks on, and leaves a way out', async () => {
    const { states, places } = await everyPath(together, LENGTH);
    for (const state of [
      '"cautions"',
      '{"asking":"entry"}',
      '{"asking":"help"}',
      '"known"',
      '"storageFailed"',
    ])
      expect([...states]).toContain(state);
    expect(places).toBeGreaterThan(100);
  }, 120_000);

  it('keeps the wiring that they are meant for when something is taken back', async () => {
    const { states } = await everyPath(
      {
        ...together,
        starts: [{ ...known, meant: { circuit, places: {} } }],
        check: ({ context }, where) => expect(context.work.meant, where).toBeDefined(),
      },
      3,
    );
    expect([...states]).toContain('{"asking":"entry"}');
  });
});
