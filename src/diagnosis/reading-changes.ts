import type { Circuit, Setting } from '../circuit/circuit.ts';
import type { Part, PartId } from '../circuit/parts/part.ts';
import { potsOf, restingSetting, switchSettings, withKnob } from '../circuit/setting.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import { askAlone } from './alone.ts';
import type { Expectation } from './assessment.ts';
import { expectation } from './expect.ts';
import { settingFor } from './trial.ts';

/** A reading that comes out otherwise once a part is changed. */
export interface ReadingChange {
  readonly ask: Ask;
  /** The wiring that has every part of the ask, to name it by. */
  readonly named: 'before' | 'after';
  /** Null where the part was not there, or is no longer. */
  readonly before: Expectation | null;
  readonly after: Expectation | null;
}

export interface ChangesQuestion {
  readonly before: Circuit;
  readonly after: Circuit;
  readonly meter: Meter;
}

/** Less than this share a hand meter hardly shows. */
const LEAST = 0.01;
/** Switch settings looked at. */
const MOST_SETTINGS = 16;

/** Which meter readings change from one wiring to the other, and to what: at the jack, at each pot, on the changed parts alone. */
export function readingChanges({
  before,
  after,
  meter,
}: ChangesQuestion): readonly ReadingChange[] {
  const asks = new Map<string, Ask>();
  for (const circuit of [after, before])
    for (const ask of asksOf(circuit, changedParts(before, after)))
      asks.set(JSON.stringify([ask, ask.setting.lifted]), ask);
  const found: ReadingChange[] = [];
  for (const ask of uniqueAsks([...asks.values()])) {
    const [was, is] = [before, after].map((circuit) => expected(circuit, meter, ask)) as [
      Expectation | null,
      Expectation | null,
    ];
    if (was?.text === is?.text || (was && is && !differs(was, is))) continue;
    found.push({ ask, named: is ? 'after' : 'before', before: was, after: is });
  }
  return found;
}

/** The same reading may come from both wirings, with settings that name other controls. */
function uniqueAsks(asks: readonly Ask[]): readonly Ask[] {
  const keyOf = ({ setting, ...rest }: Ask) =>
    JSON.stringify([
      rest,
      setting.lifted,
      Object.entries(setting.positions),
      Object.entries(setting.knobs).filter(([, figure]) => figure !== 10),
    ]);
  return [...new Map(asks.map((ask) => [keyOf(ask), ask])).values()];
}

function expected(circuit: Circuit, meter: Meter, ask: Ask): Expectation | null {
  const ids = new Set(circuit.parts.map(({ id }) => id));
  const leads = new Set(circuit.leads.map(({ id }) => id));
  const has = (node: string) =>
    node.includes('@')
      ? leads.has(node.split('@')[0] as string)
      : ids.has(node.split('.')[0] as string);
  if ('red' in ask && !(has(ask.red) && has(ask.black))) return null;
  if ('part' in ask && !ids.has(ask.part)) return null;
  if (!ask.setting.lifted.every(has)) return null;
  const setting: Setting = { ...settingFor(circuit, ask.setting), lifted: ask.setting.lifted };
  return expectation(circuit, meter, { ...ask, setting });
}

function differs(was: Expectation, is: Expectation): boolean {
  const middle = ({ low, high }: Expectation) =>
    low === undefined || high === undefined ? null : Math.sqrt(Math.max(low, 1e-3) * high);
  const [a, b] = [middle(was), middle(is)];
  if (a === null || b === null) return was.text !== is.text;
  return Math.abs(Math.log(a / b)) > LEAST;
}

/** Parts whose value differs, or that only one of the two has. */
function changedParts(before: Circuit, after: Circuit): ReadonlySet<PartId> {
  const text = (parts: readonly Part[], id: PartId) =>
    JSON.stringify(parts.find((part) => part.id === id));
  const ids = [...before.parts, ...after.parts].map(({ id }) => id);
  return new Set(ids.filter((id) => text(before.parts, id) !== text(after.parts, id)));
}

function asksOf(circuit: Circuit, changed: ReadonlySet<PartId>): readonly Ask[] {
  const rest = restingSetting(circuit);
  const atJack = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve' } as const;
  const asks: Ask[] = [];
  for (const setting of switchSettings(circuit).slice(0, MOST_SETTINGS)) {
    asks.push({ ...atJack, setting });
    for (const pot of potsOf(circuit))
      asks.push({ ...atJack, setting: withKnob(setting, pot.id, 5) });
  }
  for (const pot of potsOf(circuit))
    for (const [red, black] of [
      ['3', '1'],
      ['3', '2'],
      ['2', '1'],
    ] as const)
      for (const figure of [10, 5])
        asks.push({
          kind: 'ohms',
          red: `${pot.id}.${red}`,
          black: `${pot.id}.${black}`,
          setting: withKnob(rest, pot.id, figure),
        });
  for (const part of circuit.parts) {
    const alone = changed.has(part.id) ? askAlone(circuit, part) : null;
    if (alone) asks.push(alone);
  }
  return asks;
}
