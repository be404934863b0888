import { describe, expect, it } from 'vitest';
import { threeSinglesFivePosition } from '../../src/circuit/catalog/three-singles-five-position.ts';
import { ohms } from '../../src/circuit/units.ts';
import type { Ask, Seen } from '../../src/readings/reading.ts';
import { Dice } from './dice.ts';
import { drawSlip, misdone, mistyped } from './slip.ts';

const circuit = threeSinglesFivePosition();
const ask: Ask = {
  kind: 'ohms',
  red: 'volume.3',
  black: 'jack.sleeve',
  setting: { positions: { selector: '1' }, knobs: {}, plug: 'out', lifted: [] },
};
const seen: Seen = { kind: 'ohms', ohms: ohms(6180) };
const many = <T>(make: (dice: Dice) => T) =>
  Array.from({ length: 60 }, (_, seed) => make(new Dice(seed)));

describe('a slip', () => {
  it('of the prefix is a thousandfold, of the decade tenfold, either way, and open stays open', () => {
    const typed = (slip: 'prefix' | 'decade') =>
      new Set(
        many((dice) => mistyped(seen, slip, dice)).map((one) =>
          one.kind === 'ohms' ? one.ohms : 0,
        ),
      );
    expect(typed('prefix')).toEqual(new Set([6_180_000, 6.18]));
    expect(typed('decade')).toEqual(new Set([61_800, 618]));
    const open: Seen = { kind: 'ohms', ohms: 'open' };
    expect(mistyped(open, 'decade', new Dice(1))).toEqual(open);
  });

  it('of the hand moves one probe to the lug beside it, or the lever to another position', () => {
    const moved = many((dice) => misdone(circuit, ask, 'neighbouring lug', dice));
    const ends = new Set(moved.map((one) => ('red' in one ? `${one.red} ${one.black}` : '')));
    expect(ends).toEqual(
      new Set(['volume.2 jack.sleeve', 'volume.case jack.sleeve', 'volume.3 jack.tip']),
    );
    const levers = many(
      (dice) => misdone(circuit, ask, 'switch position', dice).setting.positions['selector'],
    );
    expect(new Set(levers)).toEqual(new Set(['2', '3', '4', '5']));
  });

  it('comes at the stated share and changes nothing where there is none', () => {
    const drawn = Array.from({ length: 4000 }, (_, seed) => drawSlip(0.03, new Dice(seed)));
    const share = drawn.filter((slip) => slip !== undefined).length / 4000;
    expect(share).toBeGreaterThan(0.022);
    expect(share).toBeLessThan(0.038);
    expect(misdone(circuit, ask, undefined, new Dice(1))).toBe(ask);
    expect(mistyped(seen, undefined, new Dice(1))).toBe(seen);
  });
});
