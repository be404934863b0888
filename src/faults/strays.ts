import { lugTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import { ohms } from '../circuit/units.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault } from './fault.ts';
import { pointsOf } from './points.ts';

/** From flux and paint to a resistor somebody put in: fourfold steps, each blurred to meet the next. */
const SIZES = [1e3, 4e3, 16e3, 64e3];

/**
 * Paths that nobody drew: one for every two points of the wiring that no modelled fault joins (a resistor of an old modification,
 * conductive paint, damp flux). They are no slips of a job, so no list of what to prove holds them; a hunt weighs them, as a guitar
 * with one would else be told that a sound part is bad. Weights sum to 1.
 */
export function straysOf(layout: Layout, known: readonly Fault[]): readonly Fault[] {
  const { lugs, of } = pointsOf(layout);
  const name = (a: string, b: string) => [of(a), of(b)].sort((x, y) => x - y).join('~');
  const modelled = new Set(
    known.flatMap(({ variants }) =>
      variants.flatMap(({ edits }) =>
        edits.flatMap((edit) => (edit.op === 'bridge' ? [name(edit.a, edit.b)] : [])),
      ),
    ),
  );
  const pairs = lugs.flatMap((a, at) =>
    lugs.slice(at + 1).flatMap((b) => (modelled.has(name(a, b)) ? [] : [[a, b] as const])),
  );
  return pairs.map(([a, b]): Fault => {
    const [one, other] = [lugTitle(layout, a), lugTitle(layout, b)];
    return {
      id: `stray:${a}~${b}`,
      family: 'strays',
      sites: [a, b].map((lug) => lug.slice(0, lug.indexOf('.'))),
      weight: 1 / pairs.length,
      sentence: faultWords().strayPath(one, other),
      remedy: {
        key: `stray:${a}~${b}`,
        title: faultWords().strayFind(one, other),
        steps: [
          faultWords().strayLook(one, other),
          faultWords().strayDraw,
          faultWords().strayClear,
        ],
        proof: faultWords().strayProof(one, other),
      },
      variants: SIZES.map((size) => ({
        edits: [{ op: 'bridge', a, b, ohms: ohms(size) }],
        share: 1 / SIZES.length,
        loose: { site: 'first bridge', deviation: 0.65 },
      })),
    };
  });
}
