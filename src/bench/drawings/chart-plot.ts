/** The plot inside its axes. */
export const PLOT = { left: 40, right: 346, top: 12, bottom: 236 };
/** Half the size of the mark on a resonance. */
export const MARK = 6;

/** A point of every curve that lies in the plot. */
export interface Point {
  /** Its place in the list of frequencies. */
  readonly index: number;
  readonly x: number;
}
