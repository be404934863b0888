import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { Guitar, meter, parallel } from './guitar.fixture.ts';
import { observe, seenText } from './index.ts';

const END = 10;
const two = new Guitar('two-singles-three-position');
const four = new Guitar('two-humbuckers-four-knobs');

/** Volume at 10, wiper to output: pickup and the track's end in series, the rest of the track beside them (parallel law). */
const throughVolume = (pickup: number, pot: number): number =>
  parallel(pickup + END, pot - END) + meter.leads;

describe('ohms at the jack', () => {
  it.each<[string, number | 'over', number]>([
    ['bridge', two.jack(two.at('bridge')), throughVolume(7000, 250e3)],
    ['neck', two.jack(two.at('neck')), throughVolume(6600, 250e3)],
    ['both', two.jack(two.at('both')), throughVolume(parallel(7000, 6600), 250e3)],
  ])('with one shared volume, %s: pickups in parallel under the pot', (_position, got, law) => {
    expect(got).toBeCloseTo(law, 6);
  });

  it('with a volume for each pickup: both branches in parallel', () => {
    const [neck, bridge] = [parallel(7600 + END, 500e3 - END), parallel(8200 + END, 500e3 - END)];
    expect(four.jack(four.at('neck'))).toBeCloseTo(neck + meter.leads, 6);
    expect(four.jack(four.at('both'))).toBeCloseTo(parallel(neck, bridge) + meter.leads, 6);
  });

  // 7.5 k under 500 k reads 7.39 k, under 250 k 7.28 k: arithmetic of the parallel law, ends and leads not counted.
  it.each([
    [500e3, 7390],
    [250e3, 7280],
  ])('of 7.5 k under %d ohm is %d ohm', (pot, read) => {
    const guitar = new Guitar('one-humbucker-one-knob', (circuit) => ({
      ...circuit,
      parts: circuit.parts.map((part) =>
        part.kind === 'coil'
          ? { ...part, ohms: { nominal: ohms(3750), tolerance: 0.16 } }
          : part.kind === 'pot'
            ? { ...part, ohms: { nominal: ohms(pot), tolerance: 0.2 } }
            : part,
      ),
    }));
    expect(Math.abs((guitar.jack(guitar.at()) as number) - read)).toBeLessThan(12);
  });

  it('reads the pot where the coil is open: the tone capacitor blocks the rest', () => {
    const open = [{ op: 'open', site: 'bridgeCoil:winding' }] as const;
    // To 1e-9 of the reading.
    expect(two.jack(two.at('bridge'), open)).toBeCloseTo(250e3 - END + meter.leads, 4);
  });

  it('does not move with a tone knob behind its capacitor', () => {
    expect(two.jack(two.at('bridge', { tone: 0 }))).toBe(two.jack(two.at('bridge')));
  });

  it('at volume 0 is the end of the track, a short to the ear', () => {
    expect(two.jack(two.at('bridge', { volume: 0 }))).toBeCloseTo(
      parallel(END, 250e3 - END + 7000) + meter.leads,
      6,
    );
  });

  it('is over-range where the wire to the tip is open', () => {
    expect(two.jack(two.at('bridge'), [{ op: 'open', site: 'jackHot@to' }])).toBe('over');
  });

  it('is over-range above what the meter can show', () => {
    const leak = (value: number) =>
      [
        { op: 'open', site: 'jackHot@to' },
        { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(value) },
      ] as const;
    expect(two.jack(two.at('bridge'), leak(19e6))).toBeCloseTo(19e6, 0);
    expect(two.jack(two.at('bridge'), leak(21e6))).toBe('over');
  });

  it('of a lifted pickup is the pickup alone', () => {
    const [one] = four.predict({
      kind: 'ohms',
      red: 'bridgeHot@to',
      black: 'bridgeCold@to',
      setting: { ...four.at(), lifted: ['bridgeHot@to'] },
    });
    expect(one).toMatchObject({ type: 'level', ohms: expect.closeTo(8200.3, 6) });
  });

  it('does not depend on which probe is which', () => {
    const ask = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting: two.at() } as const;
    const turned = { ...ask, red: 'jack.sleeve', black: 'jack.tip' };
    expect(two.predict(turned)).toEqual(two.predict(ask));
  });
});

describe('what the display showed', () => {
  it('is a logarithm, the over-range sign, and never less than a tenth of an ohm', () => {
    const of = (value: number | 'open') =>
      observe({ kind: 'ohms', ohms: value === 'open' ? value : ohms(value) });
    expect(of(7000)).toEqual([{ type: 'level', value: Math.log(7000) }]);
    expect(of('open')).toEqual([{ type: 'over' }]);
    expect(of(0)).toEqual([{ type: 'level', value: Math.log(0.1) }]);
  });

  it.each<[number, string]>([
    [0.3, '0.3 Ω'],
    [57, '57 Ω'],
    [999.4, '999 Ω'],
    [5900, '5.90 kΩ'],
    [42_300, '42.3 kΩ'],
    [430e3, '430 kΩ'],
    [1e6, '1.00 MΩ'],
  ])('%d ohm is said as %s', (value, text) => {
    expect(seenText({ kind: 'ohms', ohms: ohms(value) })).toBe(text);
  });

  it('open is said as the display says it', () => {
    expect(seenText({ kind: 'ohms', ohms: 'open' })).toBe('open (OL)');
  });
});
