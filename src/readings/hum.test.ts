import { describe, expect, it } from 'vitest';
import type { Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { Guitar } from './guitar.fixture.ts';
import { humText } from './hum.ts';
import { observe } from './index.ts';
import type { Ask } from './reading.ts';

const plugged = (setting: Setting): Setting => ({ ...setting, plug: 'in' });

/** The mean of what is foretold, decibels; whatever the rest, the chances sum to 1. */
function foretold(guitar: Guitar, setting: Setting, against: Setting, edits: readonly Edit[] = []) {
  const ask: Ask = { kind: 'hum', setting: plugged(setting), against: plugged(against) };
  const chances = Object.entries(guitar.chances(ask, edits));
  expect(chances.reduce((sum, [, chance]) => sum + chance, 0)).toBeCloseTo(1, 12);
  return chances.reduce((sum, [word, chance]) => sum + Number(word) * chance, 0);
}

describe('hum in one position against another', () => {
  const two = new Guitar('two-singles-three-position');
  const [bridge, both, neck] = [two.at('bridge'), two.at('both'), two.at('neck')];

  it('is the same of two like single coils, and turns its sign with the order', () => {
    expect(Math.abs(foretold(two, neck, bridge))).toBeLessThan(1.5);
    expect(foretold(two, both, bridge)).toBeCloseTo(-foretold(two, bridge, both), 6);
  });

  it('falls far where two coils of opposite winding are joined, and not where one of them is wound the same', () => {
    expect(foretold(two, both, bridge)).toBeLessThan(-10);
    // Ends of one coil exchanged: hum follows the winding's way round alone, so it adds.
    const turned: readonly Edit[] = [
      { op: 'exchange', lugs: ['neckCoil.start', 'neckCoil.finish'] },
    ];
    expect(foretold(two, both, bridge, turned)).toBeGreaterThan(-3);
    // A turned magnet takes the string's sign with it, and leaves the hum's.
    const magnet: readonly Edit[] = [{ op: 'turn-magnet', coil: 'neckCoil' }];
    expect(foretold(two, both, bridge, magnet)).toBeCloseTo(foretold(two, both, bridge), 9);
  });

  it('speaks for a turned coil where two positions hum alike that should not', () => {
    const ask: Ask = { kind: 'hum', setting: plugged(both), against: plugged(bridge) };
    const turned: Edit = { op: 'exchange', lugs: ['neckCoil.start', 'neckCoil.finish'] };
    const [healthy, faulty] = [two.chances(ask), two.chances(ask, [turned])];
    expect((faulty['0'] ?? 0) / (healthy['0'] ?? 1)).toBeGreaterThan(10);
    expect((healthy['-18'] ?? 0) / (faulty['-18'] ?? 1)).toBeGreaterThan(5);
  });

  it('falls to what the amplifier hums by itself with the volume at 0', () => {
    const knob = two.circuit.parts.find((part) => part.kind === 'pot' && part.role === 'volume');
    expect(foretold(two, two.at('bridge', { [knob?.id ?? '']: 0 }), bridge)).toBeLessThan(-12);
  });

  it('is a figure that is kept to the decibel and weighed in steps of three', () => {
    const word = (decibels: number) => observe({ kind: 'hum', decibels })[0];
    expect(word(-13.4)).toEqual({ type: 'choice', word: '-12' });
    expect(word(0.2)).toEqual({ type: 'choice', word: '0' });
    expect(word(-0.2)).toEqual({ type: 'choice', word: '0' });
    expect(word(-80)).toEqual({ type: 'choice', word: '-36' });
    expect([humText(-12.4), humText(0.3), humText(6)]).toEqual([
      '12 dB softer',
      'as loud',
      '6 dB louder',
    ]);
  });
});
