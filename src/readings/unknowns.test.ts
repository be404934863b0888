import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { Guitar, meter } from './guitar.fixture.ts';
import { unknownsOf } from './unknowns.ts';

const one = new Guitar('one-humbucker-one-knob');

describe('the shared unknowns', () => {
  const { list, gain, leads } = unknownsOf(one.layout, meter);
  const named = (name: string) => list.find((unknown) => unknown.name === name)!;

  it('are one a coil, two a pot, and temperature, scale and leads', () => {
    expect(list.map(({ name }) => name)).toEqual([
      "bridge pickup's screw coil",
      "bridge pickup's slug coil",
      'volume',
      'track ends of the volume',
      'temperature',
      "the meter's scale",
      'probe leads',
    ]);
    expect([list[gain]!.name, list[leads]!.name]).toEqual(["the meter's scale", 'probe leads']);
  });

  it('have half of the tolerance as deviation, tolerance being two', () => {
    expect(named('volume').deviation).toBe(0.1);
    expect(named("bridge pickup's slug coil").deviation).toBe(0.08);
    expect(named("the meter's scale").deviation).toBe(meter.accuracy / 2);
  });

  it('warm copper by 0.393 % a kelvin (IEC 60028), 5 K one deviation, all coils at once', () => {
    expect(named('temperature').deviation).toBeCloseTo(0.01965, 9);
    expect(named('temperature').sites).toHaveLength(2);
  });

  it('of a measured part are small', () => {
    const measured = new Guitar('one-humbucker-one-knob', (circuit) => ({
      ...circuit,
      parts: circuit.parts.map((part) =>
        part.kind === 'pot' ? { ...part, ohms: { ...part.ohms, measured: ohms(471e3) } } : part,
      ),
    }));
    const volume = measured.instrument.unknowns.list.find(({ name }) => name === 'volume')!;
    expect(volume).toMatchObject({ deviation: 0.01, nominal: 471e3 });
  });
});

describe('a view', () => {
  it('keeps each setting of a guitar solved once', () => {
    const view = one.view(one.at());
    const turned = view.in(one.at(undefined, { volume: 5 }));
    expect(view.in(one.at(undefined, { volume: 5 }))).toBe(turned);
    expect(turned.in(one.at())).toBe(view);
    expect(turned.dc).toBe(turned.dc);
    expect(view.remembered).toBe(2);
    expect(turned.edits).toBe(view.edits);
  });
});
