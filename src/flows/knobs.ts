import { fittedBleed } from '../circuit/catalog/modifications/fitted-bleed.ts';
import type { Circuit, Setting } from '../circuit/circuit.ts';
import { type Layout, layoutOf, nodeAt, type Site, siteValues } from '../circuit/netlist.ts';
import type { PartOf } from '../circuit/parts/part.ts';
import { potsOf, withKnob } from '../circuit/setting.ts';
import type { AskOf } from '../readings/reading.ts';
import { called } from '../words/called.ts';
import { listeningPlaces } from './symptom.ts';

/** A knob at 0 in a position where it is in the signal's way, all else full up. */
export interface KnobPlace {
  readonly pot: PartOf<'pot'>;
  /** The position of the selector, as in a sentence. */
  readonly title: string;
  readonly ask: AskOf<'listen'>;
}

/** One question for each knob that acts somewhere: does it do its job when it is turned down? */
export function knobPlaces(circuit: Circuit): readonly KnobPlace[] {
  const layout = layoutOf(circuit);
  const at = sitesAtNodes(layout);
  const places = listeningPlaces(circuit).map((place) => ({
    ...place,
    steps: stepsToParts(layout, at, place.ask.setting),
  }));
  return potsOf(circuit).flatMap((pot): KnobPlace[] => {
    const steps = (place: (typeof places)[number]) => place.steps.get(pot.id) ?? 0;
    // Nearest to the jack a knob acts most; where fewest other parts play along it is heard best.
    const [best] = places
      .filter((place) => place.steps.has(pot.id))
      .sort((a, b) => steps(a) - steps(b) || a.steps.size - b.steps.size);
    if (!best) return [];
    const setting = withKnob(best.ask.setting, pot.id, 0);
    return [{ pot, title: called(best.title), ask: { kind: 'listen', setting } }];
  });
}

/**
 * Volumes at half that have a treble bleed. Without one every guitar is duller at half than at full, and nothing would be told by it.
 */
export function halfPlaces(circuit: Circuit): readonly KnobPlace[] {
  return knobPlaces(circuit)
    .filter(({ pot }) => pot.role === 'volume' && fittedBleed(circuit, pot.id).make !== 'none')
    .map((place) => ({
      ...place,
      ask: { ...place.ask, setting: withKnob(place.ask.setting, place.pot.id, 5) },
    }));
}

/** How many sites lie between the jack's tip and each part in a setting, by ways that do not pass through ground. */
function stepsToParts(
  layout: Layout,
  at: SitesAtNodes,
  setting: Setting,
): ReadonlyMap<string, number> {
  const { ohms, farads } = siteValues(layout, setting);
  const joined = (index: number) => Number.isFinite(ohms[index]) || (farads[index] ?? 0) > 0;
  const ground = stepsFrom(at, nodeAt(layout, 'jack.sleeve'), (index) => ohms[index] === 0);
  const live = stepsFrom(at, nodeAt(layout, 'jack.tip'), joined, ground);
  const parts = new Map<string, number>();
  for (const { part, a, b, index } of layout.sites) {
    const near = Math.min(live.get(a) ?? Infinity, live.get(b) ?? Infinity);
    if (part === undefined || !joined(index) || near === Infinity) continue;
    parts.set(part, Math.min(near, parts.get(part) ?? Infinity));
  }
  return parts;
}

/** The sites at each node. */
type SitesAtNodes = readonly (readonly Site[])[];

function sitesAtNodes({ nodes, sites }: Layout): SitesAtNodes {
  const at: Site[][] = nodes.map(() => []);
  for (const site of sites) {
    at[site.a]?.push(site);
    if (site.b !== site.a) at[site.b]?.push(site);
  }
  return at;
}

/** Steps to every node that can be reached over the sites that `passes` lets through, never entering `walls`. */
function stepsFrom(
  at: SitesAtNodes,
  start: number,
  passes: (site: number) => boolean,
  walls: ReadonlyMap<number, number> = new Map(),
): ReadonlyMap<number, number> {
  const found = new Map([[start, 0]]);
  // A map can grow while it is walked, in the order of its keys: nearest first, each node once.
  for (const [node, steps] of found)
    for (const { index, a, b } of at[node] ?? []) {
      if (!passes(index)) continue;
      const next = a === node ? b : a;
      if (!walls.has(next) && !found.has(next)) found.set(next, steps + 1);
    }
  return found;
}
