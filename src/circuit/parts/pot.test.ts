import { describe, expect, it } from 'vitest';
import { restingSetting } from '../setting.ts';
import { ohms } from '../units.ts';
import type { Pot } from './part.ts';
import { END_OHMS, knobAt, pot, scaledTrack, trackShare } from './pot.ts';

const made = (taper: Pot['taper'], midShare = 0.15): Pot => ({
  kind: 'pot',
  id: 'volume',
  title: 'volume',
  role: 'volume',
  ohms: { nominal: ohms(500e3), tolerance: 0.2 },
  taper,
  midShare,
});
const setting = (figure: number) => ({
  ...restingSetting({ id: '', title: '', parts: [], leads: [], pickups: [] }),
  knobs: { volume: figure },
});
const pieces = (part: Pot, figure: number) =>
  pot
    .branches(part, setting(figure))
    .flatMap(({ name, what }) =>
      what.type === 'resistance' ? [[name, what.ohms as number] as const] : [],
    );
const lower = (part: Pot, figure: number) => pieces(part, figure)[0]![1];
const upper = (part: Pot, figure: number) => pieces(part, figure)[1]![1];

const figures = Array.from({ length: 21 }, (_, at) => at / 2);

describe('a taper', () => {
  it.each<[Pot['taper'], number, number]>([
    // Half turn: linear 50 %; audio its stated share (10 to 20 %, field figure); reverse audio the rest of it.
    ['linear', 5, 0.5],
    ['audio', 5, 0.15],
    ['reverse-audio', 5, 0.85],
    ['linear', 2.5, 0.25],
    ['audio', 2.5, 0.075],
    ['audio', 7.5, 0.575],
    ['reverse-audio', 2.5, 0.425],
    ['reverse-audio', 7.5, 0.925],
  ])('%s at %d has %d of its track below the wiper', (taper, figure, share) => {
    expect(trackShare(made(taper), figure)).toBeCloseTo(share, 12);
  });

  it.each(['linear', 'audio', 'reverse-audio'] as const)(
    '%s runs from 0 to 1 and only rises',
    (taper) => {
      const shares = figures.map((figure) => trackShare(made(taper), figure));
      expect(shares[0]).toBe(0);
      expect(shares.at(-1)).toBeCloseTo(1, 12);
      for (let at = 1; at < shares.length; at += 1)
        expect(shares[at]).toBeGreaterThan(shares[at - 1]!);
    },
  );

  it.each(['linear', 'audio', 'reverse-audio'] as const)(
    '%s of a left-handed pot stands at lug 1, the counter-clockwise end, at 10, and a figure is found again',
    (taper) => {
      const part: Pot = { ...made(taper), leftHanded: true };
      expect(lower(part, 10)).toBeCloseTo(END_OHMS, 9);
      expect(upper(part, 0)).toBeCloseTo(END_OHMS, 9);
      for (const figure of figures) {
        expect(trackShare(part, figure)).toBeCloseTo(trackShare(made(taper), 10 - figure), 12);
        expect(knobAt(part, trackShare(part, figure))).toBeCloseTo(figure, 9);
      }
    },
  );

  it('reverse audio is audio turned the other way', () => {
    for (const figure of figures)
      expect(trackShare(made('reverse-audio'), figure)).toBeCloseTo(
        1 - trackShare(made('audio'), 10 - figure),
        12,
      );
  });

  it('a figure beyond the stops counts as the stop', () => {
    expect(trackShare(made('linear'), -1)).toBe(0);
    expect(trackShare(made('linear'), 12)).toBe(1);
  });
});

describe('a pot', () => {
  it.each(['linear', 'audio', 'reverse-audio'] as const)(
    'of %s taper reads its value across lugs 1 and 3 wherever the knob stands',
    (taper) => {
      for (const figure of figures)
        expect(lower(made(taper), figure) + upper(made(taper), figure)).toBeCloseTo(500e3, 6);
    },
  );

  it('keeps its end resistance at both stops', () => {
    expect(lower(made('audio'), 0)).toBe(END_OHMS);
    expect(upper(made('audio'), 10)).toBeCloseTo(END_OHMS, 6);
  });

  it('goes from lug 1 through the wiper to lug 3', () => {
    expect(pot.branches(made('linear'), setting(5)).map(({ name, a, b }) => [name, a, b])).toEqual([
      ['lower', '1', 'inside'],
      ['upper', 'inside', '3'],
      ['wiper', 'inside', '2'],
    ]);
  });

  it('without load leaves its track at 10, and nowhere else', () => {
    const part: Pot = { ...made('audio'), noLoad: true };
    const joined = (figure: number) =>
      pot.branches(part, setting(figure)).find(({ name }) => name === 'wiper')?.closed;
    for (const figure of figures) expect(joined(figure)).toBe(figure < 10);
    // The track itself is whole: lug 1 to lug 3 reads its value.
    expect(lower(part, 10) + upper(part, 10)).toBeCloseTo(500e3, 6);
  });

  it('uses its measured value where there is one', () => {
    const part = {
      ...made('linear'),
      ohms: { nominal: ohms(500e3), tolerance: 0.2, measured: ohms(467e3) },
    };
    expect(lower(part, 3) + upper(part, 3)).toBeCloseTo(467e3, 6);
  });

  it('of a value typed without its k has no piece below zero', () => {
    const tiny = { ...made('audio'), ohms: { nominal: ohms(1), tolerance: 0.2 } };
    for (const knob of [0, 5, 10])
      for (const piece of [lower(tiny, knob), upper(tiny, knob)]) {
        expect(piece).toBeGreaterThan(0);
        expect(scaledTrack(tiny, piece, 0.5)).toBeGreaterThan(0);
      }
  });

  it('of another value keeps the ends of its track', () => {
    const part = made('audio');
    for (const figure of [0, 3, 10]) {
      const [low, high] = [lower(part, figure), upper(part, figure)];
      const sum = scaledTrack(part, low, 0.5) + scaledTrack(part, high, 0.5);
      expect(sum).toBeCloseTo(250e3, 6);
    }
    expect(scaledTrack(part, END_OHMS, 0.5)).toBeCloseTo(END_OHMS, 9);
  });
});
