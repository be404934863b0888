import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';

const three = new Guitar('three-singles-five-position');
const four = new Guitar('two-humbuckers-four-knobs');

function swing(
  guitar: Guitar,
  coil: string,
  position: string,
  edits: readonly Edit[] = [],
  knobs = {},
) {
  const { plus, minus, nothing } = guitar.chances(
    {
      kind: 'tap',
      coil,
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: guitar.at(position, knobs),
    },
    edits,
  ) as { plus: number; minus: number; nothing: number };
  expect(plus + minus + nothing).toBeCloseTo(1, 12);
  return nothing > 0.5 ? 'nothing' : plus > minus ? 'plus' : 'minus';
}
const other = { plus: 'minus', minus: 'plus', nothing: 'nothing' } as const;
const reversed: readonly Edit[] = [
  { op: 'exchange', lugs: ['middleCoil.start', 'middleCoil.finish'] },
];
const turned: readonly Edit[] = [{ op: 'turn-magnet', coil: 'middleCoil' }];

// The sign of a tap is winding sense x magnet polarity (field figure: right about 93 % of the time).
describe('the sign of a tap', () => {
  it('is one for a pickup and its reverse-wound, reverse-polarity neighbour: both signs turned', () => {
    expect(swing(three, 'middleCoil', '2')).toBe(swing(three, 'bridgeCoil', '2'));
    expect(swing(three, 'neckCoil', '4')).toBe(swing(three, 'middleCoil', '4'));
  });

  it('is one for both coils of a humbucker in series', () => {
    expect(swing(four, 'neckScrew', 'neck')).toBe(swing(four, 'neckSlug', 'neck'));
    expect(swing(four, 'neckScrew', 'neck')).not.toBe('nothing');
  });

  it('turns with the leads, and turns with the magnet, and comes back with both', () => {
    const before = swing(three, 'middleCoil', '3');
    expect(swing(three, 'middleCoil', '3', reversed)).toBe(other[before]);
    expect(swing(three, 'middleCoil', '3', turned)).toBe(other[before]);
    expect(swing(three, 'middleCoil', '3', [...reversed, ...turned])).toBe(before);
  });

  it('turns with the probes', () => {
    const at = (red: string, black: string) =>
      four.chances({ kind: 'tap', coil: 'neckSlug', red, black, setting: four.at('neck') });
    const [one, back] = [at('jack.tip', 'jack.sleeve'), at('jack.sleeve', 'jack.tip')];
    expect(one['plus']).toBeCloseTo(back['minus']!, 12);
    expect(one['plus']).not.toBeCloseTo(one['minus']!, 3);
  });

  it('turns with tip and sleeve exchanged', () => {
    expect(
      swing(four, 'neckSlug', 'neck', [{ op: 'exchange', lugs: ['jack.tip', 'jack.sleeve'] }]),
    ).toBe(other[swing(four, 'neckSlug', 'neck')]);
  });
});

describe('no swing', () => {
  it.each<[string, string, readonly Edit[], Record<string, number>]>([
    ['from a pickup that the selector leaves out', '3', [], {}],
    ['from an open coil', '1', [{ op: 'open', site: 'bridgeCoil:winding' }], {}],
    ['at volume 0', '1', [], { volume: 0 }],
    [
      'with the tip on the sleeve',
      '1',
      [{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) }],
      {},
    ],
  ])('%s', (_why, position, edits, knobs) => {
    expect(swing(three, 'bridgeCoil', position, edits, knobs)).toBe('nothing');
  });
});

describe('a whole guitar', () => {
  it('may start from either sign: the mirror has plus and minus exchanged', () => {
    const [one] = three.predict({
      kind: 'tap',
      coil: 'neckCoil',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: three.at('5'),
    });
    if (one?.type !== 'choice') throw new Error('expected words');
    expect(one.latent).toBe('tap');
    expect(one.mirrored).toEqual({
      plus: one.chances['minus'],
      minus: one.chances['plus'],
      nothing: one.chances['nothing'],
    });
    expect(Math.max(one.chances['plus']!, one.chances['minus']!)).toBeCloseTo(0.93, 6);
  });
});
