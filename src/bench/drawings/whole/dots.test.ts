import { expect, it } from 'vitest';
import { startingWirings } from '../../../circuit/catalog/index.ts';
import { twoHumbuckersFourKnobs } from '../../../circuit/catalog/two-humbuckers-four-knobs.ts';
import { faultsOf } from '../../../faults/index.ts';
import { distance } from '../geometry.ts';
import { dotRadius, dotsOf, figuresOf, spotOf } from './dots.ts';
import { wholeLayout } from './whole-layout.ts';

const four = twoHumbuckersFourKnobs();
const layout = wholeLayout(four);
const suspicion = { 'neckHot@to': 0.6, neckHot: 0.1, 'neckSlug:winding': 0.2, neckVolume: 0.05 };

it('has a dot on every joint, and on suspected wires and parts', () => {
  const sites = dotsOf(layout, suspicion).map(({ site }) => site);
  const joints = four.leads.flatMap(({ id }) => [`${id}@from`, `${id}@to`]);
  expect([...sites].sort()).toEqual(
    [...joints, 'neckHot', 'neckSlug:winding', 'neckVolume'].sort(),
  );
});

it('lays the largest on top', () =>
  expect(dotsOf(layout, suspicion).at(-1)?.site).toBe('neckHot@to'));

it('grows a dot by area with its share', () => {
  expect(dotRadius(0)).toBe(3);
  expect((dotRadius(0.8) - 3) ** 2 / (dotRadius(0.2) - 3) ** 2).toBeCloseTo(4, 10);
});

it('has a dot for every place that any fault of a starting wiring names, each in the drawing and at a place of its own', () => {
  for (const { id, build } of startingWirings.slice(0, 6)) {
    const circuit = build();
    const whole = wholeLayout(circuit);
    const sites = new Set(faultsOf(circuit).flatMap((fault) => fault.sites));
    const dots = dotsOf(whole, Object.fromEntries([...sites].map((site) => [site, 0.01])));
    const drawn = new Set(dots.map(({ site }) => site));
    expect([id, [...sites].filter((site) => !drawn.has(site))]).toEqual([id, []]);
    const { x, y, w, h } = whole.box;
    for (const [i, { at, site }] of dots.entries()) {
      expect(at.x > x && at.x < x + w && at.y > y && at.y < y + h, `${id} ${site}`).toBe(true);
      for (const other of dots.slice(i + 1))
        expect(distance(at, other.at), `${id}: ${site} and ${other.site}`).toBeGreaterThan(2);
    }
  }
});

it('writes the figure beside the largest dots only', () => {
  const figures = figuresOf(dotsOf(layout, suspicion), layout.box);
  expect(figures.map(({ text }) => text).sort()).toEqual(['10\u00a0%', '20\u00a0%', '60\u00a0%']);
});

it('finds the place of a dot by its name', () => {
  const hot = layout.leads.find(({ lead }) => lead.id === 'neckHot')!;
  expect(spotOf(layout, {}, 'neckHot@to')).toEqual(hot.dots.to);
  expect(spotOf(layout, {}, 'neckHot')).toBeNull();
});
