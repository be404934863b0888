import type { Choice, Chosen } from '../../catalog/modifications/modification.ts';
import type { Circuit } from '../../circuit.ts';
import type { Piece } from '../piece.ts';

/** One kind of thing in the tray. */
export interface TrayItem {
  readonly id: string;
  /** A heading in the player's words. */
  readonly title: string;
  /** What it is, where the title leaves that open. */
  readonly note?: string;
  /** What there is to decide before it is placed, the usual option first; what follows may depend on what was chosen. */
  choices(circuit: Circuit, chosen: Chosen): readonly Choice[];
  /** The thing itself, under names that are free on this guitar. */
  make(circuit: Circuit, chosen: Chosen): Piece;
}
