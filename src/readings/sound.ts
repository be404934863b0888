import type { Circuit } from '../circuit/circuit.ts';
import { coilsByString } from '../circuit/strings.ts';
import type { Ac } from '../solver/index.ts';
import { acAtJack, type CoilHeard, coilsHeard, usualLoad } from './audio.ts';
import { type Strays, straysOf } from './strays.ts';
import type { View } from './view.ts';

/**
 * Octave bands, and what each weighs to the ear in power. A plucked string's velocity, which a coil hears, has harmonics as 1/n
 * (textbook, ideal string): 3 dB less an octave. On that lies weighting A of IEC 61672-1.
 */
const BANDS = [125, 250, 500, 1000, 2000, 4000] as const;
const A_WEIGHTING = [-16.1, -8.6, -3.2, 0, 1.2, 1.0];
const WEIGHTS = BANDS.map((_, at) => 10 ** (((A_WEIGHTING[at] as number) - 3 * at) / 10));
const WHOLE = WEIGHTS.reduce((sum, weight) => sum + weight, 0);
/** Low end and brightness, as places in `BANDS`. */
const LOW = [0, 1, 2];
const HIGH = [4, 5];
/** Hum of magnetic fields is heard by its fifth harmonic or so, buzz of electric ones by their switching noise: places in `BANDS`. */
const MAGNETIC_BAND = 1;
const ELECTRIC_BAND = 4;

/** Coils wound alike never cancel hum better than to a tenth (common practice, no source). */
const UNCANCELLED = 0.1;

/** Six strings in usual tuning (equal temperament from A 440 Hz, ISO 16), on a scale of 0.648 m (common practice). */
const STRINGS = [82.41, 110, 146.83, 196, 246.94, 329.63];
const SCALE = 0.648;
/** Metres from the bridge of a bridge, a middle and a neck pickup, and between the poles of a two-coil one (common practice, no source). */
const PLACES = [0.04, 0.1, 0.16] as const;
const POLES = 0.018;

/**
 * How far two places on the strings hear the same, over an octave band. A standing wave of wave number k = 2 pi f / c has the height
 * sin(k x) at x from its end; the wave's speed c is twice the scale times the pitch (textbook, ideal string). Low notes swing alike
 * everywhere near the bridge; from some hundred hertz on places half a wave apart swing against each other.
 */
