import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import { withKnob } from '../../src/circuit/setting.ts';
import type { AskOf, Heard, SeenOf } from '../../src/readings/reading.ts';
import { type ResponseJob, responses, type SpiceNetlist, spiceNetlist } from '../oracle/index.ts';
import type { Bench } from './bench.ts';
import type { Dice } from './dice.ts';
import { isHeard } from './metals.ts';
import { outputOf } from './output.ts';

/** Cable and amplifier input; common practice, no source. */
const load = { ohms: 1e6, farads: 500e-12 };
const lowHertz = [100, 200, 400];
const highHertz = [1600, 3200];
const heard: readonly Heard[] = ['normal', 'silent', 'weak', 'thin', 'dull', 'hum', 'crackle'];

interface Sound {
  /** Decibels below a coil's own EMF. */
  readonly low: number;
  readonly high: number;
  /** Pick-up of a magnetic field that swings alike through all coils, in the same decibels. */
  readonly hum: number;
}

/**
 * What is heard with the guitar plugged in, against the intended guitar with its printed values in the same setting.
 * Every coil has an EMF of 1 V for the string (sign: winding x magnet) and of 1 V for hum (sign: winding).
 * Thresholds in decibels and one confused answer in twelve are common practice, no source.
 */
export function readListen(
  intended: Circuit,
  bench: Bench,
  setting: Setting,
  dice: Dice,
): SeenOf<'listen'> {
  const plugged: Setting = { ...setting, plug: 'in' };
  const said = dice.chance(1 / 12) ? dice.pick(heard) : judge(intended, bench, plugged, dice);
  return { kind: 'listen', heard: said };
}

function judge(intended: Circuit, bench: Bench, setting: Setting, dice: Dice): Heard {
  const { circuit, edits } = bench;
  const { tip, sleeve } = outputOf(circuit);
  const loose = edits.filter((edit) => edit.op === 'intermittent');
  const scratched = edits
    .filter((edit) => edit.op === 'worn')
    .find(({ part }) => (setting.knobs[part] ?? 10) < 10);
  const [healthy, real, up, ...moved] = soundsOf([
    { circuit: intended, netlist: spiceNetlist(intended, setting), magnetOf: () => 1 },
    ...[
      { at: setting, more: [] },
      { at: scratched ? withKnob(setting, scratched.part, 10) : setting, more: [] },
      ...loose.map(({ site }) => ({ at: setting, more: [{ op: 'open' as const, site }] })),
    ].map(({ at, more }) => ({
      circuit,
      netlist: bench.netlist(at, [...edits, ...more]),
      magnetOf: (coil: string) => turnedBy(bench, coil),
    })),
  ]) as [Sound, Sound, Sound, ...Sound[]];
  const coils = circuit.parts.filter(({ kind }) => kind === 'coil');
  const metals = circuit.parts.filter(({ kind }) => kind === 'metal');
  const path = (from: string, to: string) => bench.ohms(setting, [from, to]);
  const floating = metals.filter(({ id }) => path(`${id}.metal`, sleeve) > 10_000);
  // The sleeve joined to no coil at all, not by a capacitor either: the amplifier hears the room and nothing else. Joined to the tip
  // it is a shorted input, and silent (common practice, no source).
  const isCutOff =
    path(tip, sleeve) > 10_000 && coils.every(({ id }) => path(`${id}.start`, sleeve) === Infinity);
  if (isCutOff && Math.max(real.low, real.high) < -20) return 'hum';
  // A worn track scratches while the knob is turned down, whatever is left to hear at its end.
  if (scratched && Math.max(up.low, up.high) > -40 && dice.chance(0.75)) return 'crackle';
  if (Math.max(real.low, real.high) < -40) return 'silent';
  if (moved.some(({ low }) => low < real.low - 6) && dice.chance(0.5)) return 'crackle';
  // A hand lies on the strings while they are played, and every metal stands in the room's field.
  if (metals.some(({ id }) => isHeard(bench, setting, `${id}.metal`))) return 'hum';
  if (floating.length > 0 && dice.chance(0.7)) return 'hum';
  const [low, high] = [real.low - healthy.low, real.high - healthy.high];
  // Hum against signal, 10 dB worse than intended; coils never cancel better than to a tenth.
  const floor = (hum: number) => Math.max(hum, -20);
  const worse = floor(real.hum) - real.low - (floor(healthy.hum) - healthy.low);
  if (high - low > 6) return 'thin';
  if (low - high > 6) return 'dull';
  if (low < -5) return 'weak';
  if (worse > 10) return 'hum';
  return 'normal';
}

/**
 * Hum of a magnetic field in one setting against another, on an amplifier whose own hum lies 20 dB under that of a coil, off by some
 * 2 dB (common practice, no source).
 */
