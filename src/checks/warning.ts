import type { LugRef } from '../circuit/circuit.ts';
import type { PartId } from '../circuit/parts/part.ts';

/**
 * What a drawn wiring may have been meant otherwise in:
 * - `missing`: a part without which there is no sound to speak of
 * - `floating`: a lug that something ends on, or should, and that leads nowhere
 * - `shorted`: hot on ground although nobody turned down or held a button
 * - `unheard`: a coil that the output never hears
 * - `idle`: a control that changes nothing at the output
 * - `ungrounded`: metal without a way to the jack's sleeve
 */
export type WarningKind = 'missing' | 'floating' | 'shorted' | 'unheard' | 'idle' | 'ungrounded';

/** Plain data; the sentence is fit to show and names the place. */
export interface Warning {
  readonly kind: WarningKind;
  /** The lugs to look at, the one to mend first. Empty where a part is missing. */
  readonly lugs: readonly LugRef[];
  readonly parts: readonly PartId[];
  readonly sentence: string;
}
