import type { Setting } from '../circuit/circuit.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { potsOf, switchesOf } from '../circuit/setting.ts';
import { jackOf } from '../readings/points.ts';
import type { Ask } from '../readings/reading.ts';
import { askAlone } from './alone.ts';
import { healthy } from './card-basis.ts';
import { type CardBench, type CardCell, cellOf } from './card-cell.ts';
import type { JackRow } from './card-jack.ts';
import { groundPairs, type Pair, pairsOf } from './card-points.ts';
import type { Stand } from './card-stands.ts';

/** A pair of lugs inside, a knob to turn while the jack is read, or a small part by itself. */
export interface CardLine {
  readonly group: Pair['group'] | 'knobs' | 'small';
  readonly title: string;
  readonly cell: CardCell;
  /** How the switches must stand for it; empty where that is of no consequence. */
  readonly stands: readonly Stand[];
}

/** Each knob that ohms at the jack show, turned where the fewest coils play along. */
export function knobLines(bench: CardBench, rows: readonly JackRow[]): readonly CardLine[] {
  const { circuit, predictor } = bench;
  const { tip: red, sleeve: black } = jackOf(predictor.layout);
  const byCoils = [...rows].sort((x, y) => places(x) - places(y));
  return potsOf(circuit).flatMap((pot): readonly CardLine[] => {
    for (const { atTen, stands } of byCoils) {
      const ask: Ask = { kind: 'turn', pot: pot.id, red, black, setting: atTen.ask.setting };
      const [how] = predictor.predict(healthy, ask);
      if (how?.type !== 'choice' || (how.chances['smooth'] ?? 0) < 0.5) continue;
      return [
        { group: 'knobs', title: pot.title, cell: cellOf(bench, ask), stands: stands.slice(0, 1) },
      ];
    }
    return [];
  });
}

/** Capacitors and resistors, each with one leg off: where ohms at the lugs cannot show a value, the part itself does. */
export const smallLines = (bench: CardBench): readonly CardLine[] =>
  bench.circuit.parts.flatMap((part): readonly CardLine[] => {
    const ask = askAlone(bench.circuit, part);
    return ask ? [{ group: 'small', title: part.title, cell: cellOf(bench, ask), stands: [] }] : [];
  });

/** Rows of no coil come last: there a knob may move and say little. */
const places = ({ coils }: JackRow): number => (coils.length === 0 ? 99 : coils.length);

/** The pairs of lugs inside. */
export function insideLines(bench: CardBench): readonly CardLine[] {
  const { predictor, circuit, settings } = bench;
  const { layout } = predictor;
  const rest = settings.list[0] as Setting;
  const lines: CardLine[] = [];
  for (const pair of pairsOf(layout)) {
    const { group, title, red, black } = pair;
    if (pair.contact !== undefined) {
      lines.push(...contactLine(bench, pair, pair.contact));
      continue;
    }
    const setting = clearest(bench, pair);
    const ask: Ask =
      pair.turn === undefined
        ? { kind: 'ohms', red, black, setting }
        : { kind: 'turn', pot: pair.turn, red, black, setting };
    lines.push({ group, title, cell: cellOf(bench, ask), stands: mattering(bench, ask) });
  }
  for (const { group, title, red, black } of groundPairs(layout, jackOf(layout).sleeve)) {
    const cell = cellOf(bench, { kind: 'ohms', red, black, setting: rest });
    // What nothing grounds is no ground: a card tells what was intended.
    if (cell.beeps === 'yes') lines.push({ group, title, cell, stands: [] });
  }
  return lines;

  function contactLine(at: CardBench, { group, title, red, black }: Pair, id: PartId): CardLine[] {
    const positions = switchesOf(circuit).find((one) => one.id === id)?.positions ?? [];
    const cells = positions.map(({ name }) => {
      const setting = { ...rest, positions: { ...rest.positions, [id]: name } };
      return { name, cell: cellOf(at, { kind: 'ohms', red, black, setting }) };
    });
    const closed = cells.filter(({ cell }) => cell.beeps === 'yes');
    const [first] = closed;
    if (!first) return [];
    const names = closed.map(({ name }) => name);
    return [{ group, title, cell: first.cell, stands: [{ [id]: names }] }];
  }
}

/** The setting in which the pair's parts have the largest share in the figure; the one nearest to rest among equals. */
function clearest(bench: CardBench, { parts, red, black }: Pair): Setting {
  const { predictor, settings } = bench;
  const { unknowns } = predictor;
  const own = unknowns.list.flatMap((one, at) =>
    one.part !== undefined && parts.includes(one.part) ? [at] : [],
  );
  let [best, most] = [settings.list[0] as Setting, -1];
  for (const setting of settings.list) {
    const [level] = predictor.predict(healthy, { kind: 'ohms', red, black, setting });
    if (level?.type !== 'level') continue;
    const share = own.reduce((sum, at) => sum + (level.slopes[at] as number), 0);
    if (share > most + 0.01) [best, most] = [setting, share];
  }
  return best;
}

/** The stand of a line, without the switches that change nothing in it. */
function mattering(bench: CardBench, ask: Ask): readonly Stand[] {
  const text = cellOf(bench, ask).expected.text;
  const matters = switchesOf(bench.circuit).filter(({ id, positions }) =>
    positions.some(({ name }) => {
      const setting = {
        ...ask.setting,
        positions: { ...ask.setting.positions, [id]: name },
      };
      return cellOf(bench, { ...ask, setting }).expected.text !== text;
    }),
  );
  if (matters.length === 0) return [];
  return [Object.fromEntries(matters.map(({ id }) => [id, [ask.setting.positions[id] ?? '']]))];
}
