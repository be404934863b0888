import { describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { ohms } from '../circuit/units.ts';
import { assess, beginToAssess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { withAnswer } from '../diagnosis/foresee.ts';
import { ended, type Rests } from '../diagnosis/rests.ts';
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
/** What a screen is told: of each repair its likeliest fault. */
const brief = (made: Assessment) => ({
  ...made,
  suspects: made.suspects.map((one) => ({ ...one, faults: one.faults.slice(0, 1) })),
});

describe('an answer worked out before it is asked for', () => {
  it('is there at once, and is what would have been worked out', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    ended(foresight.answer(withAnswer(evidence, ask, open)));
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
    expect(ended(foresight.answer(taken(open)))).toEqual(brief(assess(taken(open))));
    expect(foresight.stand(taken(open))).toEqual(standing);
    expect(begin).toHaveBeenCalledTimes(1);
  });

  it('is believed ahead, and gone on with from there', () => {
    const begin = vi.fn(beginToAssess);
    const foresight = new Foresight(begin);
    ended(foresight.believe(withAnswer(evidence, ask, open)));
    const { suspects } = foresight.stand(taken(open));
    expect(suspects).toEqual(brief(assess(taken(open))).suspects);
    expect(ended(foresight.answer(taken(open)))).toEqual(brief(assess(taken(open))));
    expect(ended(foresight.believe(taken(open)))).toBeUndefined();
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
    ended(foresight.answer(withAnswer(evidence, ask, open)));
    ended(foresight.answer(taken({ kind: 'ohms', ohms: ohms(6630) })));
    ended(foresight.answer({ ...taken(open), access: 'closed' }));
    ended(foresight.answer({ ...taken(open), byEar: true }));
    expect(begin).toHaveBeenCalledTimes(4);
  });

  it('is kept for the newest alone', () => {
    const made = assess(evidence);
    const begin = vi.fn(() => ({
      stand: () => made,
      believed: (function* () {})(),
      // biome-ignore lint/correctness/useYield: there is nothing to rest from
      rest: (function* () {
        return made;
      })(),
    }));
    const foresight = new Foresight(begin);
    const keep = (leads: number) =>
      ended(foresight.answer({ ...evidence, meter: { ...evidence.meter, leads: ohms(leads) } }));
    for (let at = 0; at < 40; at += 1) keep(at);
    keep(39);
    expect(begin).toHaveBeenCalledTimes(40);
    keep(0);
    expect(begin).toHaveBeenCalledTimes(41);
  });

  it('says what is believed while it is worked out in pieces, from where they have come to', () => {
    const foresight = new Foresight();
    const answer = foresight.answer(taken(open));
    for (let pieces = 0; pieces < 3; pieces += 1) expect(answer.next().done).toBe(false);
    const { suspects } = brief(assess(taken(open)));
    expect(foresight.stand(taken(open)).suspects).toEqual(suspects);
    expect(ended(answer)).toEqual(brief(assess(taken(open))));
  });

  it('says of a setting that cannot be what is wrong, as often as it is asked', () => {
    const foresight = new Foresight();
    const setting = { ...ask.setting, positions: { nowhere: 'up' } };
    const wrong = {
      ...evidence,
      readings: [{ ...taken(open).readings[0]!, ask: { ...ask, setting } }],
    };
    for (let time = 0; time < 2; time += 1)
      expect(() => foresight.stand(wrong as Evidence)).toThrow(/nowhere/);
  });

  it('fails as often as it is asked where it cannot be worked out', () => {
    const foresight = new Foresight(() => ({
      stand: () => assess(evidence),
      believed: (function* () {})(),
      // biome-ignore lint/correctness/useYield: it fails at once
      rest: (function* (): Rests<Assessment> {
        throw new Error('it cannot be');
      })(),
    }));
    for (let time = 0; time < 2; time += 1)
      expect(() => ended(foresight.answer(evidence))).toThrow('it cannot be');
  });
});
