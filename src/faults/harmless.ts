import type { Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { type Layout, nodeAt, siteAt } from '../circuit/netlist.ts';
import { switchSettings } from '../circuit/setting.ts';
import { wire } from '../circuit/wired.ts';
import { type DcSolution, solveDc } from '../solver/index.ts';
import type { Fault } from './fault.ts';

/**
 * Whether a slip of the wiring changes nothing in any switch position, such as solder between two lugs that a wire joins anyway,
 * or a ground wire on one case instead of the next. Only such slips are asked: a bad joint is bad even where a second path hides it.
 */
export function harmless(layout: Layout, fault: Fault): boolean {
  if (
    !fault.variants.every(
      ({ edits }) =>
        edits.length > 0 &&
        edits.every(({ op }) => op === 'bridge' || op === 'land' || op === 'exchange'),
    )
  )
    return fault.variants.every(({ edits }) => edits.length === 0);
  const { lugs, coils, settings } = intendedOf(layout);
  return settings.every(({ setting, healthy, between, turns }) =>
    fault.variants.every(({ edits }) => {
      if (idle(layout, lugs, healthy, edits)) return true;
      const now = solved(layout, setting, edits);
      return (
        lugs.every((x, at) =>
          lugs
            .slice(0, at)
            .every(
              (y, other) =>
                Math.abs(
                  difference(now.resistance(x, y), between[(at * (at - 1)) / 2 + other] as number),
                ) < 0.1,
            ),
        ) &&
        coils.every(([start, finish], coil) =>
          lugs.every(
            (lug, at) =>
              !(
                Math.abs(
                  now.resistance(lug, start) -
                    now.resistance(lug, finish) -
                    (turns[coil * lugs.length + at] as number),
                ) > 0.1
              ),
          ),
        )
      );
    }),
  );
}

/** Whether all that is added are bridges between points that are one already, or to a point that nothing soldered reaches. */
function idle(
  layout: Layout,
  lugs: readonly number[],
  healthy: DcSolution,
  edits: readonly Edit[],
): boolean {
  const alone = (node: number) =>
    lugs.every((lug) => healthy.resistance(node, lug) === Number.POSITIVE_INFINITY);
  const [edit] = edits;
  if (edits.length !== 1 || edit?.op !== 'bridge') return false;
  const [a, b] = [nodeAt(layout, edit.a), nodeAt(layout, edit.b)];
  return healthy.resistance(a, b) === 0 || alone(a) || alone(b);
}

interface Intended {
  /** Nodes of lugs that something is soldered to: what hangs on nothing cannot be heard, and is not compared. */
  readonly lugs: readonly number[];
  /** Nodes of start and finish. */
  readonly coils: readonly (readonly [number, number])[];
  readonly settings: readonly {
    readonly setting: Setting;
    readonly healthy: DcSolution;
    /** Ohms of each two lugs, the later one's row by row. */
    readonly between: Float64Array;
    /** How much more ohms each lug is from a coil's start than from its finish: this tells a coil that is turned. Coil by coil. */
    readonly turns: Float64Array;
  }[];
}
const intended = new WeakMap<Layout, Intended>();

/** What the wiring as intended reads in every switch position; worked out once, as hundreds of slips are held against it. */
function intendedOf(layout: Layout): Intended {
  const known = intended.get(layout);
  if (known) return known;
  const lugs = layout.nodes.flatMap((name, at) => (layout.jointsAt.has(name) ? [at] : []));
  const coils = layout.circuit.parts
    .filter(({ kind }) => kind === 'coil')
    .map(({ id }) => {
      const { a, b } = siteAt(layout, `${id}:winding`);
      return [a, b] as const;
    });
  const made: Intended = {
    lugs,
    coils,
    settings: switchSettings(layout.circuit).map((setting) => {
      const healthy = solved(layout, setting, []);
      return {
        setting,
        healthy,
        between: Float64Array.from(
          lugs.flatMap((x, at) => lugs.slice(0, at).map((y) => healthy.resistance(x, y))),
        ),
        turns: Float64Array.from(
          coils.flatMap(([start, finish]) =>
            lugs.map((lug) => healthy.resistance(lug, start) - healthy.resistance(lug, finish)),
          ),
        ),
      };
    }),
  };
  intended.set(layout, made);
  return made;
}

function solved(layout: Layout, setting: Setting, edits: readonly Edit[]): DcSolution {
  const { nodeCount, a, b, ohms } = wire(layout, setting, edits);
  return solveDc({ nodes: nodeCount, a, b, ohms });
}

/** Two infinities are equal. */
const difference = (x: number, y: number): number => (x === y ? 0 : x - y);
