import type { Circuit, Setting } from '../circuit/circuit.ts';
import { potsOf, withKnob } from '../circuit/setting.ts';
import { called } from '../words/called.ts';
import { flowWords } from '../words/en/flows.ts';
import type { Answer } from './acts.ts';
import { listeningPlaces } from './symptom.ts';

/** One stand of the controls in which hum is measured. */
export interface HumPlace {
  readonly title: string;
  readonly setting: Setting;
}

/** Every position; where there is but one, the volume at 0 as well, which leaves the amplifier's own hum. */
export function humPlaces(circuit: Circuit): readonly HumPlace[] {
  const places = listeningPlaces(circuit).map(({ title, ask }) => ({
    title,
    setting: ask.setting,
  }));
  const [one] = places;
  const volume = potsOf(circuit).find(({ role }) => role === 'volume');
  if (places.length > 1 || !one || !volume) return places;
  return [
    one,
    {
      title: flowWords().potAt0(called(volume.title)),
      setting: withKnob(one.setting, volume.id, 0),
    },
  ];
}

/** What was measured of one place, as power on a scale of its own that is the same for all of them. */
interface HumPower {
  readonly setting: Setting;
  readonly power: number;
}

/** Readings of hum: every place against the loudest. None where fewer than two were measured. */
export function humAnswers(measured: readonly HumPower[]): readonly Answer[] {
  const [first, ...others] = measured;
  if (!first) return [];
  const loudest = others.reduce((so, one) => (one.power > so.power ? one : so), first);
  return measured
    .filter((one) => one !== loudest)
    .map(({ setting, power }) => ({
      ask: { kind: 'hum', setting, against: loudest.setting },
      seen: { kind: 'hum', decibels: humDifference(power, loudest.power) },
    }));
}

/** Decibels to a tenth. */
export const humDifference = (power: number, against: number): number =>
  Math.round(100 * Math.log10(power / against)) / 10;
