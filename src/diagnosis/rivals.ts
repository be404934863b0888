import type { Reading } from '../readings/reading.ts';
import type { RuledOut } from './assessment.ts';
import { type Belief, scoredBy } from './belief.ts';
import type { Group } from './groups.ts';
import type { Hypothesis } from './hypothesis.ts';
import { logLikelihood } from './likelihood.ts';
import type { Predictor } from './predictor.ts';

/** A rival explains what is off as well as the leader does, but for this factor (natural logarithm). */
const AS_WELL = 2;
/** One reading rules a rival out from this factor on: 1 in 20 (natural logarithm). */
const RULES_OUT = 3;

interface Seen {
  readonly predictor: Predictor;
  readonly readings: readonly Reading[];
}

/** ln of the likelihood of each reading by itself. */
export const scoresOf = ({ predictor, readings }: Seen, hypothesis: Hypothesis) =>
  readings.map((reading) =>
    logLikelihood(scoredBy(predictor, hypothesis, [reading]), predictor.deviations(hypothesis)),
  );

/**
 * What the readings that are not off have done: each rival that would explain the grounds as well as the leader, under the one
 * reading that speaks most against it. Rivals are single faults with another repair, each in the size that fits best.
 */
export function ruledOutBy(
  { predictor, readings, belief }: Seen & { readonly belief: Belief },
  group: Group,
  lead: Hypothesis,
  grounds: readonly string[],
): readonly RuledOut[] {
  const mine = scoresOf({ predictor, readings }, lead);
  const found = new Map<number, Hypothesis[]>();
  for (const rival of rivalsOf(belief, group.repair)) {
    const behind = scoresOf({ predictor, readings }, rival).map(
      (theirs, at) => (mine[at] as number) - theirs,
    );
    const onGrounds = behind.filter((_, at) => grounds.includes((readings[at] as Reading).id));
    if (onGrounds.reduce((sum, one) => sum + one, 0) > AS_WELL) continue;
    const most = behind.reduce((best, one, at) => (one > (behind[best] as number) ? at : best), 0);
    if ((behind[most] as number) < RULES_OUT) continue;
    if (grounds.includes((readings[most] as Reading).id)) continue;
    const list = found.get(most);
    if (list) list.push(rival);
    else found.set(most, [rival]);
  }
  return [...found]
    .sort(([x], [y]) => x - y)
    .map(([at, rivals]) => ({
      reading: (readings[at] as Reading).id,
      titles: rivals.sort((x, y) => y.logPrior - x.logPrior).map(titleOf),
    }));
}

/** The best of each other repair: what is weighed comes likeliest first. */
function rivalsOf(belief: Belief, repair: string): readonly Hypothesis[] {
  const best = new Map<string, Hypothesis>();
  for (const { hypothesis } of belief.weighed) {
    const key = hypothesis.faults.length === 1 ? hypothesis.faults[0]?.remedy.key : undefined;
    if (key !== undefined && key !== repair && !best.has(key)) best.set(key, hypothesis);
  }
  return [...best.values()];
}

const titleOf = (hypothesis: Hypothesis): string => hypothesis.faults[0]?.remedy.title ?? '';
