import { expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Setting } from '../../src/circuit/circuit.ts';
import type { SeenPickup } from '../../src/circuit/seen-pickup.ts';
import { ohms } from '../../src/circuit/units.ts';
import type { Ask, Reading, Seen } from '../../src/readings/reading.ts';
import { joinings } from '../../src/sorter/joins.ts';
import { positionsOf } from '../../src/sorter/positions.ts';
import { sortLeads } from '../../src/sorter/sort.ts';
import { heardOf, type Playing, together } from '../../src/sorter/together.ts';

/**
 * Pickups of repairs told in public, beside the two measured ones of `lead-sorter.test.ts`. What was found is the owner's word; where
 * a case gives no figure, the reading is the one that its words name, and signs of taps are those that its finding implies.
 */

const onTheMat: Setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] };
const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const wire = (colour: string) => ({ id: colour, colour, what: 'wire' }) as const;
const bare = { id: 'braid', colour: 'braid', what: 'bare' } as const;

function sorted(seen: SeenPickup, list: readonly (readonly [Ask, Seen])[]) {
  const readings = list.map(
    ([ask, saw], at): Reading => ({
      id: `r${at}`,
      ask,
      seen: saw,
      at: '2026-01-01T00:00:00Z',
      round: 0,
    }),
  );
  return sortLeads({ seen, meter, readings, refused: [] });
}
const between = (red: string, black: string) =>
  ({ red: `${red}End.joint`, black: `${black}End.joint`, setting: onTheMat }) as const;
const figure = (red: string, black: string, value: number | 'open') =>
  [
    { kind: 'ohms', ...between(red, black) },
    { kind: 'ohms', ohms: value === 'open' ? value : ohms(value) },
  ] as const;
const tap = (coil: 'a' | 'b', red: string, black: string, swing: 'plus' | 'minus') =>
  [
    { kind: 'tap', coil, ...between(red, black) },
    { kind: 'tap', swing },
  ] as const;

// A front pickup with four conductors, its two coils apart: one still reads infinite; a break inside a coil was found. No figure is
// given for the whole coil: 4.00 k is a usual one (common practice, no source). https://rifle-blog.seesaa.net/archives/20250223-1.html
it('four conductors, and one coil infinite after the coils were parted: that coil is open', () => {
  const sorting = sorted(
    {
      coils: 2,
      leads: [wire('red'), wire('black'), wire('white'), wire('green')],
      plate: false,
      cover: false,
    },
    [
      figure('red', 'black', 4000),
      figure('white', 'green', 'open'),
      // Parted coils conduct nothing between them.
      figure('red', 'green', 'open'),
      figure('red', 'white', 'open'),
      figure('black', 'green', 'open'),
      figure('black', 'white', 'open'),
      tap('a', 'red', 'black', 'plus'),
      tap('a', 'red', 'black', 'plus'),
    ],
  );
  expect(sorting.leads.map(({ role }) => role)).toEqual([
    'a.finish',
    'a.start',
    'b.open',
    'b.open',
  ]);
  expect(sorting.troubles[0]).toMatchObject({ trouble: { is: 'open', coil: 'b' } });
});

// A covered single coil out of its guitar, centre conductor to braid: infinite means that the coil is cut (public repair thread,
// address kept by the maintainers).
it('centre conductor to braid infinite: the coil is open', () => {
  const sorting = sorted({ coils: 1, leads: [wire('centre'), bare], plate: false, cover: false }, [
    figure('centre', 'braid', 'open'),
  ]);
  expect(sorting.leads[0]).toMatchObject({ role: 'a.open' });
  expect(sorting.troubles[0]).toMatchObject({ trouble: { is: 'open' } });
});

