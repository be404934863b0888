import { describe, expect, it } from 'vitest';
import { withAnswers } from './acts.ts';
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

const told = (work: Work): Work => withAnswers(work, [{ ask: inside, seen: seven }], now());
const elsewhere = (work: Work) => ({ type: 'CHANGED_ELSEWHERE', work: told(work) }) as const;

describe('a reading taken in another tab', () => {
  it('is worked out here at once where the person waits', async () => {
    let asked = 0;
    const job = await hunt(ready, {
      assess: async ({ readings }) => {
        asked = readings.length;
        return assessment({ next: [next(atJack)] });
      },
    }).run(elsewhere(ready));
    expect(asked).toBe(1);
    expect(job.state).toEqual({ asking: 'entry' });
    expect(job.context.work.readings).toHaveLength(1);
    expect(job.saved).toEqual([]);
  });

  it('leaves a figure that is being typed where it is, and is stored beside it', async () => {
    const job = await hunt(ready).run({ type: 'TYPE', text: '4.2' }, elsewhere(ready));
    expect(job.context.typed).toBe('4.2');
    await job.run(enter());
    expect(job.saved.at(-1)?.readings.map(({ id }) => id)).toEqual(['r1', 'r2']);
  });

  it('leaves a reading of the person’s own on the screen', async () => {
    const job = await hunt(ready).run({ type: 'VOLUNTEER' }, elsewhere(ready));
    expect(job.state).toBe('volunteering');
    await job.run({ type: 'OWN_ASK', ask: inside }, elsewhere(job.context.work));
    expect(job.context.question?.purpose).toBe('own');
    expect(job.context.work.readings).toHaveLength(2);
  });

  it('does not disturb an act that is being stored', async () => {
    let store = () => {};
    const job = hunt(ready, { save: () => new Promise<void>((done) => (store = done)) });
    await job.run(enter());
    expect(job.state).toHaveProperty('taking.storing', 'writing');
    await job.run(elsewhere(ready));
    expect(job.context.work.readings.map(({ ask }) => ask)).toEqual([atJack]);
    store();
    await settle();
    expect(job.state).toBe('changed');
  });
});
