import { describe, expect, it } from 'vitest';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Coil } from '../../src/circuit/parts/part.ts';
import type { SeenLead } from '../../src/circuit/seen-pickup.ts';
import { farads, henries, ohms } from '../../src/circuit/units.ts';
import type { Ask, Reading, Seen } from '../../src/readings/reading.ts';
import { type Joining, joinings } from '../../src/sorter/joins.ts';
import { match, type TappedCoil } from '../../src/sorter/match.ts';
import { type SortEvidence, sortLeads } from '../../src/sorter/sort.ts';
import { resistances, spiceNetlist, tapTransfer } from '../oracle/index.ts';

const onTheMat: Setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] };
const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const lead = (colour: string, what: SeenLead['what'] = 'wire'): SeenLead => ({
  id: colour,
  colour,
  what,
});
const between = (red: string, black: string) =>
  ({ red: `${red}End.joint`, black: `${black}End.joint`, setting: onTheMat }) as const;
const readings = (list: readonly (readonly [Ask, Seen])[]): Reading[] =>
  list.map(([ask, seen], at) => ({
    id: `r${at}`,
    ask,
    seen,
    at: '2026-01-01T00:00:00Z',
    round: 0,
  }));
const figure = (red: string, black: string, value: number | 'open'): readonly [Ask, Seen] => [
  { kind: 'ohms', ...between(red, black) },
  { kind: 'ohms', ohms: value === 'open' ? value : ohms(value) },
];
const tap = (
  coil: 'a' | 'b',
  red: string,
  black: string,
  swing: 'plus' | 'minus',
): readonly [Ask, Seen] => [
  { kind: 'tap', coil, ...between(red, black) },
  { kind: 'tap', swing },
];

/**
 * Measured by the owner of a four-conductor pickup and told in a public repair thread: red to black 3.86 k, white to green 3.89 k;
 * a tap on the screws with green on plus goes up, one on the slugs with black on plus goes down. The thread's answer: white and
 * green are the screws, red and black the slugs, and red takes the part that green has.
 */
const told: SortEvidence = {
  seen: {
    coils: 2,
    leads: [lead('red'), lead('black'), lead('white'), lead('green'), lead('bare', 'bare')],
    plate: false,
    cover: false,
  },
  meter,
  readings: readings([
    figure('red', 'black', 3860),
    figure('white', 'green', 3890),
    tap('a', 'green', 'white', 'plus'),
    tap('b', 'black', 'red', 'minus'),
  ]),
  refused: [],
};

describe('the measured four-conductor pickup', () => {
  const sorting = sortLeads(told);
  const roles = Object.fromEntries(sorting.leads.map(({ lead: id, role }) => [id, role]));

  it('is sorted as its owner did', () => {
    expect(roles).toMatchObject({
      green: 'a.finish',
      white: 'a.start',
      red: 'b.finish',
      black: 'b.start',
    });
    for (const { lead: id, probability } of sorting.leads)
      if (id !== 'bare') expect(probability).toBeGreaterThan(0.9);
  });

  it('comes out with plus and minus exchanged in both coils where steel was laid on instead of pulled off', () => {
    const laidOn = told.readings.map((one) =>
      one.seen.kind === 'tap'
        ? {
            ...one,
            seen: { kind: 'tap', swing: one.seen.swing === 'plus' ? 'minus' : 'plus' } as const,
          }
        : one,
    );
    const other = sortLeads({ ...told, readings: laidOn });
    expect(Object.fromEntries(other.leads.map(({ lead: id, role }) => [id, role]))).toMatchObject({
      green: 'a.start',
      red: 'b.start',
    });
  });
});

// A worked example of a public tutorial: red to black reads 6 k, all else nothing.
it('red to black 6 k and red open to all others: red and black are one coil', () => {
  const sorting = sortLeads({
    ...told,
    readings: readings([
      figure('red', 'black', 6000),
      figure('red', 'white', 'open'),
      figure('red', 'green', 'open'),
    ]),
  });
  const [red, black, white, green] = sorting.leads.map(({ role }) => role[0]);
  expect(red).toBe(black);
  expect([white, green]).not.toContain(red);
});

