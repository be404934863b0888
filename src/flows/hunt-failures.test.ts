import { describe, expect, it } from 'vitest';
import { createActor } from 'xstate';
import { assessment, atJack, enter, hunt, next, now, ready, settle } from './hunt.fixture.ts';
import { huntMachine } from './hunt.ts';

describe('every actor can fail', () => {
  it('the engine: says why, and tries again', async () => {
    let broken = true;
    const job = hunt(ready, {
      assess: async () => {
        if (broken) throw new Error('The engine stopped.');
        return assessment({ next: [next(atJack)] });
      },
    });
    await job.run();
    expect([job.state, job.context.failure]).toEqual(['engineFailed', 'The engine stopped.']);
    broken = false;
    await job.run({ type: 'RETRY' });
    expect([job.state, job.context.failure]).toEqual([{ asking: 'entry' }, null]);
  });

  it('the engine, while the effect of a reading is read: says why once what follows is needed', async () => {
    let broken = false;
    const job = hunt(ready, {
      assess: async () => {
        if (broken) throw new Error('The engine stopped.');
        return assessment({ next: [next(atJack)] });
      },
      stand: async () => assessment({}),
    });
    await job.run();
    broken = true;
    await job.run(enter());
    expect([job.state, job.context.failure]).toEqual(['changed', null]);
    await job.run({ type: 'ON' });
    expect([job.state, job.context.failure]).toEqual(['engineFailed', 'The engine stopped.']);
    broken = false;
    await job.run({ type: 'RETRY' });
    expect(job.state).toEqual({ asking: 'entry' });
  });

  it('the storage: keeps the reading on the screen, tries again, or goes on when told so', async () => {
    let full = true;
    const job = hunt(ready, {
      save: async () => {
        if (full) throw new Error('The phone has no room left.');
      },
    });
    await job.run(enter());
    expect([job.state, job.context.failure]).toEqual([
      'storageFailed',
      'The phone has no room left.',
    ]);
    expect(job.context.work.readings).toHaveLength(1);
    await job.run({ type: 'GO_ON_UNSAVED' });
    expect(job.state).toBe('changed');
    await job.run({ type: 'ON' }, { type: 'CANNOT_REACH', at: now() });
    expect(job.state).toBe('storageFailed');
    full = false;
    await job.run({ type: 'RETRY' });
    expect(job.saved.at(-1)).toMatchObject({ readings: [{ id: 'r1' }], refused: [atJack] });
  });

  it('the expectation of an own reading: back to where it was chosen, with the reason', async () => {
    const job = hunt(ready, {
      expect: async () => {
        throw new Error('There is no lug called tone.9.');
      },
    });
    await job.run({ type: 'VOLUNTEER' }, { type: 'OWN_ASK', ask: atJack });
    expect([job.state, job.context.failure]).toEqual([
      'volunteering',
      'There is no lug called tone.9.',
    ]);
    await job.run({ type: 'BACK' });
    expect(job.state).toEqual({ asking: 'entry' });
  });

  it('a machine without ports names the one it lacks', async () => {
    const actor = createActor(huntMachine(), { input: { work: ready } }).start();
    await settle();
    expect(actor.getSnapshot().value).toBe('engineFailed');
    expect(actor.getSnapshot().context.failure).toBe('The hunt was started without "assess".');
  });
});