const north = { kind: 'pole', pole: 'north' } as const;
const plus = { kind: 'tap', swing: 'plus' } as const;
const minus = { kind: 'tap', swing: 'minus' } as const;
const south = { kind: 'pole', pole: 'south' } as const;
/** Poles are not told: the middle one of three has the other pole (common practice, no source). */
const single = (id: string, swing: typeof plus | typeof minus): Playing => ({
  id,
  coils: 1,
  seen: [swing, swing, id === 'middle' ? south : north].map((seen) => ({ coil: 'a', seen })),
});
const fightsIn = (found: ReturnType<typeof together>) =>
  found.pairs.filter(({ fights }) => fights).map(({ first, second }) => [first, second]);

// Three single coils, bridge and middle together very thin and hard; the bridge pickup's hot and cold were exchanged, and reversing
// its leads cured it. https://orengenote.hatenablog.jp/entry/15806643
it('bridge and middle thin: the two fight, and turned leads of the bridge pickup cure it', () => {
  const heard = [single('middle', plus), single('bridge', minus), single('neck', plus)].map(
    heardOf,
  );
  const found = together(heard);
  expect(fightsIn(found)).toEqual([
    ['middle', 'bridge'],
    ['bridge', 'neck'],
  ]);
  expect(found.mend).toEqual({ middle: 'none', bridge: 'leads', neck: 'none' });
  expect(found.mended.some(({ fights }) => fights)).toBe(false);
});

// Two of three pickups replaced, each normal by itself, both in-between positions drop in level: the new ones are reversed against
// the untouched middle one. https://mekk.jp/2008/04/post-123.html
it('both in-between positions weak after two of three were replaced: both fight the old one', () => {
  const heard = [single('bridge', minus), single('middle', plus), single('neck', minus)].map(
    heardOf,
  );
  expect(fightsIn(together(heard))).toEqual([
    ['bridge', 'middle'],
    ['middle', 'neck'],
  ]);
  // The old one stays as it is: both new ones are turned.
  const kept = together(heard, 'middle');
  expect(kept.mend['middle']).toBe('none');
  expect(kept.mended.some(({ fights }) => fights)).toBe(false);
  const circuit = startingWirings.find(({ build }) => build().pickups.length === 3)?.build();
  if (!circuit) throw new Error('no wiring with three pickups');
  const places = Object.fromEntries(
    ['bridge', 'middle', 'neck'].map((id) => [
      id,
      circuit.pickups.find(({ title }) => title.includes(id))?.id ?? '',
    ]),
  );
  const weak = positionsOf({ circuit, places, heard }).filter(({ fights }) => fights);
  expect(weak.map(({ plays }) => plays.length)).toEqual([2, 2]);
});

// A humbucker thin and light as a whole, darker and louder when split; steel shows both coils alive: its coils are in series out of
// phase. http://assets.accordo.it/article/viewPub/81861?co=1
it('a humbucker that is thin as a whole and full when split: its coils fight', () => {
  const two = heardOf({
    id: 'bridge',
    coils: 2,
    seen: [
      ...[plus, plus, north].map((seen) => ({ coil: 'a', seen }) as const),
      ...[minus, minus, north].map((seen) => ({ coil: 'b', seen }) as const),
    ],
  });
  expect(two.amiss).toBe('coils fight');
});

// Two single coils, the metal-covered neck pickup wired the other way round: the sound cuts out whenever a string touches its cover,
// as the cover hangs on the hot side. https://thefretboard.co.uk/discussion/86644/favicon.ico
it('a covered pickup whose metal hangs on its cold end is warned of where it is reversed', () => {
  const sorting = sorted({ coils: 1, leads: [wire('white'), bare], plate: true, cover: false }, [
    figure('white', 'braid', 6200),
    [
      { kind: 'beep', red: 'braidEnd.joint', black: 'plate.metal', setting: onTheMat },
      { kind: 'beep', beeps: true },
    ],
    tap('a', 'white', 'braid', 'plus'),
    tap('a', 'white', 'braid', 'plus'),
  ]);
  const ways = joinings(sorting, { plate: true, leads: [wire('white'), bare] });
  const warned = Object.fromEntries(ways.map(({ way, warning }) => [way, warning]));
  expect(warned['whole']).toBeUndefined();
  expect(warned['reversed']).toContain('this way round it is hot');
});
