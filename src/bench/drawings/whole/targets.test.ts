import { expect, it, vi } from 'vitest';
import { twoHumbuckersFourKnobs } from '../../../circuit/catalog/two-humbuckers-four-knobs.ts';
import { point } from '../geometry.ts';
import { dotsOf } from './dots.ts';
import { meantBy } from './targets.ts';
import { wholeLayout } from './whole-layout.ts';

const layout = wholeLayout(twoHumbuckersFourKnobs());
const dots = dotsOf(layout, { 'neckSlug:winding': 0.2 });

it('takes a tap for the nearest dot, at half its size too', () => {
  const onSite = vi.fn();
  for (const { at } of dots) meantBy(layout, point(at.x + 1, at.y + 1), 0.5, { onSite }, dots)?.();
  expect(onSite.mock.calls.map(([site]) => site)).toEqual(dots.map(({ site }) => site));
});

it('takes a tap far from all for none', () =>
  expect(meantBy(layout, point(-500, -500), 1, { onSite: vi.fn() }, dots)).toBeNull());
