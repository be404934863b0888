import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { Seen } from '../readings/reading.ts';
import { positionsOf } from './positions.ts';
import { type Heard, heardOf, nextCoilAsk, type Playing, together } from './together.ts';

const tap = (swing: 'plus' | 'minus' | 'nothing'): Seen => ({ kind: 'tap', swing });
const pole = (word: 'north' | 'south' | 'none'): Seen => ({ kind: 'pole', pole: word });
const single = (id: string, ...seen: readonly Seen[]): Playing => ({
  id,
  coils: 1,
  seen: seen.map((one) => ({ coil: 'a', seen: one })),
});
const heard = (id: string, sign: 1 | -1, top: 1 | -1): Heard => ({
  id,
  coils: [{ coil: 'a', tap: sign, pole: top }],
  amiss: null,
});

describe('what is asked of pickups that play together', () => {
  it('is each tap until two agree, then the pole', () => {
    const asked = (...seen: readonly Seen[]) => nextCoilAsk([single('x', ...seen)]);
    expect(asked()).toEqual({ pickup: 'x', coil: 'a', kind: 'tap', again: false });
    expect(asked(tap('plus'))).toMatchObject({ kind: 'tap', again: true });
    expect(asked(tap('plus'), tap('minus'))).toMatchObject({ kind: 'tap', again: true });
    expect(asked(tap('plus'), tap('minus'), tap('plus'))).toMatchObject({ kind: 'pole' });
    expect(asked(tap('plus'), tap('plus'), pole('north'))).toBeNull();
    // Two that show nothing are not asked a third time.
    expect(asked(tap('nothing'), tap('nothing'))).toMatchObject({ kind: 'pole' });
  });

  it('is no pole without a compass, and whether they fight is told all the same', () => {
    const [x, y] = [
      single('x', tap('plus'), tap('plus')),
      single('y', tap('minus'), tap('minus')),
    ] as const;
    expect(nextCoilAsk([x, y])).toMatchObject({ pickup: 'x', kind: 'pole' });
    expect(nextCoilAsk([x, y], false)).toBeNull();
    const found = together([x, y].map(heardOf));
    expect(found.pairs).toEqual([{ first: 'x', second: 'y', fights: true, hum: null }]);
    expect(found.mend).toEqual({ x: 'none', y: 'leads' });
    expect(found.mended).toMatchObject([{ fights: false, hum: null }]);
  });

  it('says what is amiss with one', () => {
    const amissOf = (...seen: readonly Seen[]) => heardOf(single('x', ...seen)).amiss;
    expect(amissOf(tap('plus'), tap('plus'), pole('south'))).toBeNull();
    expect(amissOf(tap('nothing'), tap('nothing'), pole('south'))).toBe('no swing');
    expect(amissOf(tap('plus'), tap('plus'), pole('none'))).toBe('no pole');
    const two = heardOf({
      id: 'x',
      coils: 2,
      seen: (['a', 'b'] as const).flatMap((coil) =>
        [
          tap(coil === 'a' ? 'plus' : 'minus'),
          tap(coil === 'a' ? 'plus' : 'minus'),
          pole('north'),
        ].map((seen) => ({ coil, seen })),
      ),
    });
    expect(two.amiss).toBe('coils fight');
  });
});

describe('a pair that fights', () => {
  // Leads turn tap and winding, a magnet turns tap and pole (Faraday's law, tests/outside/lead-sorter.test.ts).
  it.each([
    // Poles differ and taps differ: the windings are alike, so turned leads make them differ, and hum cancels.
    [heard('x', 1, 1), heard('y', -1, -1), 'leads'],
    // Poles alike and taps differ: the windings differ already, which a turned magnet keeps.
    [heard('x', 1, 1), heard('y', -1, 1), 'magnet'],
  ] as const)('%j and %j: the %s', (x, y, turn) => {
    const found = together([x, y], 'x');
    expect(found.pairs).toMatchObject([{ fights: true }]);
    expect(found.mend).toEqual({ x: 'none', y: turn });
    expect(found.mended).toMatchObject([{ fights: false, hum: 0 }]);
  });

  it('is left alone where it does not fight and cancels hum', () => {
    const found = together([heard('x', 1, 1), heard('y', 1, -1)]);
    expect(found.pairs).toMatchObject([{ fights: false, hum: 0 }]);
    expect(found.mend).toEqual({ x: 'none', y: 'none' });
  });

  it('of three pickups is found, and the one that is turned', () => {
    const found = together([heard('bridge', 1, 1), heard('middle', -1, -1), heard('neck', 1, 1)]);
    expect(found.pairs.filter(({ fights }) => fights)).toHaveLength(2);
    expect(found.mend).toEqual({ bridge: 'none', middle: 'leads', neck: 'none' });
    // Bridge and neck hum together whatever is done; each cancels with the middle.
    expect(found.mended.map(({ hum }) => hum)).toEqual([0, 1, 0]);
  });
});

const humbucker = (id: string): Heard => ({
  id,
  coils: [
    { coil: 'a', tap: 1, pole: 1 },
    { coil: 'b', tap: 1, pole: -1 },
  ],
  amiss: null,
});

describe('every position of a wiring', () => {
  const circuit = (id: string) => {
    const found = startingWirings.find((one) => one.id === id);
    if (!found) throw new Error(`no wiring ${id}`);
    return found.build();
  };
  const places = { x: 'bridgePickup', y: 'neckPickup' };

  it('plays two singles in the middle, in phase or not by their taps, and hums by their windings', () => {
    const of = (x: Heard, y: Heard) =>
      positionsOf({ circuit: circuit('two-singles-three-position'), places, heard: [x, y] });
    expect(of(heard('x', 1, 1), heard('y', 1, -1))).toMatchObject([{ fights: false }]);
    expect(of(heard('x', 1, 1), heard('y', 1, -1))[0]?.hum).toBeLessThan(0.1);
    expect(of(heard('x', 1, 1), heard('y', 1, 1))[0]?.hum).toBeCloseTo(1, 2);
    expect(of(heard('x', 1, 1), heard('y', -1, 1))).toMatchObject([{ fights: true }]);
  });

  it('knows a humbucker alone to cancel, and each with the other', () => {
    const list = positionsOf({
      circuit: circuit('two-humbuckers-four-knobs'),
      places,
      heard: [humbucker('x'), humbucker('y')],
    });
    expect(list).toHaveLength(3);
    for (const { fights, hum } of list) {
      expect(fights).toBe(false);
      expect(hum).toBeLessThan(0.05);
    }
  });

  it('knows both coils of a humbucker in the place of a single', () => {
    const list = positionsOf({
      circuit: circuit('two-singles-three-position'),
      places,
      heard: [humbucker('x'), heard('y', 1, 1)],
    });
    // Alone it cancels its own hum; beside the single one coil in three is left over.
    expect(list.map(({ plays }) => plays.length)).toEqual([2, 3]);
    expect(list[0]).toMatchObject({ fights: false });
    expect(list[0]?.hum).toBeLessThan(0.01);
    expect(list[1]).toMatchObject({ fights: false });
    expect(list[1]?.hum).toBeCloseTo(1 / 3, 1);
  });

  it('knows a single in the place of a humbucker', () => {
    const list = positionsOf({
      circuit: circuit('two-humbuckers-four-knobs'),
      places,
      heard: [heard('x', -1, 1), humbucker('y')],
    });
    const both = list.find(({ plays }) => plays.length === 3);
    expect(both?.fights).toBe(true);
    expect(list).toHaveLength(2);
  });
});
