import type { Pot } from '../../src/circuit/parts/part.ts';

/** Share of the track between lug 1 and the wiper, 0..1, at a knob figure of 0..10. */
export function shareAt(pot: Pot, knob: number): number {
  // A left-handed knob stands at its 10 with the shaft turned all the way counter-clockwise.
  const turn = pot.leftHanded ? (10 - knob) / 10 : knob / 10;
  const audio = (t: number) =>
    t <= 0.5 ? 2 * t * pot.midShare : pot.midShare + (2 * t - 1) * (1 - pot.midShare);
  switch (pot.taper) {
    case 'linear':
      return turn;
    case 'audio':
      return audio(turn);
    case 'reverse-audio':
      return 1 - audio(1 - turn);
  }
}

/** Ohms that stay between the wiper and an end lug at the end stop. */
export const statedEndOhms = 10;

/** Ohms of the track on both sides of the wiper. */
export function trackHalves(
  pot: Pot,
  ohms: number,
  knob: number,
  endOhms = statedEndOhms,
): { lower: number; upper: number } {
  const share = shareAt(pot, knob);
  const swept = ohms - 2 * endOhms;
  return { lower: endOhms + swept * share, upper: endOhms + swept * (1 - share) };
}
