import type { Layout } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { crossed, seatedEnds } from '../faults/elsewhere.ts';
import { pointsOf } from '../faults/points.ts';
import { type Hypothesis, PRIOR } from './hypothesis.ts';

/**
 * Two leads of two parts, each soldered where the other belongs: one slip of the hands that is two faults to the meter, and far likelier
 * than two slips by themselves. What comes first is either lead's repair. All are equally likely; `count` is how many single
 * hypotheses there are, so that no pair has the same place.
 */
export function crossingsOf(layout: Layout, count: number): readonly Hypothesis[] {
  const { of } = pointsOf(layout);
  const ends = seatedEnds(layout).filter(({ joint }) => reachOf(layout, joint) === 'cavity');
  const pairs = ends.flatMap((one, at) =>
    ends
      .slice(at + 1)
      .filter(({ right }) => partOf(right) !== partOf(one.right) && of(right) !== of(one.right))
      .map((other) => [one, other] as const),
  );
  const logPrior = Math.log(PRIOR.crossed / pairs.length);
  return pairs.map(([one, other], at): Hypothesis => {
    const faults = crossed(layout, one, other);
    return {
      index: count * (1 + count) + at,
      faults,
      edits: faults.flatMap(({ variants }) => variants.flatMap(({ edits }) => edits)),
      logPrior,
    };
  });
}

const partOf = (lug: string): string => lug.slice(0, lug.indexOf('.'));
