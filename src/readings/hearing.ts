/** A power now and before. */
export interface Change {
  readonly now: number;
  readonly before: number;
}

/** Powers below this, of the sound of a whole coil, are nothing at all: 120 dB down. */
const NOTHING = 1e-12;

/** How much louder something became, in decibels of power. */
export const rise = (now: number, before: number): number =>
  10 * Math.log10((now + NOTHING) / (before + NOTHING));

/**
 * From which level or change on, in decibels, half of the people name what they hear, and how sharply.
 *
 * - `present`: against the full sound of one coil. Asked at low volume, which is to say about as loud as talking: 62 dB (normal effort,
 *   ANSI S3.5-1997) over the 35 dB of a quiet dwelling (WHO, Guidelines for Community Noise, 1999), so what is 27 dB down is as loud as
 *   the room. Amplifier and room each spread by some 5 dB.
 * - `remembered`: against how the guitar should sound. 1 dB is just noticed side by side; 10 dB is half as loud (10 phon to a doubling: ISO 532).
 *   Half-way between, with few complaints at the one and nearly all at the other.
 * - `compared`: heard one after the other at once: twice what is just noticed.
 *
 * Published figures are from memory; nothing here was fitted to a case.
 */
const HEARD = {
  present: { at: -27, spread: 7 },
  remembered: { at: 5.5, spread: 2.1 },
  compared: { at: 2, spread: 1 },
} as const;

/** Chance that a level (power) or a change (decibels) is named. */
export function heardAs(kind: keyof typeof HEARD, amount: number): number {
  const { at, spread } = HEARD[kind];
  const decibels = kind === 'present' ? rise(amount, 1) : amount;
  // A logistic step with this standard deviation.
  return 1 / (1 + Math.exp((-(decibels - at) * Math.PI) / (spread * Math.sqrt(3))));
}

const decibels = (...levels: readonly number[]) => levels.map((level) => 10 ** (level / 10));

/**
 * Hum of rooms, as power against the played sound of one coil: a weak, a usual and a strong one.
 * Magnetic, per coil: 0.1 microtesla at home, 1 beside an amplifier (WHO fact sheet 322), in 8000 turns of 4.5 cm2 with a core of two; a
 * played coil gives some 30 mV. Electric, per volt of the room: a hundredth of the mains' 230 V is switching noise (IEC 61000-2-2
 * allows about as much). From memory, worked out to +-10 dB.
 */
export const MAGNETIC = decibels(-48, -38, -28);
const ELECTRIC = decibels(38, 48, 58);
export interface Room {
  readonly magnetic: number;
  readonly electric: number;
}
/** Every room there may be, equally likely. Which it is is not known, but all that is heard of one guitar is heard in it. */
export const ROOMS: readonly Room[] = MAGNETIC.flatMap((magnetic) =>
  ELECTRIC.map((electric) => ({ magnetic, electric })),
);
/** Played at home at some 80 dB, the room's 35 dB lie 45 below: hum under that troubles nobody. */
export const HUM_FLOOR = 10 ** -4.5;
/** Who listens for hum turns up until it is heard; what is left then is the hiss of the coil, 10 kohm over 20 kHz: 2 microvolt (Johnson noise), 84 dB down. */
export const HISS = 10 ** -8.4;
