import type { Circuit, Setting } from '../circuit/circuit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { restingSetting, switchesOf } from '../circuit/setting.ts';
import { coilsByString } from '../circuit/strings.ts';
import { acAtJack, type CoilHeard, coilsHeard, usualLoad } from '../readings/audio.ts';
import { View } from '../readings/view.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';

/** How the coils that sound in one position go together. */
export interface PositionSound {
  /** As in a sentence: "bridge and middle"; with other switches than the selector named where they matter. */
  readonly title: string;
  readonly setting: Setting;
  /** Coils within 20 dB of the loudest, loudest first. */
  readonly coils: readonly { readonly id: string; readonly title: string }[];
  /** Every two of them: whether the string's signals add or fight, and whether their hum cancels or adds. */
  readonly pairs: readonly {
    readonly one: string;
    readonly other: string;
    /** Coils under different strings do neither. */
    readonly signal: 'add' | 'fight' | 'apart';
    readonly hum: 'cancels' | 'adds';
  }[];
  /** What is left of the hum of all of them: as good as none, part, or all. */
  readonly hum: 'cancels' | 'partly' | 'stays' | 'nothing sounds';
}

/** Signals are compared under every resonance; a coil 20 dB down is not heard beside another. */
const HERTZ = 200;
const FAINT = 0.1;
const NOTHING = 1e-3;

/** Every position of the selector, and every other switch thrown on its own, all knobs at 10. */
export function positionsOf(circuit: Circuit): readonly PositionSound[] {
  const layout = layoutOf(circuit);
  const byString = coilsByString(circuit);
  const meet = (one: CoilHeard, other: CoilHeard) =>
    byString.some((coils) => coils.includes(one.coil.id) && coils.includes(other.coil.id));
  return placesOf(circuit).map(({ title, setting }) => {
    const view = new View(layout, setting, []);
    const all = coilsHeard(view, acAtJack(view, usualLoad).solve(HERTZ));
    const size = ({ volts }: CoilHeard) => Math.hypot(volts[0], volts[1]);
    const loudest = Math.max(NOTHING, ...all.map(size));
    const heard = all
      .filter((one) => size(one) >= FAINT * loudest)
      .sort((x, y) => size(y) - size(x));
    return {
      title,
      setting,
      coils: heard.map(({ coil }) => ({ id: coil.id, title: coil.title })),
      pairs: heard.flatMap((one, at) =>
        heard.slice(at + 1).map((other) => {
          // Positive where both bring their EMF to the jack the same way round.
          const along = one.volts[0] * other.volts[0] + one.volts[1] * other.volts[1];
          return {
            one: one.coil.title,
            other: other.coil.title,
            signal: !meet(one, other)
              ? ('apart' as const)
              : along * one.signal * other.signal > 0
                ? ('add' as const)
                : ('fight' as const),
            hum: along * one.hum * other.hum > 0 ? ('adds' as const) : ('cancels' as const),
          };
        }),
      ),
      hum: humLeft(heard),
    };
  });
}

/** Of coils whose hum does not cancel the power together is at least that of each for itself. */
function humLeft(heard: readonly CoilHeard[]): PositionSound['hum'] {
  if (heard.length === 0) return 'nothing sounds';
  let [re, im, sum] = [0, 0, 0];
  for (const { volts, hum } of heard) {
    re += hum * volts[0];
    im += hum * volts[1];
    sum += Math.hypot(volts[0], volts[1]);
  }
  const left = Math.hypot(re, im) / sum;
  if (left < 0.15) return 'cancels';
  return left < 0.7 && heard.length > 1 ? 'partly' : 'stays';
}

function placesOf(circuit: Circuit): readonly { title: string; setting: Setting }[] {
  const rest: Setting = { ...restingSetting(circuit), plug: 'in' };
  const switches = switchesOf(circuit);
  const selector = switches.reduce<(typeof switches)[number] | null>(
    (most, one) => (most && most.positions.length >= one.positions.length ? most : one),
    null,
  );
  if (!selector) return [{ title: diagnosisWords().theGuitar, setting: rest }];
  const at = (id: string, name: string, from: Setting): Setting => ({
    ...from,
    positions: { ...from.positions, [id]: name },
  });
  const places = selector.positions.map(({ name, title }) => ({
    title,
    setting: at(selector.id, name, rest),
  }));
  // A split or a phase switch changes what a position is: each thrown for itself, in every position of the selector.
  const thrown = switches
    .filter((part) => part !== selector)
    .flatMap((part) =>
      part.positions.slice(1).flatMap(({ name, title }) =>
        places.map((place) => ({
          title: `${place.title}, ${part.title}: ${title}`,
          setting: at(part.id, name, place.setting),
        })),
      ),
    );
  return [...places, ...thrown];
}
