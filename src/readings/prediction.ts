import type { Ohms } from '../circuit/units.ts';

/**
 * What one guitar would show, as a distribution:
 * - `level`: y = ln(ohms shown) is normal about `mean` with slopes on the unknowns and its own noise
 * - `over`: the over-range sign
 * - `threshold`: a beep; sounds when `ohms` lies below the meter's own threshold
 * - `choice`: one of a few words, each with its chance
 */
export type Prediction =
  | {
      readonly type: 'level';
      readonly mean: number;
      readonly slopes: Float64Array;
      readonly noise: number;
      readonly ohms: Ohms;
    }
  | { readonly type: 'over' }
  | { readonly type: 'threshold'; readonly ohms: Ohms }
  | {
      readonly type: 'choice';
      readonly chances: Readonly<Record<string, number>>;
      /** The chances if the whole guitar starts from the other sign of `latent`, where that sign is unknown but shared by all such readings. */
      readonly mirrored?: Readonly<Record<string, number>>;
      readonly latent?: 'tap' | 'pole';
      /** The chances in each room of `ROOMS`, of which `chances` is the mean: all that is heard is heard in one room. */
      readonly rooms?: readonly Readonly<Record<string, number>>[];
    };

/** What was seen, in the same terms. */
export type Observation =
  | { readonly type: 'level'; readonly value: number }
  | { readonly type: 'over' }
  | { readonly type: 'threshold'; readonly beeps: boolean }
  | { readonly type: 'choice'; readonly word: string };
