import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import { shakes } from './flex.ts';
import { Guitar } from './guitar.fixture.ts';

const three = new Guitar('three-singles-five-position');
const jumps = (
  site: string,
  position: string,
  edits: readonly Edit[],
  lugs = ['jack.tip', 'jack.sleeve'],
) => {
  const { jumps, steady } = three.chances(
    { kind: 'flex', site, red: lugs[0]!, black: lugs[1]!, setting: three.at(position) },
    edits,
  ) as { jumps: number; steady: number };
  expect(jumps + steady).toBeCloseTo(1, 12);
  return jumps;
};
const loose = (site: string): readonly Edit[] => [{ op: 'intermittent', site }];

describe('a reading while a wire is moved', () => {
  it('jumps where the loose joint carries the reading and is moved', () => {
    expect(jumps('bridgeHot', '1', loose('bridgeHot@to'))).toBeGreaterThan(0.8);
    expect(jumps('jackGround', '3', loose('jackGround@to'))).toBeGreaterThan(0.8);
  });

  it('is steady on a healthy guitar', () => {
    expect(jumps('bridgeHot', '1', [])).toBeLessThan(0.05);
  });

  it('is steady where the loose joint does not carry the reading', () => {
    expect(jumps('bridgeHot', '5', loose('bridgeHot@to'))).toBeLessThan(0.05);
    expect(jumps('stringGround', '1', loose('stringGround@to'))).toBeLessThan(0.05);
  });

  it('is steady where another wire is moved', () => {
    expect(jumps('neckHot', '1', loose('bridgeHot@to'))).toBeLessThan(0.05);
  });

  it('on the strings finds what the jack does not see', () => {
    expect(
      jumps('stringGround', '1', loose('stringGround@to'), ['strings.metal', 'jack.sleeve']),
    ).toBeGreaterThan(0.8);
  });

  // At rest the meter shows over-range, and a change from endless to finite is taken for none (Infinity <= 0.02 x Infinity + 1).
  it('jumps, too, where the joint happens to be open at the moment', () => {
    expect(
      jumps('jackHot', '1', [...loose('jackHot@to'), { op: 'open', site: 'jackHot@to' }]),
    ).toBeGreaterThan(0.8);
  });

  it('may jump over a cold joint, less surely than over a loose one', () => {
    const cold = jumps('jackHot', '1', [{ op: 'resist', site: 'jackHot@to', ohms: ohms(5000) }]);
    expect(cold).toBeGreaterThan(0.1);
    expect(cold).toBeLessThan(0.5);
  });

  it('is steady where a second path carries the current as well', () => {
    // The wire and a solid bridge beside it: opening the joint changes nothing that can be seen.
    expect(
      jumps('jackHot', '1', [
        ...loose('jackHot@to'),
        { op: 'bridge', a: 'volume.2', b: 'jack.tip', ohms: ohms(0.5) },
      ]),
    ).toBeLessThan(0.05);
  });
});

describe('shakes', () => {
  it.each([
    ['bridgeHot', 'bridgeHot@to', true],
    ['bridgeHot', 'bridgeHot@from', true],
    ['bridgeHot@to', 'bridgeHot@from', true],
    ['selector', 'bridgeHot@to', true],
    ['selector', 'bridgeHot@from', false],
    ['bridgeCoil', 'bridgeHot@from', true],
    ['volume', 'jackHot@from', true],
    ['volume', 'jackHot@to', false],
    ['jack', 'jackHot@to', true],
    ['jack', 'jackHot', true],
    ['selector', 'selector:A1-AC', true],
    ['neckHot', 'bridgeHot@to', false],
    // Equal beginnings of two names are not one name.
    ['neck', 'neckTone.2', false],
  ])('moving %s moves %s: %s', (moved, site, is) => {
    expect(shakes(three.circuit, moved, site)).toBe(is);
  });
});
