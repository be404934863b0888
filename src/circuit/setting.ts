import type { Circuit, Setting } from './circuit.ts';
import type { PartOf } from './parts/part.ts';

export const switchesOf = (circuit: Circuit): readonly PartOf<'switch'>[] =>
  circuit.parts.filter((part) => part.kind === 'switch');
export const potsOf = (circuit: Circuit): readonly PartOf<'pot'>[] =>
  circuit.parts.filter((part) => part.kind === 'pot');

/** Every knob at 10, every switch in its first position, nothing lifted, no plug. */
export function restingSetting(circuit: Circuit): Setting {
  return {
    positions: Object.fromEntries(
      switchesOf(circuit).map((part) => [part.id, part.positions[0]?.name ?? '']),
    ),
    knobs: Object.fromEntries(potsOf(circuit).map((part) => [part.id, 10])),
    plug: 'out',
    lifted: [],
  };
}

/** Every combination of switch positions, knobs as in the resting setting; the first switch moves slowest. */
export function switchSettings(circuit: Circuit): readonly Setting[] {
  let settings: Setting[] = [restingSetting(circuit)];
  for (const part of switchesOf(circuit))
    settings = settings.flatMap((setting) =>
      part.positions.map((position) => ({
        ...setting,
        positions: { ...setting.positions, [part.id]: position.name },
      })),
    );
  return settings;
}

const turned = new WeakMap<Setting, Map<string, Setting>>();

/** The setting with one knob moved; the same object for the same question. */
export function withKnob(setting: Setting, pot: string, figure: number): Setting {
  const known = turned.get(setting) ?? new Map<string, Setting>();
  turned.set(setting, known);
  const key = `${pot}=${figure}`;
  const made =
    setting.knobs[pot] === figure
      ? setting
      : (known.get(key) ?? { ...setting, knobs: { ...setting.knobs, [pot]: figure } });
  known.set(key, made);
  return made;
}

const keys = new WeakMap<Setting, string>();

/** A name for a setting that is equal exactly for equal settings; made once per setting object. */
export function settingKey(setting: Setting): string {
  const known = keys.get(setting);
  if (known !== undefined) return known;
  const sorted = (record: Readonly<Record<string, string | number>>) =>
    Object.keys(record)
      .sort()
      .map((key) => `${key}=${record[key]}`)
      .join(',');
  const key = `${sorted(setting.positions)}|${sorted(setting.knobs)}|${setting.plug}|${[...setting.lifted].sort().join(',')}`;
  keys.set(setting, key);
  return key;
}
