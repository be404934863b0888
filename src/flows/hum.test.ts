import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { checkSetting } from '../circuit/check.ts';
import { humAnswers, humPlaces } from './hum.ts';

const built = (id: string) => startingWirings.find((one) => one.id === id)!.build();

describe('where hum is measured', () => {
  it.each(startingWirings.map(({ title, build }) => [title, build()] as const))(
    'is two places or more, in settings that the guitar has: %s',
    (_title, circuit) => {
      const places = humPlaces(circuit);
      expect(places.length).toBeGreaterThan(1);
      expect(new Set(places.map(({ title }) => title)).size).toBe(places.length);
      for (const { setting } of places) checkSetting(circuit, setting);
    },
  );
  it('is at volume 0 as well where there is but one position', () =>
    expect(humPlaces(built('one-humbucker-one-knob')).map(({ title }) => title)).toEqual([
      'the guitar',
      'volume at 0',
    ]));
});

describe('what was measured', () => {
  const [bridge, both, neck] = humPlaces(built('two-singles-three-position')).map(
    ({ setting }) => setting,
  );
  it('is told against the loudest place, whatever the scale', () => {
    const powers = [
      { setting: bridge!, power: 2e-5 },
      { setting: both!, power: 1e-6 },
      { setting: neck!, power: 4e-5 },
    ];
    const answers = humAnswers(powers);
    expect(answers).toEqual([
      { ask: { kind: 'hum', setting: bridge, against: neck }, seen: { kind: 'hum', decibels: -3 } },
      { ask: { kind: 'hum', setting: both, against: neck }, seen: { kind: 'hum', decibels: -16 } },
    ]);
    expect(humAnswers(powers.map((one) => ({ ...one, power: 300 * one.power })))).toEqual(answers);
  });
  it('is no reading where there is nothing to hold it against', () => {
    expect(humAnswers([])).toEqual([]);
    expect(humAnswers([{ setting: neck!, power: 1 }])).toEqual([]);
  });
});