export function readHum(bench: Bench, ask: AskOf<'hum'>, dice: Dice): SeenOf<'hum'> {
  const powers = soundsOf(
    [ask.setting, ask.against].map((setting) => ({
      circuit: bench.circuit,
      netlist: bench.netlist({ ...setting, plug: 'in' }, bench.edits),
      magnetOf: (coil: string) => turnedBy(bench, coil),
    })),
  ).map(({ hum }) => 10 ** (hum / 10) + 0.01);
  const decibels = 10 * Math.log10(powers[0]! / powers[1]!) + 2 * dice.normal();
  return { kind: 'hum', decibels: Math.round(10 * decibels) / 10 };
}

const turnedBy = ({ edits }: Bench, coil: string) =>
  edits.filter((edit) => edit.op === 'turn-magnet' && edit.coil === coil).length % 2 ? -1 : 1;

interface Guitar {
  readonly circuit: Circuit;
  readonly netlist: SpiceNetlist;
  /** -1 for a magnet that was turned. */
  magnetOf(coil: string): number;
}

/**
 * Two pickups hear one string at two places: at the low end nearly the same wave, at the high end hardly (common practice, no source).
 */
const agreement = (hertz: number) => (hertz < 1000 ? 0.92 : 0.4);
/**
 * Coils of one pickup stand some 18 mm apart (common practice, no source). On a string of pitch p and scale 0.65 m a wave of f Hz is 1.3 m x p / f
 * long (textbook, ideal string), and two places d apart hear cos(2 pi d / length) of it alike. Over six strings that is 0.97 and more up
 * to 400 Hz, and from 1600 Hz on about half and less: coils against each other leave a thin sound, and not none.
 */
const nearAgreement = (hertz: number) => (hertz < 1000 ? 0.98 : 0.5);

/** For the low and the high strings, coils that do not hear them: the other halves of pickups in halves. One list of none where there are none. */
function stringsOf({ pickups }: Circuit): readonly (readonly string[])[] {
  const halves = pickups.filter(({ stringsEach }) => stringsEach).map(({ coils }) => coils);
  if (halves.length === 0) return [[]];
  return [halves.map(([, high]) => high!), halves.map(([low]) => low!)];
}

/** Powers in one frequency of what each coil brings: those of one pickup agree most of the way, pickups less. */
function powerOf(
  pickups: readonly (readonly { readonly re: number; readonly im: number }[])[],
  hertz: number,
): number {
  const square = (list: readonly { readonly re: number; readonly im: number }[]) =>
    list.reduce((sum, { re }) => sum + re, 0) ** 2 + list.reduce((sum, { im }) => sum + im, 0) ** 2;
  const [far, near] = [agreement(hertz), nearAgreement(hertz)];
  const all = pickups.flat();
  const sum = (powers: readonly number[]) => powers.reduce((total, power) => total + power, 0);
  return (
    far * square(all) +
    (near - far) * sum(pickups.map(square)) +
    (1 - near) * sum(all.map((one) => square([one])))
  );
}

/** A job a coil, all in one run of the simulator: what coils bring together is the sum of what each brings alone (superposition). */
function soundsOf(guitars: readonly Guitar[]): Sound[] {
  const hertz = [...lowHertz, ...highHertz];
  const coilsOf = ({ circuit }: Guitar) => circuit.parts.filter((part) => part.kind === 'coil');
  const jobs = guitars.map((guitar): ResponseJob[] => {
    const { tip, sleeve } = outputOf(guitar.circuit);
    const across = [tip, sleeve] as const;
    const coils = coilsOf(guitar);
    return coils.map((driven) => ({
      netlist: guitar.netlist,
      across,
      loads: [{ at: across, ...load }],
      drive: { emfs: Object.fromEntries(coils.map(({ id }) => [id, id === driven.id ? 1 : 0])) },
    }));
  });
  const decibels = (share: number) => 20 * Math.log10(Math.max(share, 1e-6));
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const solved = responses(jobs.flat(), hertz);
  let at = 0;
  return guitars.map((guitar, which) => {
    const coils = coilsOf(guitar).map((coil, place) => ({ coil, volts: solved[at + place]! }));
    at += jobs[which]!.length;
    const { pickups } = guitar.circuit;
    const groups = stringsOf(guitar.circuit);
    const heardAt = hertz.map((frequency, f) => {
      const powers = groups.map((deaf) =>
        powerOf(
          pickups.map((pickup) =>
            coils
              .filter(({ coil: { id } }) => pickup.coils.includes(id) && !deaf.includes(id))
              .map(({ coil: { id, winding, magnet }, volts: { real, imaginary } }) => {
                const sign = winding * magnet * guitar.magnetOf(id);
                return { re: sign * real[f]!, im: sign * imaginary[f]! };
              }),
          ),
          frequency,
        ),
      );
      return decibels(Math.sqrt(mean(powers)));
    });
    const hum = (part: 'real' | 'imaginary') =>
      coils.reduce((sum, { coil, volts }) => sum + coil.winding * volts[part][0]!, 0);
    return {
      low: mean(heardAt.slice(0, lowHertz.length)),
      high: mean(heardAt.slice(lowHertz.length)),
      hum: decibels(Math.hypot(hum('real'), hum('imaginary'))),
    };
  });
}
