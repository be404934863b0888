import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { modifications } from '../circuit/catalog/modifications/index.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Pot } from '../circuit/parts/part.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';
import { observe, seenText } from './index.ts';
import type { Ask } from './reading.ts';

const withTaper =
  (taper: Pot['taper'], midShare: number, track: number) =>
  (circuit: Circuit): Circuit => ({
    ...circuit,
    parts: circuit.parts.map((part) =>
      part.kind === 'pot'
        ? { ...part, taper, midShare, ohms: { nominal: ohms(track), tolerance: 0.2 } }
        : part,
    ),
  });
const turn = (guitar: Guitar, pot = 'volume', position?: string): Ask => ({
  kind: 'turn',
  pot,
  red: 'jack.tip',
  black: 'jack.sleeve',
  setting: guitar.at(position),
});
function peak(guitar: Guitar): number {
  const [, level] = guitar.predict(turn(guitar));
  if (level?.type !== 'level') throw new Error(`expected a level, got ${level?.type}`);
  return level.ohms;
}

/** Wiper to output: x of the track against the rest and the pickup in series; largest at half of both together, a quarter of their sum (calculus). */
const law = (pot: number, pickup: number): number => (pot + pickup) / 4;

describe('the peak while a volume turns', () => {
  it.each<[Pot['taper'], number, number]>([
    ['linear', 0.15, 500e3],
    ['linear', 0.15, 250e3],
    ['audio', 0.15, 500e3],
    ['audio', 0.1, 500e3],
    ['audio', 0.2, 250e3],
  ])(
    'of %s taper, mid share %d, %d ohm is (Rpot + Rpickup)/4 within a thousandth',
    (taper, share, track) => {
      const guitar = new Guitar('one-humbucker-one-knob', withTaper(taper, share, track));
      expect(Math.abs(peak(guitar) / law(track, 8600) - 1)).toBeLessThan(0.001);
    },
  );

  it('of a reverse audio taper is (Rpot + Rpickup)/4 within a thousandth', () => {
    const guitar = new Guitar('one-humbucker-one-knob', withTaper('reverse-audio', 0.15, 500e3));
    expect(Math.abs(peak(guitar) / law(500e3, 8600) - 1)).toBeLessThan(0.001);
  });
});

describe('left-handed pots', () => {
  const mirrored = modifications.find(({ id }) => id === 'left-handed-pots')!;
  const leftHanded = (circuit: Circuit): Circuit =>
    mirrored.apply(circuit, mirrored.applies(circuit)[0]!, {});
  // A guitar in a mirror is the same guitar: nothing that is read at its jack may change.
  it.each(startingWirings.map(({ id }) => id))(
    'read at the jack of %s as the usual ones, at each figure and while they turn',
    (id) => {
      const [usual, other] = [new Guitar(id), new Guitar(id, leftHanded)];
      for (const { id: pot, kind } of usual.circuit.parts) {
        if (kind !== 'pot') continue;
        for (const figure of [0, 2.5, 5, 7, 10]) {
          const [one, two] = [usual, other].map((guitar) =>
            guitar.jack(guitar.at(undefined, { [pot]: figure })),
          );
          if (typeof one !== 'number') expect(two).toBe(one);
          else expect(Number(two) / one).toBeCloseTo(1, 9);
        }
        const [one, two] = [usual, other].map((guitar) => guitar.predict(turn(guitar, pot)));
        expect(two?.[0]).toEqual(one?.[0]);
        const [first, second] = [one?.[1], two?.[1]];
        if (first?.type !== 'level' || second?.type !== 'level')
          expect(second?.type).toBe(first?.type);
        else expect(second.ohms / first.ohms).toBeCloseTo(1, 4);
      }
    },
  );
});

describe('how it goes while a knob turns', () => {
  const two = new Guitar('two-singles-three-position');
  const word = (ask: Ask, edits: Parameters<Guitar['chances']>[1] = []) =>
    Object.entries(two.chances(ask, edits)).sort((x, y) => y[1] - x[1])[0]![0];

  it('a sound volume is smooth', () => {
    expect(word(turn(two))).toBe('smooth');
  });
  it('a worn track jumps', () => {
    expect(word(turn(two), [{ op: 'worn', part: 'volume' }])).toBe('jumps');
  });
  it('a worn track elsewhere does not', () => {
    expect(word(turn(two), [{ op: 'worn', part: 'tone' }])).toBe('smooth');
  });
  it('a tone behind its capacitor stays', () => {
    expect(word(turn(two, 'tone'))).toBe('stuck');
  });
  it('a tone whose capacitor is shorted moves', () => {
    const short = [{ op: 'bridge', a: 'toneCap.a', b: 'toneCap.b', ohms: ohms(1) }] as const;
    expect(word(turn(two, 'tone'), short)).toBe('smooth');
  });
  it('a volume with an open wiper stays over-range', () => {
    const open = [{ op: 'open', site: 'volume:wiper' }] as const;
    expect(word(turn(two), open)).toBe('stuck');
    expect(two.predict(turn(two), open)[1]).toEqual({ type: 'over' });
  });
});

describe('what was seen', () => {
  it('keeps the peak apart from the way it went, and leaves out a peak that was not entered', () => {
    expect(observe({ kind: 'turn', how: 'smooth', peak: ohms(127e3) })).toEqual([
      { type: 'choice', word: 'smooth' },
      { type: 'level', value: Math.log(127e3) },
    ]);
    expect(observe({ kind: 'turn', how: 'jumps' })).toEqual([
      { type: 'choice', word: 'jumps' },
      undefined,
    ]);
    expect(observe({ kind: 'turn', how: 'stuck', peak: 'open' })[1]).toEqual({ type: 'over' });
    expect(seenText({ kind: 'turn', how: 'smooth', peak: ohms(127e3) })).toBe(
      'smooth, highest 127 kΩ',
    );
    expect(seenText({ kind: 'turn', how: 'jumps' })).toBe('jumps');
  });
});
