import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { checkCircuit } from '../circuit/check.ts';
import { leadTitle } from '../circuit/names.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { type IdealPickup, lead, sortThrough } from './ideal.fixture.ts';
import { putInto } from './into-circuit.ts';

const circuit = (id: string) => {
  const found = startingWirings.find((one) => one.id === id);
  if (!found) throw new Error(`no wiring ${id}`);
  return found.build();
};

const four: IdealPickup = {
  seen: {
    coils: 2,
    leads: [
      lead('red'),
      { ...lead('green'), mark: 'striped' },
      lead('white'),
      lead('black'),
      lead('braid', 'bare'),
    ],
    plate: true,
    cover: false,
  },
  nodes: { red: '1', white: '2', green: '3', black: '4', braid: 'p', plate: 'p' },
  coils: { a: ['2', '1', 4200], b: ['3', '4', 4300] },
};
const joined: IdealPickup = {
  seen: {
    ...four.seen,
    leads: [lead('black'), lead('twisted', 'pair'), lead('red'), lead('braid', 'bare')],
  },
  // Plus of the screws is hot here: the slug coil is the cold one.
  nodes: { red: '1', twisted: '2', black: '3', braid: 'p', plate: 'p' },
  coils: { a: ['2', '1', 4000], b: ['3', '2', 4100] },
};

/** Sorted once each. */
const sorted = new Map<IdealPickup, ReturnType<typeof sortThrough>>();

function put(pickup: IdealPickup, wiring: string, place: string, turned = false) {
  const { sorting, evidence } = sorted.get(pickup) ?? sortThrough(pickup);
  sorted.set(pickup, { sorting, evidence });
  return putInto(circuit(wiring), place, {
    seen: pickup.seen,
    sorting,
    readings: evidence.readings,
    turned,
  });
}

function coloursOf(result: ReturnType<typeof put>) {
  if ('refused' in result) throw new Error(result.refused);
  checkCircuit(result.circuit);
  return Object.fromEntries(
    result.circuit.leads.flatMap(({ id, colour }) => (colour ? [[id, colour]] : [])),
  );
}

describe('a sorted pickup in a wiring', () => {
  it('lends its colours to the leads: plus of the slugs is hot, minus of the screws cold', () => {
    expect(coloursOf(put(four, 'one-humbucker-one-knob', 'bridgePickup'))).toEqual({
      hot: 'black',
      slugInner: 'striped green',
      screwInner: 'red',
      cold: 'white',
      bare: 'braid',
    });
  });

  it('has every lead of a coil the other way round where it is turned', () => {
    expect(coloursOf(put(four, 'one-humbucker-one-knob', 'bridgePickup', true))).toMatchObject({
      hot: 'striped green',
      slugInner: 'black',
      screwInner: 'white',
      cold: 'red',
    });
  });

  it('is spoken of by its colours', () => {
    const result = put(four, 'one-humbucker-one-knob', 'bridgePickup');
    if ('refused' in result) throw new Error(result.refused);
    expect(leadTitle(layoutOf(result.circuit), 'slugInner')).toContain('the striped green lead');
  });

  it('exchanges the coils where the maker joined them the other way', () => {
    const result = put(joined, 'one-three-conductor-humbucker', 'bridgePickup');
    expect(coloursOf(result)).toMatchObject({ hot: 'red', cold: 'black' });
    if ('refused' in result) throw new Error(result.refused);
    const places = result.circuit.parts.flatMap((part) =>
      part.kind === 'coil' ? [[part.id, part.place]] : [],
    );
    expect(Object.fromEntries(places)).toEqual({ bridgeScrew: 'slug', bridgeSlug: 'screw' });
  });

  it('is refused in one sentence where it does not fit', () => {
    expect(put(four, 'two-singles-three-position', 'neckPickup')).toEqual({
      refused: 'The neck pickup of this wiring has one coil, and this pickup two.',
    });
    const dead = { ...four, coils: { a: four.coils.a, b: ['3', '4', Infinity] } } as IdealPickup;
    expect(put(dead, 'one-humbucker-one-knob', 'bridgePickup')).toEqual({
      refused: 'A coil of this pickup reads open: mend it before it goes in.',
    });
  });
});
