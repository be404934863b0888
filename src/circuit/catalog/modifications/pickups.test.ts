import { describe, expect, it } from 'vitest';
import type { Circuit } from '../../circuit.ts';
import { fourStringsSplitPickup } from '../four-strings-split-pickup.ts';
import { oneThreeConductorHumbucker } from '../one-three-conductor-humbucker.ts';
import { twoHumbuckersFourKnobs } from '../two-humbuckers-four-knobs.ts';
import { twoSinglesThreePosition } from '../two-singles-three-position.ts';
import { endsOf, innerSwitch, linkOf, metalOnCoil } from './pickups.ts';

const pickup = (circuit: Circuit, at = 0) => circuit.pickups[at]!;
const four = twoHumbuckersFourKnobs();
const three = oneThreeConductorHumbucker();
const split = fourStringsSplitPickup();
const singles = twoSinglesThreePosition();

describe('the ends of a pickup', () => {
  it('are hot at the far end of the last coil', () => {
    const ends = endsOf(four, pickup(four));
    expect([ends?.hot.id, ends?.cold.id, ends?.hotCoil]).toEqual([
      'neckHot',
      'neckCold',
      'neckSlug',
    ]);
  });

  it('are the other way round where the last coil is grounded', () => {
    const turned: Circuit = {
      ...four,
      leads: four.leads.map((lead) =>
        lead.id === 'neckHot'
          ? { ...lead, to: 'neckVolume.case' }
          : lead.id === 'neckCold'
            ? { ...lead, to: 'neckVolume.3' }
            : lead,
      ),
    };
    const ends = endsOf(turned, pickup(turned));
    expect([ends?.hot.id, ends?.cold.id, ends?.hotCoil]).toEqual([
      'neckCold',
      'neckHot',
      'neckScrew',
    ]);
  });
});

describe('the link of two coils', () => {
  it.each([
    [four, 'neckLink.joint'],
    [three, 'middle.joint'],
    [split, null],
    [singles, null],
  ])('%# is where both inner ends meet in the cavity', (circuit, link) => {
    expect(linkOf(circuit, pickup(circuit))).toBe(link);
  });
});

it('metal on a coil is metal without a ground wire of its own', () => {
  expect(metalOnCoil(singles, pickup(singles, 0))).toBe('base plate of the bridge pickup');
  expect(metalOnCoil(singles, pickup(singles, 1))).toBeNull();
  expect(metalOnCoil(four, pickup(four))).toBeNull();
});

it('no starting wiring has its inner ends on a switch', () => {
  for (const circuit of [four, three, split])
    expect(innerSwitch(circuit, pickup(circuit))).toBeNull();
});
