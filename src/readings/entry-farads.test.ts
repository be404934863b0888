import { describe, expect, it } from 'vitest';
import { formatFarads, parseFarads } from './entry.ts';

const choicesOf = (text: string) => {
  const entry = parseFarads(text);
  return entry.ok ? entry : entry.choices.map(({ value }) => value);
};

describe('a capacitance as people type it', () => {
  it.each([
    ['22n', 22e-9],
    ['22 nF', 22e-9],
    ['0.022u', 22e-9],
    ['0.022 µF', 22e-9],
    ['0.022 μF', 22e-9],
    ['0,022 uF', 22e-9],
    ['.047 mfd', 47e-9],
    ['470p', 470e-12],
    ['680 pF', 680e-12],
    ['0.1 microfarad', 100e-9],
    // IEC 60062, the letter as decimal marker: p33 = 0.33 pF, 3p3 = 3.3 pF, 1n5 = 1.5 nF, 2µ2 = 2.2 µF (values from memory).
    ['1n5', 1.5e-9],
    ['3p3', 3.3e-12],
    ['p33', 0.33e-12],
    ['2µ2', 2.2e-6],
    // With the letter of a tolerance: 223J = 22 nF 5 %, 104K = 100 nF 10 %, 1n5K (values and letters from memory).
    ['223J', 22e-9],
    ['104K', 100e-9],
    ['473M', 47e-9],
    ['1n5K', 1.5e-9],
  ])('%s is %d farad', (text, value) => {
    const entry = parseFarads(text);
    expect(entry.ok && typeof entry.farads === 'number' && entry.farads / value).toBeCloseTo(1, 12);
  });

  it('takes open and short as they are', () => {
    expect(parseFarads('open')).toEqual({ ok: true, farads: 'open' });
    expect(parseFarads('Short')).toEqual({ ok: true, farads: 'short' });
  });

  it('asks about OL, which is not open on a capacitance range', () => {
    expect(choicesOf('OL')).toEqual(['short']);
  });

  it('asks about zero', () => {
    expect(choicesOf('0.00 nF')).toEqual(['open']);
  });

  it('asks for the unit of a bare number, and knows the three-digit code', () => {
    // IEC 60062: two significant figures and the number of zeros, in pF; 223 = 22 nF, 104 = 100 nF (from memory).
    const [code] = choicesOf('223') as number[];
    expect(code).toBeCloseTo(22e-9, 15);
    expect((choicesOf('104') as number[])[0]).toBeCloseTo(100e-9, 15);
    expect((choicesOf('0.022') as number[])[0]).toBeCloseTo(22e-9, 15);
  });

  it.each([
    ['', 'Type the capacitance with its unit, as in 22n or 0.022u.'],
    ['0.022m', '"m" is not a unit of capacitance. Type p, n or u, as in 470p, 22n or 0.022u.'],
    ['-22n', '"-22n" is below zero, which no capacitance is.'],
    ['fine', '"fine" is not a capacitance. Type it as in 22n, 1n5 or 0.022u.'],
    ['5 F', '"5 F" is more than any capacitor of a guitar. Check the unit.'],
  ])('%j is refused in words', (text, sentence) => {
    expect(parseFarads(text)).toMatchObject({ ok: false, sentence });
  });

  it('shows what it reads', () => {
    expect(formatFarads(22e-9 as never)).toBe('22 nF');
    expect(formatFarads(999.9e-12 as never)).toBe('1 nF');
    expect(formatFarads('short')).toBe('short');
  });
});
