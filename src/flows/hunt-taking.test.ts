import { expect, it, vi } from 'vitest';
import type { Evidence } from '../diagnosis/assessment.ts';
import {
  assessment,
  atJack,
  enter,
  hunt,
  inside,
  next,
  now,
  ready,
  settle,
  seven,
} from './hunt.fixture.ts';
import type { Work } from './work.ts';

/** A hunt whose storing, from the first answer on, ends when it is told to, as the disk then has it. */
async function slowly(onDisk: (work: Work) => Work = (work) => work) {
  let end = () => {};
  const stand = vi.fn(async ({ readings }: Evidence) =>
    assessment({ liveSuspects: 9 - readings.length }),
  );
  const job = await hunt(ready, {
    stand,
    assess: async () => assessment({ next: [next(atJack)], liveSuspects: 9 }),
    save: (work) =>
      new Promise((done) => {
        end = () => done(onDisk(work));
      }),
  }).run(enter());
  const stored = async () => {
    end();
    await settle();
  };
  return { job, stand, stored };
}

it('knows what an answer changed while the answer is being stored, and asks on only after that', async () => {
  const { job, stand, stored } = await slowly();
  expect(job.state).toEqual({ taking: { standing: 'told', storing: 'writing' } });
  expect(job.context.change).toMatchObject({ before: 9, after: 8 });
  await stored();
  expect(job.state).toBe('changed');
  expect(stand).toHaveBeenCalledTimes(1);
});

it('remembers what was pressed on the screen of what changed, until the answer is stored', async () => {
  const on = await slowly();
  await on.job.run({ type: 'ON' });
  expect(on.job.state).toHaveProperty('taking.storing', 'writing');
  await on.stored();
  expect(on.job.state).toEqual({ asking: 'entry' });
  expect(on.job.context).toMatchObject({ newest: null, change: null, wish: null });

  const own = await slowly();
  await own.job.run({ type: 'VOLUNTEER' });
  await own.stored();
  expect(own.job.state).toBe('volunteering');
  expect(own.job.context.wish).toBeNull();
});

it('looks anew at what changed where another tab had added something by the time it was stored', async () => {
  const other = { id: 'theirs', ask: inside, seen: seven, at: now(), round: 0 };
  const { job, stand, stored } = await slowly((work) => ({
    ...work,
    readings: [...work.readings, other],
  }));
  expect(job.context.change).toMatchObject({ after: 8 });
  await stored();
  expect(job.state).toBe('changed');
  expect(job.context.change).toMatchObject({ after: 7 });
  expect(stand).toHaveBeenCalledTimes(2);
});

it('takes an answer back that is being stored still', async () => {
  const { job } = await slowly();
  await job.run({ type: 'UNDO', at: now() });
  expect(job.state).toBe('saving');
  expect(job.context.work.readings).toEqual([]);
  expect(job.context).toMatchObject({ newest: null, change: null, wish: null });
});

it('shows once more what an answer changed that could be stored at the second try', async () => {
  let full = true;
  const job = await hunt(ready, {
    save: async () => {
      if (full) throw new Error('The phone has no room left.');
    },
  }).run(enter());
  expect(job.state).toBe('storageFailed');
  full = false;
  await job.run({ type: 'RETRY' });
  expect(job.state).toBe('changed');
  expect(job.context.change).not.toBeNull();
});

it('says that the engine failed once the answer is stored', async () => {
  let broken = false;
  const job = await hunt(ready, {
    stand: async () => {
      if (broken) throw new Error('The engine stopped.');
      return assessment({});
    },
    assess: async () => assessment({ next: [next(atJack)] }),
  }).run();
  broken = true;
  await job.run(enter());
  expect(job.saved.at(-1)?.readings).toHaveLength(1);
  expect([job.state, job.context.failure]).toEqual(['engineFailed', 'The engine stopped.']);
});
