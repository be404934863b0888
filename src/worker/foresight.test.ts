import { describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { ohms } from '../circuit/units.ts';
import { assess } from '../diagnosis/assess.ts';
import type { Evidence } from '../diagnosis/assessment.ts';
import { withAnswer } from '../diagnosis/foresee.ts';
import type { Reading } from '../readings/reading.ts';
import { Foresight } from './foresight.ts';

const evidence: Evidence = {
  circuit: startingWirings.find(({ id }) => id === 'one-single-one-knob')!.build(),
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
  access: 'open',
  readings: [],
  refused: [],
  repairs: [],
};
const { ask } = assess(evidence).next[0]!;
const taken = (seen: Reading['seen']): Evidence => ({
  ...evidence,
  readings: [{ id: 'r1', ask, seen, at: '2026-01-01T00:00:00Z', round: 0 } as Reading],
});

describe('an answer worked out before it is asked for', () => {
  it('is there at once, and is what would have been worked out', () => {
    const work = vi.fn(assess);
    const foresight = new Foresight(work);
    foresight.keep(withAnswer(evidence, ask, { kind: 'ohms', ohms: 'open' }));
    const answered = foresight.answer(taken({ kind: 'ohms', ohms: 'open' }));
    expect(work).toHaveBeenCalledTimes(1);
    expect(answered).toEqual(assess(taken({ kind: 'ohms', ohms: 'open' })));
    expect(answered.readings.at(-1)?.id).toBe('r1');
  });

  it('is not given for other evidence', () => {
    const work = vi.fn(assess);
    const foresight = new Foresight(work);
    foresight.keep(withAnswer(evidence, ask, { kind: 'ohms', ohms: 'open' }));
    foresight.answer(taken({ kind: 'ohms', ohms: ohms(6630) }));
    foresight.answer({ ...taken({ kind: 'ohms', ohms: 'open' }), access: 'closed' });
    foresight.answer({ ...taken({ kind: 'ohms', ohms: 'open' }), byEar: true });
    expect(work).toHaveBeenCalledTimes(4);
  });

  it('is kept for the newest alone', () => {
    const made = assess(evidence);
    const work = vi.fn(() => made);
    const foresight = new Foresight(work);
    const keep = (leads: number) =>
      foresight.keep({ ...evidence, meter: { ...evidence.meter, leads: ohms(leads) } });
    for (let at = 0; at < 40; at += 1) keep(at);
    keep(39);
    expect(work).toHaveBeenCalledTimes(40);
    keep(0);
    expect(work).toHaveBeenCalledTimes(41);
  });
});
