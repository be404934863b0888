import { describe, expect, it } from 'vitest';
import { createActor, fromPromise, waitFor } from 'xstate';
import { ohms } from '../circuit/units.ts';
import { answerOf, type IdealPickup, lead } from '../sorter/ideal.fixture.ts';
import { sortLeads } from '../sorter/sort.ts';
import { sortMachine } from './sort.ts';
import { freshSort, type SortWork } from './sort-work.ts';

const pickup: IdealPickup = {
  seen: { coils: 1, leads: [lead('white'), lead('black')], plate: true, cover: false },
  nodes: { white: '1', black: '2', plate: 'p' },
  coils: { a: ['1', '2', 6000], b: ['x', 'y', Infinity] },
};
const at = '2026-01-01T00:00:00Z';
const fresh = freshSort(pickup.seen, at);

function start(work: SortWork = fresh, save = async (_: SortWork) => {}) {
  const stored: SortWork[] = [];
  const actor = createActor(
    sortMachine().provide({
      actors: {
        sort: fromPromise(async ({ input }) => sortLeads(input)),
        save: fromPromise(async ({ input }) => {
          await save(input);
          stored.push(input);
          return input;
        }),
      },
    }),
    { input: { work } },
  );
  actor.start();
  const on = (...names: string[]) =>
    waitFor(actor, (now) => names.some((name) => now.matches(name as 'asking')), { timeout: 9000 });
  return { actor, stored, on };
}

async function untilAsked() {
  const sorting = start();
  await sorting.on('cautions');
  sorting.actor.send({ type: 'CAUTIONS_READ', at });
  await sorting.on('asking');
  return sorting;
}

/** Answers as the pickup would until an ask of this kind comes up. */
async function untilAskedFor(kind: string) {
  const sorting = await untilAsked();
  for (let readings = 0; readings < 12; readings += 1) {
    const now = await sorting.on('asking', 'sorted');
    const ask = now.context.question?.ask;
    if (now.matches('sorted') || !ask) break;
    if (ask.kind === kind) return sorting;
    sorting.actor.send({ type: 'ENTER', seen: answerOf(pickup, ask), at });
    await sorting.on('sorting', 'asking', 'sorted');
  }
  throw new Error(`never asked for ${kind}`);
}

async function untilSorted() {
  const sorting = await untilAsked();
  for (let readings = 0; readings < 12; readings += 1) {
    const now = await sorting.on('asking', 'sorted');
    if (now.matches('sorted')) break;
    const ask = now.context.question?.ask;
    if (!ask) throw new Error('asking without a question');
    sorting.actor.send({ type: 'ENTER', seen: answerOf(pickup, ask), at });
    await sorting.on('sorting', 'asking', 'sorted');
    expect(sorting.stored.at(-1)?.readings).toHaveLength(readings + 1);
  }
  return sorting;
}

describe('sorting leads, as a conversation', () => {
  it('asks until the answer stands, and stores each reading before the next is asked', async () => {
    const { actor } = await untilSorted();
    const { context } = actor.getSnapshot();
    expect(context.sorting?.state).toBe('settled');
    expect(context.sorting?.leads.map(({ role }) => role)).toEqual(['a.start', 'a.finish']);
  });

  it('goes on from what is stored', async () => {
    const first = await untilAsked();
    const again = start(first.stored.at(-1));
    const now = await again.on('asking');
    expect(now.context.question).toEqual(first.actor.getSnapshot().context.question);
  });

  it('takes a reading back and puts it back, and leaves out what cannot be done', async () => {
    const { actor, on } = await untilAsked();
    const ask = actor.getSnapshot().context.question?.ask;
    actor.send({ type: 'ENTER', seen: { kind: 'tap', swing: 'plus' }, at });
    await on('asking');
    actor.send({ type: 'UNDO', at });
    const before = await on('asking');
    expect(before.context.work.readings).toEqual([]);
    expect(before.context.question?.ask).toEqual(ask);
    actor.send({ type: 'PUT_BACK' });
    expect((await on('asking')).context.work.readings).toHaveLength(1);
    actor.send({ type: 'UNDO', at });
    await on('asking');
    actor.send({ type: 'CANNOT_REACH', at });
    const other = await on('asking', 'sorted');
    expect(other.context.work.refused).toEqual([ask]);
    expect(other.context.question?.ask).not.toEqual(ask);
    // What was left out comes back by undo, before the reading that was given earlier.
    actor.send({ type: 'UNDO', at });
    const again = await on('asking');
    expect(again.context.work.refused).toEqual([]);
    expect(again.context.question?.ask).toEqual(ask);
  });

  it('asks about 5.9 typed for 5.9 k, and takes either answer', async () => {
    const { actor, on } = await untilAskedFor('ohms').catch(async () => {
      // A single coil may be sorted by taps alone: one more reading is asked for.
      const sorting = await untilSorted();
      for (let more = 0; more < 8; more += 1) {
        sorting.actor.send({ type: 'SURER' });
        const now = await sorting.on('asking');
        const ask = now.context.question?.ask;
        if (ask?.kind === 'ohms') return sorting;
        if (ask) sorting.actor.send({ type: 'ENTER', seen: answerOf(pickup, ask), at });
        await sorting.on('sorted', 'asking');
      }
      throw new Error('never asked for ohms');
    });
    actor.send({ type: 'ENTER', seen: { kind: 'ohms', ohms: ohms(5.9) }, at });
    const { context } = await on('asking');
    expect(context.doubt?.sentence).toBe(
      'You entered 5.9 Ω. Coils read thousands of ohms, so 5.9 kΩ would fit. Which does the display show?',
    );
    actor.send({ type: 'TAKE_BETTER', at });
    await on('asking', 'sorted');
    expect(actor.getSnapshot().context.work.readings.at(-1)?.seen).toEqual({
      kind: 'ohms',
      ohms: 5900,
    });
  });

  it('has a doubtful tap done again without storing it', async () => {
    const { actor, on } = await untilAskedFor('tap');
    const stored = actor.getSnapshot().context.work.readings.length;
    const ask = actor.getSnapshot().context.question?.ask;
    actor.send({ type: 'UNCLEAR' });
    expect(actor.getSnapshot().matches({ asking: 'unclear' })).toBe(true);
    expect(actor.getSnapshot().context.question?.ask).toEqual(ask);
    actor.send({ type: 'ENTER', seen: { kind: 'tap', swing: 'plus' }, at });
    await on('asking', 'sorted');
    expect(actor.getSnapshot().context.work.readings).toHaveLength(stored + 1);
  });

  it('asks for the pole when that is wanted', async () => {
    const { actor, on } = await untilSorted();
    actor.send({ type: 'POLES' });
    const { context } = await on('asking');
    expect(context.question?.ask).toMatchObject({ kind: 'pole', coil: 'a' });
    actor.send({ type: 'ENTER', seen: { kind: 'pole', pole: 'south' }, at });
    await on('saving');
    const after = await on('sorted');
    expect(after.context.sorting?.poles).toEqual({ a: -1 });
    expect(after.context.sorting?.state).toBe('settled');
  });

  it('says what the disk says, and tries again', async () => {
    let full = true;
    const { actor, on } = start(fresh, async () => {
      if (full) throw new Error('The phone is full.');
    });
    actor.send({ type: 'CAUTIONS_READ', at });
    expect((await on('storageFailed')).context.failure).toBe('The phone is full.');
    full = false;
    actor.send({ type: 'RETRY' });
    await on('asking');
  });
});
