import type { LugRef } from '../circuit/circuit.ts';
import { checkWords } from '../words/en/checks.ts';
import { commonWords } from '../words/en/common.ts';
import { joinedIn, type Network, type Stand } from './network.ts';
import { handsOff, type Stands } from './stands.ts';
import type { Warning } from './warning.ts';
import { lugWords, standWords } from './words.ts';

/**
 * Settings in which hot is on ground with every knob full up and no button held. A kill button that is held and a volume
 * at 0 do that on purpose.
 */
export function shortedSettings(network: Network, { all }: Stands): readonly Warning[] {
  const { jack } = network;
  if (!jack) return [];
  const found = new Map<string, Warning>();
  for (const stand of all) {
    if (!handsOff(network, stand)) continue;
    const sets = joinedIn(network, stand, true);
    if (sets.root(jack.tip) !== sets.root(jack.sleeve)) continue;
    const way = wayToGround(network, stand);
    const key = way.map(({ lugs }) => lugs.join('~')).join();
    if (!found.has(key)) found.set(key, warningOf(network, stand, way));
  }
  return [...found.values()];
}

/** A step from point to point: a contact of a switch, or the end of a pot's track. */
interface Step {
  readonly lugs: readonly [LugRef, LugRef];
  /** Index of the switch, -1 for a pot. */
  readonly by: number;
}

/** The fewest contacts and track ends over which hot meets ground; none where leads alone do it. */
function wayToGround(network: Network, stand: Stand): readonly Step[] {
  const { jack, layout } = network;
  if (!jack) return [];
  const steps: Step[] = network.switches.flatMap((part, by) =>
    (part.positions[stand[by] ?? 0]?.joins ?? []).map(([a, b]) => ({
      by,
      lugs: [`${part.id}.${a}`, `${part.id}.${b}`] as const,
    })),
  );
  for (const { slight, part, site } of network.edges) {
    if (!slight) continue;
    const end = layout.sites[site]?.id.endsWith(':lower') ? '1' : '3';
    steps.push({ by: -1, lugs: [`${part.id}.2`, `${part.id}.${end}`] });
  }
  const ways = new Map<number, readonly Step[]>([[jack.tip, []]]);
  for (const [point, way] of ways)
    for (const step of steps) {
      const [a, b] = step.lugs.map((lug) => network.pointOf(lug)) as [number, number];
      const next = a === point ? b : b === point ? a : point;
      if (!ways.has(next)) ways.set(next, [...way, step]);
    }
  return ways.get(jack.sleeve) ?? [];
}

function warningOf(network: Network, stand: Stand, way: readonly Step[]): Warning {
  const { jack } = network;
  if (way.length === 0)
    return {
      kind: 'shorted',
      lugs: jack ? [`${jack.id}.tip`, `${jack.id}.sleeve`] : [],
      parts: jack ? [jack.id] : [],
      sentence: checkWords().hotAndGroundAreJoinedByWires,
    };
  const which = [...new Set(way.map(({ by }) => by))].filter((by) => by >= 0);
  const lugs = way.flatMap((step) => step.lugs);
  const last = way.at(-1)?.lugs ?? [];
  const parts = [...new Set(lugs.map((lug) => lug.slice(0, lug.indexOf('.'))))];
  const where = commonWords().and(last.map((lug) => lugWords(network, lug)));
  const when = standWords(network, stand, which) || checkWords().withEveryKnobFullUp;
  return {
    kind: 'shorted',
    lugs,
    parts,
    sentence: checkWords().hotIsJoinedToGroundWhenBy(when, where),
  };
}
