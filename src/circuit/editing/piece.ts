import type { Lead, Pickup } from '../circuit.ts';
import type { Part } from '../parts/part.ts';

/** What comes out of the tray as one thing: a pickup with its coils and inner leads, a pot with the switch on its back. */
export interface Piece {
  readonly parts: readonly Part[];
  readonly leads: readonly Lead[];
  readonly pickup?: Pickup;
}
