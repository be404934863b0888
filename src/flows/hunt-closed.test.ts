import { describe, expect, it } from 'vitest';
import { assessment, atJack, hunt, inside, next, now, ready } from './hunt.fixture.ts';

const worth = (bits: number) => ({
  assess: async () => assessment({ next: [next(atJack, bits)] }),
});

describe('a guitar that is closed', () => {
  it('is asked on from outside while that tells enough', async () => {
    const job = await hunt(ready, worth(0.16)).run();
    expect(job.state).toEqual({ asking: 'entry' });
  });

  it('is to be opened when the best reading from outside tells little', async () => {
    const job = await hunt(ready, worth(0.14)).run();
    expect(job.state).toBe('opening');
    expect(job.context.question).toMatchObject({ ask: atJack, worthBits: 0.14 });
    await job.run({ type: 'OPENED', at: now() });
    expect(job.saved.at(-1)?.access).toBe('open');
    expect(job.state).toEqual({ asking: 'entry' });
  });

  it('stays closed when the person says so, and is not asked to be opened again', async () => {
    const job = await hunt(ready, worth(0.14)).run({ type: 'STAY_CLOSED' });
    expect(job.state).toEqual({ asking: 'entry' });
    await job.run({ type: 'CANNOT_REACH', at: now() });
    expect(job.state).not.toBe('opening');
    expect(job.saved.at(-1)?.access).toBe('closed');
  });

  it('can be opened while a reading is asked', async () => {
    const job = await hunt(ready, worth(0.14)).run({ type: 'STAY_CLOSED' });
    await job.run({ type: 'OPENED', at: now() });
    expect(job.saved.at(-1)?.access).toBe('open');
  });

  it('is not asked to be opened when it is open', async () => {
    const job = await hunt({ ...ready, access: 'open' }, worth(0.01)).run();
    expect(job.state).toEqual({ asking: 'entry' });
  });

  it('has to be opened for a reading inside, whatever it is worth', async () => {
    const job = await hunt(ready, {
      assess: async () => assessment({ next: [next(inside, 2)] }),
    }).run();
    expect(job.state).toBe('opening');
  });
});
