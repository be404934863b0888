import type { Circuit, Setting } from '../circuit/circuit.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { restingSetting, switchesOf, switchSettings } from '../circuit/setting.ts';

/** How switches may stand: position names by switch. A switch that is not named may stand as it likes. */
export type Stand = Readonly<Record<PartId, readonly string[]>>;

/** Settings looked at; a guitar with more is looked at with only so many switches thrown that they stay within. */
const MOST_SETTINGS = 256;

export interface Settings {
  /** Knobs at 10, the resting setting first, the others by how few switches they throw. */
  readonly list: readonly Setting[];
  /** At most so many switches are away from rest; undefined where every combination is in the list. */
  readonly thrown?: number;
}

/** Every combination of switch positions, or those with few switches thrown where there are too many. */
export function settingsOf(circuit: Circuit): Settings {
  const switches = switchesOf(circuit);
  const count = switches.reduce((all, { positions }) => all * positions.length, 1);
  if (count <= MOST_SETTINGS) {
    const all = switchSettings(circuit);
    const rest = all[0] as Setting;
    return { list: [...all].sort((x, y) => thrownIn(rest, x) - thrownIn(rest, y)) };
  }
  // With `n` thrown the list holds every choice of up to n switches in each of their other positions.
  let list: readonly Setting[] = [restingSetting(circuit)];
  let newest = list;
  for (let thrown = 1; ; thrown += 1) {
    const next = newest.flatMap((setting) => throwOneMore(circuit, setting, list[0] as Setting));
    if (list.length + next.length > MOST_SETTINGS || next.length === 0)
      return { list, thrown: thrown - 1 };
    list = [...list, ...next];
    newest = next;
  }
}

const thrownIn = (rest: Setting, setting: Setting): number =>
  Object.keys(rest.positions).filter((id) => setting.positions[id] !== rest.positions[id]).length;

/** Only switches after the last one thrown: each combination comes up once. */
function throwOneMore(circuit: Circuit, setting: Setting, rest: Setting): Setting[] {
  const switches = switchesOf(circuit);
  const last = switches.reduce(
    (found, { id }, at) => (setting.positions[id] !== rest.positions[id] ? at : found),
    -1,
  );
  return switches
    .slice(last + 1)
    .flatMap(({ id, positions }) =>
      positions
        .slice(1)
        .map(({ name }) => ({ ...setting, positions: { ...setting.positions, [id]: name } })),
    );
}

/**
 * A group of settings as few stands: each is grown from a setting that no stand holds yet, switch by switch,
 * as long as all settings of `all` that it would then hold belong to the group. (Greedy cover of a truth
 * table by cubes, textbook.)
 */
export function standsOf(
  circuit: Circuit,
  all: readonly Setting[],
  group: readonly Setting[],
): readonly Stand[] {
  const within = new Set(group);
  const stands: Stand[] = [];
  const held = (stand: Stand) => all.filter((setting) => holds(stand, setting));
  for (const seed of group) {
    if (stands.some((stand) => holds(stand, seed))) continue;
    let stand: Stand = Object.fromEntries(
      switchesOf(circuit).map(({ id }) => [id, [seed.positions[id] ?? '']]),
    );
    for (const { id, positions } of switchesOf(circuit))
      for (const { name } of positions) {
        const names = stand[id] as readonly string[];
        if (names.includes(name)) continue;
        const wider = { ...stand, [id]: [...names, name] };
        if (held(wider).every((setting) => within.has(setting))) stand = wider;
      }
    stands.push(bound(circuit, stand));
  }
  return stands;
}

const holds = (stand: Stand, setting: Setting): boolean =>
  Object.entries(stand).every(([id, names]) => names.includes(setting.positions[id] ?? ''));

/** Without the switches that may stand as they like, positions in the order of the switch. */
function bound(circuit: Circuit, stand: Stand): Stand {
  return Object.fromEntries(
    switchesOf(circuit).flatMap(({ id, positions }) => {
      const names = stand[id] ?? [];
      if (names.length === positions.length) return [];
      return [[id, positions.map(({ name }) => name).filter((name) => names.includes(name))]];
    }),
  );
}
