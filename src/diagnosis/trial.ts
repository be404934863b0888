import type { Circuit, Setting } from '../circuit/circuit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { restingSetting, switchesOf, withKnob } from '../circuit/setting.ts';
import type { AudioLoad } from '../readings/audio.ts';
import { logSpaced, responseOf } from '../readings/response.ts';
import { View } from '../readings/view.ts';

/** Two wirings to be heard side by side, each with its cable and amplifier, the controls alike. */
export interface TrialQuestion {
  readonly before: { readonly circuit: Circuit; readonly load: AudioLoad };
  readonly after: { readonly circuit: Circuit; readonly load: AudioLoad };
  readonly setting: Setting;
  /** A knob of the second wiring to sweep, or null. */
  readonly sweep: PartId | null;
}

export interface Curve {
  /** Decibels against one coil's own signal, one a frequency; never below `LOWEST`. */
  readonly decibels: Float64Array;
  /** The top of the curve, where it has one of its own. */
  readonly resonance: { readonly hertz: number; readonly decibels: number } | null;
  /** Decibels of the low end. */
  readonly level: number;
}

export interface Trial {
  readonly hertz: Float64Array;
  readonly before: Curve;
  readonly after: Curve;
  /** The second wiring with the swept knob at 0, 2, 4, 6, 8 and 10. */
  readonly family: readonly { readonly knob: number; readonly curve: Curve }[];
}

/** 20 Hz to 20 kHz, evenly by ratio. */
const HERTZ = logSpaced(20, 20_000, 300);
const LOWEST = -100;
/** Where the low end is read: under every resonance of a pickup, above what a coupling capacitor takes. */
const LEVEL_HERTZ = 200;
const STEPS = [0, 2, 4, 6, 8, 10];
/** A top less than half a decibel above the low end is no resonance to speak of. */
const LEAST_TOP = 0.5;

/** Response of both wirings, and of the second one over the sweep of a knob. */
export function trialOf({ before, after, setting, sweep }: TrialQuestion): Trial {
  const curve = ({ circuit, load }: TrialQuestion['after'], at: Setting): Curve =>
    curveOf(circuit, settingFor(circuit, at), load);
  return {
    hertz: HERTZ,
    before: curve(before, setting),
    after: curve(after, setting),
    family:
      sweep === null
        ? []
        : STEPS.map((knob) => ({ knob, curve: curve(after, withKnob(setting, sweep, knob)) })),
  };
}

function curveOf(circuit: Circuit, setting: Setting, load: AudioLoad): Curve {
  const { real, imaginary } = responseOf(new View(layoutOf(circuit), setting, []), HERTZ, load);
  const decibels = real.map((re, at) =>
    Math.max(LOWEST, 20 * Math.log10(Math.hypot(re, imaginary[at] as number))),
  );
  const level = decibels[HERTZ.findIndex((hertz) => hertz >= LEVEL_HERTZ)] as number;
  const top = decibels.indexOf(Math.max(...decibels));
  const inside = top > 0 && top < decibels.length - 1;
  const height = decibels[top] as number;
  return {
    decibels,
    level,
    resonance:
      inside && height > level + LEAST_TOP && (HERTZ[top] as number) > LEVEL_HERTZ
        ? { hertz: HERTZ[top] as number, decibels: height }
        : null,
  };
}

/** The controls of one wiring as those of another stand; what only it has stands as at rest. */
export function settingFor(circuit: Circuit, wished: Setting): Setting {
  const rest = restingSetting(circuit);
  const positions = Object.fromEntries(
    switchesOf(circuit).map((part) => {
      const name = wished.positions[part.id];
      const known = part.positions.some((position) => position.name === name);
      return [part.id, known ? (name as string) : (rest.positions[part.id] as string)];
    }),
  );
  const knobs = Object.fromEntries(
    Object.keys(rest.knobs).map((id) => [id, wished.knobs[id] ?? 10]),
  );
  return { ...rest, positions, knobs };
}