function agreement(hertz: number, x: number, y: number): number {
  let [both, one, other] = [0, 0, 0];
  for (const pitch of STRINGS)
    for (const part of [0.75, 0.9, 1.1, 1.35]) {
      const k = (2 * Math.PI * hertz * part) / (2 * SCALE * pitch);
      both += Math.sin(k * x) * Math.sin(k * y);
      one += Math.sin(k * x) ** 2;
      other += Math.sin(k * y) ** 2;
    }
  return Math.max(0, both / Math.sqrt(one * other));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const [BRIDGE, MIDDLE, NECK] = PLACES;
/** Of two coils in one pickup, and of two pickups, by band. Marked as pure: a screen that never predicts a sound goes without them. */
const NEAR = /* @__PURE__ */ BANDS.map((hertz) =>
  mean(PLACES.map((x) => agreement(hertz, x, x + POLES))),
);
const FAR = /* @__PURE__ */ BANDS.map((hertz, at) =>
  Math.min(
    NEAR[at] as number,
    mean([
      agreement(hertz, BRIDGE, MIDDLE),
      agreement(hertz, MIDDLE, NECK),
      agreement(hertz, BRIDGE, NECK),
    ]),
  ),
);

/** What reaches the amplifier. Powers; 1 is one coil of 1 V at the jack without loss, in bands weighed as the ear does. */
export interface Sound {
  readonly level: number;
  readonly low: number;
  readonly high: number;
  /** Per volt of hum in every coil, and per volt of the room. */
  readonly magnetic: number;
  readonly electric: number;
}

/** Hum alone, at one frequency: of magnetic fields, per volt of it in every coil, and of electric ones, per volt of the room. */
export function humAt(
  view: View,
  touched: string | null,
  hertz: number,
): Pick<Sound, 'magnetic' | 'electric'> {
  const strays = straysOf(view.layout, touched);
  const ac = acAtJack(view, usualLoad, strays.loads, strays.more);
  const heard = coilsHeard(view, ac.solve(hertz));
  return { magnetic: magneticIn(heard), electric: roomIn(ac, strays) };
}

/** Hum of electric fields alone while a hand touches one of the metals, or none: the same figure as in the whole sound. */
export function electricHum(view: View, touched: string | null): number {
  const strays = straysOf(view.layout, touched);
  const ac = acAtJack(view, usualLoad, strays.loads, strays.more);
  return roomIn(ac.solve(BANDS[ELECTRIC_BAND]), strays);
}

/** The sound of a guitar while a hand touches one of its metals, or none. */
export function soundOf(view: View, touched: string | null): Sound {
  const strays = straysOf(view.layout, touched);
  const ac = acAtJack(view, usualLoad, strays.loads, strays.more);
  const { circuit } = view.layout;
  let [magnetic, electric] = [0, 0];
  const byString = coilsByString(circuit);
  const powers = BANDS.map((hertz, band) => {
    const heard = coilsHeard(view, ac.solve(hertz));
    if (band === MAGNETIC_BAND) magnetic = magneticIn(heard);
    if (band === ELECTRIC_BAND) electric = roomIn(ac, strays);
    return mean(
      byString.map((coils) =>
        stringPower(
          circuit,
          heard.filter(({ coil }) => coils.includes(coil.id)),
          band,
        ),
      ),
    );
  });
  const over = (bands: readonly number[]) =>
    bands.reduce((sum, at) => sum + (WEIGHTS[at] as number) * (powers[at] as number), 0) / WHOLE;
  return {
    level: over(BANDS.map((_, at) => at)),
    low: over(LOW),
    high: over(HIGH),
    magnetic,
    electric,
  };
}

/**
 * Power of one string over the coils that hear it: those of one pickup hear it in nearly one place, pickups in different ones, and the farther two
 * places lie apart against the wavelength, the less their signals have to do with each other.
 */
function stringPower(circuit: Circuit, heard: readonly CoilHeard[], band: number): number {
  const near = NEAR[band] as number;
  const far = FAR[band] as number;
  const sums = new Map<string, [number, number]>();
  let alone = 0;
  for (const { coil, volts, signal } of heard) {
    const pickup = circuit.pickups.find(({ coils }) => coils.includes(coil.id))?.id ?? coil.id;
    const sum = sums.get(pickup) ?? [0, 0];
    sums.set(pickup, [sum[0] + signal * volts[0], sum[1] + signal * volts[1]]);
    alone += volts[0] ** 2 + volts[1] ** 2;
  }
  let [re, im, pickups] = [0, 0, 0];
  for (const [x, y] of sums.values()) {
    re += x;
    im += y;
    pickups += x * x + y * y;
  }
  return far * (re * re + im * im) + (near - far) * pickups + (1 - near) * alone;
}

/** Hum drives coils by their winding sense alone. */
function magneticIn(heard: readonly CoilHeard[]): number {
  let [re, im, alone] = [0, 0, 0];
  for (const { volts, hum } of heard) {
    re += hum * volts[0];
    im += hum * volts[1];
    alone += volts[0] ** 2 + volts[1] ** 2;
  }
  return re * re + im * im + UNCANCELLED ** 2 * alone;
}

/** By reciprocity the current that the driven jack sends into the room's capacitances is what the room's voltage brings to the jack. */
function roomIn(ac: Ac, { fromRoom }: Strays): number {
  let [re, im] = [0, 0];
  for (const load of fromRoom) {
    const [x, y] = ac.throughLoad(load);
    re += x;
    im += y;
  }
  return re * re + im * im;
}
