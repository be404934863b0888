import { capacitor } from './capacitor.ts';
import { coil } from './coil.ts';
import { jack } from './jack.ts';
import type { PartKindSpec } from './kind.ts';
import { metal } from './metal.ts';
import type { Part, PartKind, PartOf } from './part.ts';
import { pot } from './pot.ts';
import { resistor } from './resistor.ts';
import { splice } from './splice.ts';
import { switchKind } from './switch.ts';

const kinds: { readonly [K in PartKind]: PartKindSpec<PartOf<K>> } = {
  coil,
  pot,
  switch: switchKind,
  capacitor,
  resistor,
  jack,
  metal,
  splice,
};

export const isPartKind = (kind: unknown): kind is PartKind =>
  typeof kind === 'string' && Object.hasOwn(kinds, kind);

/** The behaviour of a part's kind. */
export function kindOf<P extends Part>(part: P): PartKindSpec<P> {
  return kinds[part.kind] as unknown as PartKindSpec<P>;
}
