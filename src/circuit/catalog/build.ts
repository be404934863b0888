import type { Lead, LeadKind, LugRef } from '../circuit.ts';
import type { Capacitor, Coil, Jack, Metal, Pot } from '../parts/part.ts';
import { farads, henries, ohms } from '../units.ts';

/** Starting values are those of the trade (common practice, no source) and meant to be edited. */
export const coil = (
  id: string,
  title: string,
  more: Partial<Coil> & { resistance: number },
): Coil => {
  const { resistance, ...rest } = more;
  return {
    kind: 'coil',
    id,
    title,
    ohms: { nominal: ohms(resistance), tolerance: 0.16 },
    henries: henries(2.5),
    selfFarads: farads(110e-12),
    winding: 1,
    magnet: 1,
    place: 'single',
    ends: 'sealed',
    ...rest,
  };
};

export const pot = (id: string, title: string, role: Pot['role'], track: number): Pot => ({
  kind: 'pot',
  id,
  title,
  role,
  ohms: { nominal: ohms(track), tolerance: 0.2 },
  taper: 'audio',
  midShare: 0.15,
});

export const capacitor = (id: string, title: string, value: number): Capacitor => ({
  kind: 'capacitor',
  id,
  title,
  farads: { nominal: farads(value), tolerance: 0.1 },
});

export const outputJack: Jack = { kind: 'jack', id: 'jack', title: 'output jack', ring: false };

export const strings: Metal = {
  kind: 'metal',
  id: 'strings',
  title: 'strings and bridge',
  role: 'strings',
  outside: true,
};

export type LeadRow = readonly [id: string, kind: LeadKind, from: LugRef, to: LugRef];

/** Collects leads; ids are given by the caller and stay stable. */
export function leads(list: readonly LeadRow[]): readonly Lead[] {
  return list.map(([id, kind, from, to]) => ({ id, kind, from, to }));
}
