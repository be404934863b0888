import type { Fault } from '../faults/fault.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import type { Hypothesis } from './hypothesis.ts';
import type { Predictor } from './predictor.ts';

/** Chance that a repair was done and did it; the same fault stays a suspect with what is left. */
const REPAIR_HOLDS = 0.7;

/** Readings that still count after the repairs so far, and those that a repair may have changed. */
export function splitByRepairs(
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Reading[],
  repairs: readonly string[],
): { readonly counted: readonly Reading[]; readonly stale: readonly Reading[] } {
  const counted: Reading[] = [];
  const stale: Reading[] = [];
  const healthy = singles[0] as Hypothesis;
  for (const reading of readings) {
    const since = new Set(repairs.slice(reading.round));
    const touched =
      since.size > 0 &&
      singles.some(
        (hypothesis) =>
          hypothesis.faults.some((fault: Fault) => since.has(fault.remedy.key)) &&
          !alike(
            predictor.predict(hypothesis, reading.ask),
            predictor.predict(healthy, reading.ask),
          ),
      );
    (touched ? stale : counted).push(reading);
  }
  return { counted, stale };
}

/** After a repair the guitar is most likely as intended; the repaired fault may still be there. */
export function afterRepairs(
  singles: readonly Hypothesis[],
  repairs: readonly string[],
): readonly Hypothesis[] {
  if (repairs.length === 0) return singles;
  const done = new Set(repairs);
  return singles.map((hypothesis) => {
    if (hypothesis.faults.length === 0) return { ...hypothesis, logPrior: Math.log(REPAIR_HOLDS) };
    const repaired = hypothesis.faults.some((fault) => done.has(fault.remedy.key));
    return {
      ...hypothesis,
      logPrior: hypothesis.logPrior + Math.log(repaired ? 1 - REPAIR_HOLDS : 0.5),
    };
  });
}

function alike(one: readonly Prediction[], other: readonly Prediction[]): boolean {
  return one.every((x, at) => {
    const y = other[at];
    if (x.type === 'level' && y?.type === 'level') return Math.abs(x.mean - y.mean) < 0.01;
    if (x.type === 'threshold' && y?.type === 'threshold')
      return x.ohms < 20 === y.ohms < 20 && x.ohms > 150 === y.ohms > 150;
    if (x.type === 'choice' && y?.type === 'choice')
      return Object.entries(x.chances).every(
        ([word, chance]) => Math.abs(chance - (y.chances[word] ?? 0)) < 0.1,
      );
    return x.type === y?.type;
  });
}