describe('the joinings of the measured pickup, in a circuit simulator', () => {
  const found = joinings(sortLeads(told), told.seen);
  // White is the minus end of the screws and green the plus end, black and red those of the slugs.
  const [screw, slug] = [3890, 3860];
  const expected: Readonly<Record<string, number>> = {
    series: screw + slug,
    reversed: screw + slug,
    parallel: (screw * slug) / (screw + slug),
    'screw alone': screw,
    'slug alone': slug,
  };

  it('are the five that four leads allow', () => {
    expect(found.map(({ way }) => way).sort()).toEqual(Object.keys(expected).sort());
  });

  it.each(found.map((one) => [one.way, one] as const))(
    '%s reads what its coils make',
    (way, joining) => {
      const netlist = spiceNetlist(joined(joining), onTheMat, []);
      const [value] = resistances(netlist, [['hot.joint', 'ground.joint']]);
      expect(value).toBeCloseTo(expected[way] as number, 1);
    },
  );

  it.each(found.map((one) => [one.way, one] as const))(
    '%s has every coil that plays on the same side',
    (way, joining) => {
      const netlist = spiceNetlist(joined(joining), onTheMat, []);
      const swings = (['a', 'b'] as const)
        .map((coil) => tapTransfer(netlist, coil, 'hot.joint', 'ground.joint'))
        .filter((swing) => Math.abs(swing) > 1e-6)
        .map(Math.sign);
      expect(swings).toEqual(way.endsWith('alone') ? [1] : way === 'reversed' ? [-1, -1] : [1, 1]);
    },
  );

  /** The real pickup with its leads soldered as told. Signs of tap and EMF go together: winding sense and pole are both +1. */
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
    const from: Record<string, string> = {
      white: 'a.start',
      green: 'a.finish',
      black: 'b.start',
      red: 'b.finish',
      bare: 'plate.metal',
    };
    const to = (id: string): string =>
      joining.hot.includes(id)
        ? 'hot.joint'
        : joining.ground.includes(id)
          ? 'ground.joint'
          : joining.together.includes(id)
            ? 'together.joint'
            : `${id}End.joint`;
    const splice = (id: string) => ({ kind: 'splice', id, title: id }) as const;
    const ids = Object.keys(from);
    return {
      id: 'joined',
      title: 'joined',
      parts: [
        coil('a', screw),
        coil('b', slug),
        { kind: 'metal', id: 'plate', title: 'plate', role: 'plate', outside: false },
        ...['hot', 'ground', 'together', ...ids.map((id) => `${id}End`)].map(splice),
      ],
      leads: ids.map((id) => ({ id, kind: 'pickup', from: from[id] as string, to: to(id) })),
      pickups: [{ id: 'pickup', title: 'pickup', coils: ['a', 'b'], plate: 'plate' }],
    };
  }
});

/**
 * Faraday's law of induction, EMF = -N dPhi/dt with Phi counted along the winding's own axis (any physics textbook, for one OpenStax
 * University Physics volume 2, section 13.1; cited from memory). The string carries the flux of the magnet below it, so that its
 * motion changes the flux through the coil in the sense of the pole; a field from the mains goes through all coils alike.
 */
describe('two coils by Faraday’s law', () => {
  const signs = [1, -1] as const;
  const time = Array.from({ length: 400 }, (_, at) => at / 400);
  const emf = (winding: number, flux: (t: number) => number) => (t: number) =>
    (-winding * (flux(t + 1e-6) - flux(t - 1e-6))) / 2e-6;
  const string = (pole: number) => (t: number) => pole * Math.sin(2 * Math.PI * t);
  const mains = (t: number) => Math.sin(2 * Math.PI * t);
  const size = (wave: (t: number) => number) => Math.max(...time.map((t) => Math.abs(wave(t))));

  it.each(
    signs.flatMap((w1) =>
      signs.flatMap((p1) => signs.flatMap((w2) => signs.map((p2) => [w1, p1, w2, p2] as const))),
    ),
  )('windings and poles %i %i and %i %i', (w1, p1, w2, p2) => {
    // What the person sees: the sign of the tap as the string's flux falls, and the pole.
    const tapOf = (w: number, p: number) =>
      Math.sign(emf(w, (t) => -p * t)(0)) as TappedCoil['tap'];
    const found = match([{ tap: tapOf(w1, p1), pole: p1 }], [{ tap: tapOf(w2, p2), pole: p2 }]);
    const turned = found.turn ? -1 : 1;
    const signal = size((t) => emf(w1, string(p1))(t) + turned * emf(w2, string(p2))(t));
    const against = size((t) => emf(w1, string(p1))(t) - turned * emf(w2, string(p2))(t));
    const hum = size((t) => emf(w1, mains)(t) + turned * emf(w2, mains)(t));
    const one = size(emf(1, mains));
    expect(signal).toBeCloseTo(2 * one, 5);
    expect(against).toBeCloseTo(0, 5);
    expect(hum / (2 * one)).toBeCloseTo(found.hum as number, 5);
    expect(found.cancelsHum).toBe(hum < 1e-5);
  });

  it('needs coils that agree, and some coil', () => {
    expect(() => match([], [{ tap: 1, pole: 1 }])).toThrow('the first pickup has no coil to match');
    expect(() =>
      match(
        [{ tap: 1, pole: 1 }],
        [
          { tap: 1, pole: 1 },
          { tap: -1, pole: -1 },
        ],
      ),
    ).toThrow(
      'the coils of the second pickup fight each other: join them so that their taps agree first',
    );
  });
});
