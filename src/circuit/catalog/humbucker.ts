import type { LugRef, Pickup } from '../circuit.ts';
import type { Coil, Metal, Splice } from '../parts/part.ts';
import { henries } from '../units.ts';
import { coil, type LeadRow } from './build.ts';

export type Side = 'neck' | 'bridge';

interface Values {
  /** Of each coil. */
  readonly resistance: number;
  readonly inductance: number;
}

/** Names of the leads start with the pickup's side; on a guitar with one pickup they need none. */
const named = (prefix: Side | '', word: string): string =>
  prefix + (prefix ? word.charAt(0).toUpperCase() + word.slice(1) : word);

/** Two coils in series; the first is cold, the last hot. */
export const humbuckerPickup = (side: Side): Pickup => ({
  id: `${side}Pickup`,
  title: `${side} pickup`,
  coils: [`${side}Screw`, `${side}Slug`],
  plate: `${side}Plate`,
});

function coils(side: Side, { resistance, inductance }: Values): readonly Coil[] {
  const common = { resistance, henries: henries(inductance) };
  return [
    coil(`${side}Screw`, `${side} pickup's screw coil`, { ...common, place: 'screw' }),
    coil(`${side}Slug`, `${side} pickup's slug coil`, {
      ...common,
      place: 'slug',
      winding: -1,
      magnet: -1,
    }),
  ];
}

const plate = (side: Side): Metal => ({
  kind: 'metal',
  id: `${side}Plate`,
  title: `base plate of the ${side} pickup`,
  role: 'plate',
  outside: false,
});

/** Four conductors and a bare wire: the inner ends of the coils meet in a taped joint in the cavity. */
export function humbucker(
  side: Side,
  values: Values,
  prefix: Side | '' = side,
): readonly (Coil | Splice | Metal)[] {
  return [
    ...coils(side, values),
    { kind: 'splice', id: named(prefix, 'link'), title: `series link of the ${side} pickup` },
    plate(side),
  ];
}

const outerLeads = (
  side: Side,
  hot: LugRef,
  cold: LugRef,
  prefix: Side | '',
  inner: readonly LeadRow[],
): readonly LeadRow[] => [
  [named(prefix, 'hot'), 'pickup', `${side}Slug.finish`, hot],
  ...inner,
  [named(prefix, 'cold'), 'pickup', `${side}Screw.start`, cold],
  [named(prefix, 'bare'), 'pickup', `${side}Plate.metal`, cold],
];

export function humbuckerLeads(
  side: Side,
  hot: LugRef,
  cold: LugRef,
  prefix: Side | '' = side,
): readonly LeadRow[] {
  const link = `${named(prefix, 'link')}.joint`;
  return outerLeads(side, hot, cold, prefix, [
    [named(prefix, 'slugInner'), 'pickup', `${side}Slug.start`, link],
    [named(prefix, 'screwInner'), 'pickup', `${side}Screw.finish`, link],
  ]);
}

/** Three conductors and a bare wire: the inner ends are joined in the factory, and one lead brings that joint out. */
export function threeConductorHumbucker(
  side: Side,
  values: Values,
  prefix: Side | '' = side,
): readonly (Coil | Splice | Metal)[] {
  return [
    ...coils(side, values),
    {
      kind: 'splice',
      id: named(prefix, 'middle'),
      title: `taped end of the middle lead of the ${side} pickup`,
    },
    plate(side),
  ];
}

export function threeConductorLeads(
  side: Side,
  hot: LugRef,
  cold: LugRef,
  prefix: Side | '' = side,
): readonly LeadRow[] {
  return outerLeads(side, hot, cold, prefix, [
    [named(prefix, 'factoryJoint'), 'pickup', `${side}Slug.start`, `${side}Screw.finish`],
    [
      named(prefix, 'middleLead'),
      'pickup',
      `${side}Screw.finish`,
      `${named(prefix, 'middle')}.joint`,
    ],
  ]);
}
