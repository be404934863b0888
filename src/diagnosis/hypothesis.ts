import type { Edit } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { landedElsewhere } from '../faults/elsewhere.ts';
import type { Fault } from '../faults/fault.ts';
import { faultsOf } from '../faults/index.ts';
import { straysOf } from '../faults/strays.ts';
import type { Loose } from '../readings/level.ts';

/** Keys of the two suspects that are no fault of the model. */
export const HEALTHY = 'healthy';
export const SOMETHING_ELSE = 'something else';

/** One way the guitar may be: no fault, one fault in one size, or two, which may be one slip. `something else` predicts nothing and is held apart. */
export interface Hypothesis {
  /** Its place among all hypotheses of a circuit; pairs come after the singles. */
  readonly index: number;
  readonly faults: readonly Fault[];
  readonly edits: readonly Edit[];
  readonly logPrior: number;
  readonly loose?: Loose;
}

/** One of them, and how much of the belief it has. */
export interface Weighed {
  readonly hypothesis: Hypothesis;
  readonly probability: number;
}

/** Shares before any reading (common practice, no source: a guitar is on the bench because something is wrong, and two faults at once are real). */
export const PRIOR = {
  healthy: 0.1,
  single: 0.77,
  double: 0.07,
  stray: 0.015,
  elsewhere: 0.02,
  crossed: 0.01,
  somethingElse: 0.015,
} as const;

/** Healthy first, then every modelled single fault in each of its sizes. */
export function singleHypotheses(
  layout: Layout,
  known: readonly Fault[] = faultsOf(layout.circuit),
): readonly Hypothesis[] {
  const healthy: Hypothesis = {
    index: 0,
    faults: [],
    edits: [],
    logPrior: Math.log(PRIOR.healthy),
  };
  return [healthy, ...sizesOf(layout, known, PRIOR.single, 1)];
}

/** What a hunt weighs: the singles, and after them what is no slip of a list: paths that nobody drew, and leads on another part. */
export function huntHypotheses(layout: Layout): readonly Hypothesis[] {
  const known = faultsOf(layout.circuit);
  const singles = singleHypotheses(layout, known);
  const strays = sizesOf(layout, straysOf(layout, known), PRIOR.stray, singles.length);
  const from = singles.length + strays.length;
  const astray = sizesOf(layout, landedElsewhere(layout, known), PRIOR.elsewhere, from);
  return [...singles, ...strays, ...astray];
}

/** Every size of these faults, the first with place `from`. */
function sizesOf(
  layout: Layout,
  faults: readonly Fault[],
  share: number,
  from: number,
): readonly Hypothesis[] {
  return faults
    .flatMap((fault) => fault.variants.map((variant) => ({ fault, variant })))
    .map(({ fault, variant: { edits, share: part, loose } }, at): Hypothesis => {
      // Bridges are numbered after the layout's own sites.
      const site =
        loose?.site === 'first bridge'
          ? layout.sites.length
          : loose && layout.siteIndex.get(loose.site);
      return {
        index: from + at,
        faults: [fault],
        edits,
        logPrior: Math.log(share * fault.weight * part),
        ...(loose && site !== undefined
          ? { loose: { site, deviation: loose.deviation, bridge: loose.site === 'first bridge' } }
          : {}),
      };
    });
}

/** What its faults are, in words; one slip of the hands may be two faults. */
export const sentencesOf = ({ faults }: Hypothesis): readonly string[] => [
  ...new Set(faults.map(({ sentence }) => sentence)),
];

/** A bridge of the second fault comes after those of the first. */
function shifted(loose: Loose | undefined, first: Hypothesis): Loose | undefined {
  const bridges = first.edits.filter((edit) => edit.op === 'bridge').length;
  return loose?.bridge ? { ...loose, site: loose.site + bridges } : loose;
}

/** Two faults at once, out of `count` single hypotheses: the prior of either, given that there are two. */
export function pair(first: Hypothesis, second: Hypothesis, count: number): Hypothesis {
  const { single, double } = PRIOR;
  const loose = first.loose ?? shifted(second.loose, first);
  return {
    index: count * (1 + first.index) + second.index,
    faults: [...first.faults, ...second.faults],
    edits: [...first.edits, ...second.edits],
    // Unordered: twice the product of the two single shares.
    logPrior: Math.log(2 * double) + first.logPrior + second.logPrior - 2 * Math.log(single),
    ...(loose ? { loose } : {}),
  };
}
