import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// The formulas of WCAG 2.2 (relative luminance and contrast ratio), a W3C recommendation.
const channel = (value: number): number => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};
const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((at) => channel(Number.parseInt(hex.slice(at, at + 2), 16)));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
};
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

const sheet = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');
const tokens = new Map(
  [...sheet.matchAll(/--([\w-]+): light-dark\((#[\da-f]{6}), (#[\da-f]{6})\)/g)].map(
    ([, name, light, dark]) => [name as string, { light: light as string, dark: dark as string }],
  ),
);
const themes = ['light', 'dark'] as const;
const of = (name: string, theme: (typeof themes)[number]): string => {
  const found = tokens.get(name);
  if (!found) throw new Error(`There is no colour called ${name}.`);
  return found[theme];
};

describe('the formula', () => {
  it('gives 21 for black on white, and 1 for a colour on itself', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#9a4a12', '#9a4a12')).toBe(1);
  });
});

describe.each(themes)('in the %s theme', (theme) => {
  it.each(['ink', 'soft', 'copper', 'fits', 'off', 'maybe'])(
    'text in %s has 4.5 to 1 on paper and on sheet (1.4.3)',
    (name) => {
      for (const ground of ['paper', 'sheet'])
        expect(contrast(of(name, theme), of(ground, theme)), ground).toBeGreaterThanOrEqual(4.5);
    },
  );

  it('text on copper has 4.5 to 1', () => {
    expect(contrast(of('on-copper', theme), of('copper', theme))).toBeGreaterThanOrEqual(4.5);
  });

  it('drawn lines, lugs asked for and the ring of the focus have 3 to 1 (1.4.11)', () => {
    for (const name of ['ink', 'soft', 'copper'])
      expect(contrast(of(name, theme), of('paper', theme)), name).toBeGreaterThanOrEqual(3);
  });

  it('the letters on both probes have 4.5 to 1, and the black probe is told from the ground by its edge', () => {
    for (const probe of ['#c4302b', '#16191a'])
      expect(contrast('#ffffff', probe), probe).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of('ink', theme), of('paper', theme))).toBeGreaterThanOrEqual(3);
  });
});

it('every colour of the tokens is looked at here, or is no more than a hairline', () => {
  expect([...tokens.keys()].sort()).toEqual(
    ['copper', 'fits', 'ink', 'line', 'maybe', 'off', 'on-copper', 'paper', 'sheet', 'soft'].sort(),
  );
});
