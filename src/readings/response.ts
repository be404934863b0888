import { type AudioLoad, acAtJack, coilsHeard } from './audio.ts';
import type { View } from './view.ts';

/** Volts at the jack for 1 V of string signal in every coil, one complex number a frequency. */
export interface Response {
  readonly real: Float64Array;
  readonly imaginary: Float64Array;
}

/** `count` frequencies from `low` to `high` Hz, evenly spaced by ratio. */
export const logSpaced = (low: number, high: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, at) => low * (high / low) ** (at / (count - 1)));

/** The response of one guitar in one setting to a string that all coils hear alike, each with the sign of its winding and magnet. */
export function responseOf(view: View, hertz: Float64Array, load: AudioLoad): Response {
  const ac = acAtJack(view, load);
  const response: Response = {
    real: new Float64Array(hertz.length),
    imaginary: new Float64Array(hertz.length),
  };
  hertz.forEach((frequency, at) => {
    let [re, im] = [0, 0];
    for (const { volts, signal } of coilsHeard(view, ac.solve(frequency))) {
      re += signal * volts[0];
      im += signal * volts[1];
    }
    response.real[at] = re;
    response.imaginary[at] = im;
  });
  return response;
}
