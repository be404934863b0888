import { type Ohms, ohms } from '../circuit/units.ts';
import type { Meter } from '../readings/reading.ts';
import type { Dice } from './dice.ts';

/** A hand-held meter as it is; figures are common practice, no source. */
export class SimulatedMeter {
  /** What its owner knows of it. */
  readonly known: Meter;
  /** It beeps below this. */
  readonly beepsBelow: Ohms;
  private readonly leads: number;
  private readonly counts: number;
  /** Full scale of each range and the share it reads too much. */
  private readonly ranges: readonly { readonly full: number; readonly gain: number }[];

  /** @param own dice for what its owner cannot know, where other meters are to look like this one */
  constructor(dice: Dice, own: Dice = dice) {
    const limit = dice.pick([2e6, 20e6, 40e6]);
    const accuracy = dice.between(0.005, 0.015);
    this.counts = limit === 40e6 ? 4000 : 2000;
    this.leads = dice.between(0.1, 0.6);
    this.beepsBelow = ohms(20 * 6 ** dice.throw());
    const ranges: { full: number; gain: number }[] = [];
    for (let full = limit; full >= 200; full /= 10)
      ranges.unshift({ full, gain: own.normalWithin(0, accuracy / 2, accuracy) });
    this.ranges = ranges;
    // Shorted probes show the leads in tenths of an ohm.
    const shorted = Math.round(this.leads * 10) / 10;
    this.known = { accuracy, leads: ohms(shorted), limit: ohms(limit) };
  }

  /**
   * What the display shows of a resistance: the smallest range that holds it, that range's error, the leads, the
   * contact under the tips, up to one count of flicker, and rounding to a count (3 1/2 digits, or 4000 counts).
   */
  display(real: number, dice: Dice): Ohms | 'open' {
    const shown = this.figure(real, dice);
    return shown === 'open' ? shown : ohms(shown.counts * shown.step);
  }

  /** The same as it stands in the display: so many counts of so many ohms. */
  figure(
    real: number,
    dice: Dice,
  ): { readonly counts: number; readonly step: number; readonly full: number } | 'open' {
    const seen = real + this.leads + dice.between(0, 0.05);
    const flicker = dice.between(-1, 1);
    for (const { full, gain } of this.ranges) {
      const step = full / this.counts;
      const counts = Math.max(0, Math.round((seen * (1 + gain)) / step + flicker));
      if (counts < this.counts) return { counts, step, full };
    }
    return 'open';
  }

  beeps(real: number): boolean {
    return real + this.leads < this.beepsBelow;
  }
}
