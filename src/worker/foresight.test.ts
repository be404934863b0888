import { describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { ohms } from '../circuit/units.ts';
import { assess, beginToAssess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { withAnswer } from '../diagnosis/foresee.ts';
import type { Rests } from '../diagnosis/rests.ts';
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

const open = { kind: 'ohms', ohms: 'open' } as const;
function whole(work: Rests<Assessment>): Assessment {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
/** What a screen is told: of each repair its likeliest fault. */
const brief = (made: Assessment) => ({
  ...made,
  suspects: made.suspects.map((one) => ({ ...one, faults: one.faults.slice(0, 1) })),
});

describe('an answer worked out before it is asked for', () => {
  it('is there at once, and is what would have been worked out', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    whole(foresight.answer(withAnswer(evidence, ask, open)));
    const { done, value: answered } = foresight.answer(taken(open)).next();
    expect(done).toBe(true);
    expect(begin).toHaveBeenCalledTimes(1);
    expect(answered).toEqual(brief(assess(taken(open))));
    expect(answered?.readings.at(-1)?.id).toBe('r1');
  });

  it('says what is believed before the rest is known, and the same when it is', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    const { suspects, readings, suspicion, liveSuspects } = brief(assess(taken(open)));
    const standing = { suspects, readings, suspicion, liveSuspects };
    expect(foresight.stand(taken(open))).toEqual(standing);
    expect(whole(foresight.answer(taken(open)))).toEqual(brief(assess(taken(open))));
    expect(foresight.stand(taken(open))).toEqual(standing);
    expect(begin).toHaveBeenCalledTimes(1);
  });

  it('goes on from where it was left', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    const left = foresight.answer(withAnswer(evidence, ask, open));
    let pieces = 0;
    for (; pieces < 20; pieces += 1) left.next();
    const answer = foresight.answer(taken(open));
    let more = 0;
    let step = answer.next();
    for (; !step.done; step = answer.next()) more += 1;
    const alone = new Foresight().answer(taken(open));
    let all = 0;
    for (; !alone.next().done; ) all += 1;
    expect(more).toBeLessThan(all - 15);
    expect(step.value).toEqual(brief(assess(taken(open))));
    expect(begin).toHaveBeenCalledTimes(1);
  });

  it('is not given for other evidence', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    whole(foresight.answer(withAnswer(evidence, ask, open)));
    whole(foresight.answer(taken({ kind: 'ohms', ohms: ohms(6630) })));
    whole(foresight.answer({ ...taken(open), access: 'closed' }));
    whole(foresight.answer({ ...taken(open), byEar: true }));
    expect(begin).toHaveBeenCalledTimes(4);
  });

  it('is kept for the newest alone', () => {
    const made = assess(evidence);
    const begin = vi.fn(() => ({
      standing: made,
      // biome-ignore lint/correctness/useYield: there is nothing to rest from
      rest: (function* () {
        return made;
      })(),
    }));
    const foresight = new Foresight(begin);
    const keep = (leads: number) =>
      whole(foresight.answer({ ...evidence, meter: { ...evidence.meter, leads: ohms(leads) } }));
    for (let at = 0; at < 40; at += 1) keep(at);
    keep(39);
    expect(begin).toHaveBeenCalledTimes(40);
    keep(0);
    expect(begin).toHaveBeenCalledTimes(41);
  });

  it('fails as often as it is asked where it cannot be worked out', () => {
    const foresight = new Foresight(() => ({
      standing: assess(evidence),
      // biome-ignore lint/correctness/useYield: it fails at once
      rest: (function* (): Rests<Assessment> {
        throw new Error('it cannot be');
      })(),
    }));
    for (let time = 0; time < 2; time += 1)
      expect(() => whole(foresight.answer(evidence))).toThrow('it cannot be');
  });
});
