import type { NodeName, SiteId } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import type { Variant } from './fault.ts';

/** A bad joint reads anything from a few ohm to megohms: half-decade steps, each blurred to meet the next. */
export function resistances(site: SiteId, share: number, least = 5): readonly Variant[] {
  const sizes = Array.from({ length: 12 }, (_, i) => 5 * 10 ** (i / 2)).filter(
    (size) => size >= least,
  );
  return sizes.map((size) => ({
    edits: [{ op: 'resist', site, ohms: ohms(size) }],
    share: share / sizes.length,
    loose: { site, deviation: 0.45 },
  }));
}

/** Solder and strands are near nothing; flux, dirt and conductive paint leak: decades, each blurred to meet the next. */
export function leaks(a: NodeName, b: NodeName, solid: number): readonly Variant[] {
  const rest = [5, 50, 500, 5e3, 50e3, 500e3];
  return [0.5, ...rest].map((size) => ({
    edits: [{ op: 'bridge', a, b, ohms: ohms(size) }],
    share: size < 1 ? solid : (1 - solid) / rest.length,
    loose: { site: 'first bridge', deviation: 0.9 },
  }));
}
