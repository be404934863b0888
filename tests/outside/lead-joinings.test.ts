import { describe, expect, it } from 'vitest';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Coil } from '../../src/circuit/parts/part.ts';
import { farads, henries, ohms } from '../../src/circuit/units.ts';
import type { Role } from '../../src/sorter/inside.ts';
import { type Joining, joinings } from '../../src/sorter/joins.ts';
import type { Sorting } from '../../src/sorter/sort.ts';
import { resistances, spiceNetlist, tapTransfer } from '../oracle/index.ts';

/** Unequal on purpose, so that a coil is known by its ohms. Coil a is the one with screws, b the one with slugs. */
const [screw, slug] = [3600, 4100];
const onTheMat: Setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] };

/** What each lead is, by the lug it comes from; and the two lugs that the maker joined. */
const pickups: readonly {
  readonly name: string;
  readonly leads: Readonly<Record<string, Role>>;
  readonly inside?: readonly [string, string];
}[] = [
  {
    name: 'four leads',
    leads: {
      'a.start': 'a.start',
      'a.finish': 'a.finish',
      'b.start': 'b.start',
      'b.finish': 'b.finish',
    },
  },
  ...(
    [
      ['a.finish', 'b.start'],
      ['b.finish', 'a.start'],
      ['a.finish', 'b.finish'],
      ['a.start', 'b.start'],
    ] as const
  ).map((inside) => ({
    name: `three leads, ${inside.join(' and ')} joined inside`,
    leads: Object.fromEntries<Role>([
      ...(['a.start', 'a.finish', 'b.start', 'b.finish'] as const)
        .filter((lug) => !inside.some((one) => one === lug))
        .map((lug) => [lug, lug] as const),
      [inside[0], 'link'],
    ]),
    inside,
  })),
];

// The expected values are by hand: series, parallel and one coil; ngspice reads what the leads make of them.
describe.each(pickups)('a pickup with $name, in a circuit simulator', ({ leads, inside }) => {
  const sorting = {
    leads: Object.entries(leads).map(([lead, role]) => ({ lead, role })),
    onPlate: null,
  } as unknown as Sorting;
  const found = joinings(sorting, { plate: true, leads: [] });
  const expected: Partial<Record<Joining['way'], number>> = {
    series: screw + slug,
    reversed: screw + slug,
    parallel: (screw * slug) / (screw + slug),
    'screw alone': screw,
    'slug alone': slug,
  };

  it('offers whole and single coils', () => {
    expect(found.length).toBeGreaterThanOrEqual(3);
    const ways = found.map(({ way }) => way);
    expect(ways).toContain('screw alone');
    expect(ways).toContain('slug alone');
  });

  it.each(found.map((one) => [one.way, one] as const))('%s', (way, joining) => {
    const netlist = spiceNetlist(joined(joining), onTheMat, []);
    const [value] = resistances(netlist, [['hot.joint', 'ground.joint']]);
    expect(value).toBeCloseTo(expected[way] as number, 1);
    const swings = (['a', 'b'] as const)
      .map((coil) => tapTransfer(netlist, coil, 'hot.joint', 'ground.joint'))
      .filter((swing) => Math.abs(swing) > 1e-6)
      .map(Math.sign);
    expect(swings).toEqual(way.endsWith('alone') ? [1] : way === 'reversed' ? [-1, -1] : [1, 1]);
  });

  const noted = found.filter(({ note }) => note !== undefined);
  it.runIf(noted.length > 0).each(noted.map((one) => [one.way, one] as const))(
    'a switch at the join of %s leaves the coil that is told',
    (_way, joining) => {
      const [, toGround, toHot] =
        /joined to ground (?:it leaves|they leave) the (screw|slug) coil, joined to hot the (screw|slug) coil/.exec(
          joining.note as string,
        ) as RegExpExecArray;
      const join = joining.together.length > 0 ? joining.together : joining.apart;
      const value = (side: 'hot' | 'ground') =>
        resistances(
          spiceNetlist(
            joined({
              ...joining,
              [side]: [...joining[side], ...join],
              together: [],
              apart: [],
            }),
            onTheMat,
            [],
          ),
          [['hot.joint', 'ground.joint']],
        )[0];
      const ohmsOf = { screw, slug };
      expect(value('ground')).toBeCloseTo(ohmsOf[toGround as 'screw' | 'slug'], 1);
      expect(value('hot')).toBeCloseTo(ohmsOf[toHot as 'screw' | 'slug'], 1);
    },
  );

  function joined(joining: Joining): Circuit {
    const coil = (id: string, resistance: number): Coil => ({
      kind: 'coil',
      id,
      title: id,
      ohms: { nominal: ohms(resistance), tolerance: 0.1 },
      henries: henries(2.5),
      selfFarads: farads(1e-10),
      winding: 1,
      magnet: 1,
      place: 'single',
      ends: 'sealed',
    });
    const splices = [
      'hot',
      'ground',
      'together',
      ...Object.keys(leads).map((lead) => `${lead}End`),
    ];
    const to = (lead: string): string => {
      const place = (['hot', 'ground', 'together'] as const).find((one) =>
        joining[one].includes(lead),
      );
      return `${(place ?? `${lead}End`).replace('.', '')}.joint`;
    };
    return {
      id: 'joined',
      title: 'joined',
      parts: [
        coil('a', screw),
        coil('b', slug),
        ...splices.map((id) => ({
          kind: 'splice' as const,
          id: id.replace('.', ''),
          title: id,
        })),
      ],
      leads: [
        ...Object.keys(leads).map((lead) => ({
          id: `lead${lead.replace('.', '')}`,
          kind: 'pickup' as const,
          from: lead,
          to: to(lead),
        })),
        ...(inside
          ? [{ id: 'inside', kind: 'pickup' as const, from: inside[0], to: inside[1] }]
          : []),
      ],
      pickups: [{ id: 'pickup', title: 'pickup', coils: ['a', 'b'] }],
    };
  }
});
