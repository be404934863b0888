import { partValue } from '../circuit/in-room.ts';
import { type Ohms, ohms } from '../circuit/units.ts';
import type { Reading } from '../readings/reading.ts';
import type { LearnedValue } from './assessment.ts';
import { learnedBy } from './belief.ts';
import type { Hypothesis } from './hypothesis.ts';
import type { Predictor } from './predictor.ts';

/** Part values as one hypothesis reads them, for parts that the readings say something about. */
export function learnedValues(
  predictor: Predictor,
  hypothesis: Hypothesis,
  readings: readonly Reading[],
): readonly LearnedValue[] {
  if (readings.length === 0) return [];
  const learned = learnedBy(predictor, hypothesis, readings);
  return predictor.unknowns.list.flatMap((unknown, at): LearnedValue[] => {
    if (unknown.part === undefined || unknown.nominal === undefined) return [];
    const part = predictor.stated.parts.get(unknown.part);
    const printed = part && partValue(part);
    // What was measured out of circuit is known better than any reading here can tell.
    if (!printed || printed.measured !== undefined || printed.measuredOpen) return [];
    const unit = new Float64Array(predictor.unknowns.list.length + 1);
    unit[at] = 1;
    const spread = Math.sqrt(learned.along(unit).variance);
    if (spread > 0.7 * unknown.deviation) return [];
    const estimate: Ohms = ohms(unknown.nominal * Math.exp(learned.mean[at] as number));
    return [
      {
        part: unknown.part,
        title: unknown.name,
        nominal: ohms(printed.nominal),
        estimate,
        spread: 2 * spread,
      },
    ];
  });
}
