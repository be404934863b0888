import { expect, it } from 'vitest';
import { atJack, closedWork, enter, hunt, inside, now, ready, settle } from './hunt.fixture.ts';

/** A reading chosen on the reading card, from wherever the hunt stands. */

it('is asked after the cautions, before the hunt has asked anything', async () => {
  const one = await hunt(closedWork).run({ type: 'OWN_ASK', ask: inside });
  expect(one.state).toBe('cautions');
  await one.run({ type: 'CAUTIONS_READ', at: now() });
  expect(one.state).toEqual({ asking: 'entry' });
  expect(one.context.question).toMatchObject({ purpose: 'own', ask: inside });
});

it('goes into the job, and the hunt goes on from it', async () => {
  const one = await hunt(ready).run({ type: 'OWN_ASK', ask: inside }, enter());
  expect(one.context.work.readings.map(({ ask }) => ask)).toEqual([inside]);
  expect(one.state).toBe('changed');
  await one.run({ type: 'ON' });
  expect(one.context.question).toMatchObject({ purpose: 'hunt', ask: atJack });
});

it('takes the place of the question on the screen, and is asked once', async () => {
  const one = await hunt(ready).run();
  expect(one.context.question).toMatchObject({ purpose: 'hunt' });
  await one.run({ type: 'OWN_ASK', ask: inside });
  expect(one.context.question).toMatchObject({ purpose: 'own', ask: inside });
  await one.run({ type: 'CANNOT_REACH', at: now() });
  expect(one.context.question).toMatchObject({ purpose: 'hunt', ask: atJack });
});

it('is not asked of a closed job', async () => {
  const one = await hunt({ ...ready, closedAt: now() }).run({ type: 'OWN_ASK', ask: inside });
  expect(one.state).toBe('closed');
  await one.run({ type: 'REOPEN', at: now() });
  expect(one.context.question).toMatchObject({ purpose: 'hunt' });
});

it('waits while an act is being stored, and is asked then: both are kept', async () => {
  let stored: (() => void) | undefined;
  const one = await hunt(ready, {
    save: () =>
      new Promise<void>((resolve) => {
        stored = resolve;
      }),
  }).run(enter(), { type: 'OWN_ASK', ask: inside });
  expect(one.state).toHaveProperty('taking.storing', 'writing');
  stored?.();
  await settle();
  expect(one.saved[0]?.readings).toHaveLength(1);
  expect(one.context.question).toMatchObject({ purpose: 'own', ask: inside });
});
