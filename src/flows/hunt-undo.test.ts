import { describe, expect, it } from 'vitest';
import {
  assessment,
  atJack,
  circuit,
  closedWork,
  enter,
  hunt,
  inside,
  next,
  now,
  ready,
} from './hunt.fixture.ts';
import { listeningPlaces } from './symptom.ts';

describe('undo', () => {
  it('takes back the last act, whatever it was, and can put it back', async () => {
    const job = hunt(
      { ...closedWork, access: 'open' },
      { assess: async () => assessment({ next: [next(inside), next(atJack)] }) },
    );
    const heard = {
      type: 'HEARD' as const,
      answers: listeningPlaces(circuit).map(({ ask }) => ({
        ask,
        seen: { kind: 'listen', heard: 'silent' } as const,
      })),
      at: now(),
    };
    await job.run(heard, { type: 'CAUTIONS_READ', at: now() });
    await job.run({ type: 'CANNOT_REACH', at: now() }, enter(), { type: 'ON' });
    const undo = () => job.run({ type: 'UNDO', at: now() });
    await undo();
    expect(job.context.work.readings).toHaveLength(3);
    await job.run({ type: 'PUT_BACK' });
    expect(job.context.work.readings).toHaveLength(4);
    await undo();
    await undo();
    expect(job.context.work.refused).toHaveLength(0);
    await undo();
    expect(job.state).toBe('cautions');
    await undo();
    expect(job.state).toBe('symptom');
    expect(job.saved.at(-1)?.readings).toEqual([]);
    const before = job.saved.length;
    await undo();
    expect(job.saved).toHaveLength(before);
  });

  it('works while the engine has failed, so that a reading it cannot take does not lock the job', async () => {
    const job = hunt(ready, {
      assess: async ({ readings }) => {
        if (readings.length > 0) throw new Error('There is no lug called jack.tp.');
        return assessment({ next: [next(atJack)] });
      },
    });
    await job.run(enter());
    expect(job.state).toBe('engineFailed');
    expect(job.context.failure).toBe('There is no lug called jack.tp.');
    await job.run({ type: 'UNDO', at: now() });
    expect(job.state).toEqual({ asking: 'entry' });
  });
});
