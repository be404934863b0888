import type { Setting } from '../circuit/circuit.ts';
import { nodeAt, siteAt } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { ohms } from '../circuit/units.ts';
import { jackOf } from '../readings/points.ts';
import { View } from '../readings/view.ts';
import { ohmsText } from '../readings/words.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { type CardBench, type CardCell, cellOf } from './card-cell.ts';
import { type Stand, standsOf } from './card-stands.ts';

/** By what rows are put together: by figure, by coils heard, or by how many coils where there are three and more. */
export type RowsBy = 'figure' | 'coils' | 'number of coils';

/** What the jack shows in all the ways the switches may stand that come to the same. */
export interface JackRow {
  /** Coils that reach the output by direct current; empty where none does, or where rows are by number and these differ. */
  readonly coils: readonly PartId[];
  /** How many coils that are. */
  readonly heard: number;
  /** How the switches stand, each way on its own: `{}` where they may stand as they like. */
  readonly stands: readonly Stand[];
  /** How many settings of the switches that is. */
  readonly settings: number;
  /** How many figures were put into one band; 1 where the row is one figure. */
  readonly merged: number;
  readonly atTen: CardCell;
  readonly atZero: CardCell;
}

/** A coil is heard where this share of its EMF comes out; less is 26 dB down. */
const HEARD = 0.05;
/** More rows than this are put together. */
const MOST_ROWS = 30;

const knobsAt = (setting: Setting, figure: number): Setting => ({
  ...setting,
  knobs: Object.fromEntries(Object.keys(setting.knobs).map((id) => [id, figure])),
});

/** Coils of which at least `HEARD` of an EMF reaches the jack (by reciprocity, the current a meter at the jack sends through them). */
function coilsHeard({ predictor: { layout } }: CardBench, view: View): readonly PartId[] {
  const { tip, sleeve } = jackOf(layout);
  const [from, to] = [nodeAt(layout, tip), nodeAt(layout, sleeve)];
  return layout.circuit.parts.flatMap(({ kind, id }) => {
    if (kind !== 'coil') return [];
    const { index } = siteAt(layout, `${id}:winding`);
    return Math.abs(view.dc.transfer(from, to, index)) >= HEARD ? [id] : [];
  });
}

interface Found {
  readonly setting: Setting;
  readonly coils: readonly PartId[];
  readonly atTen: CardCell;
  readonly atZero: CardCell;
}

export function jackRows(bench: CardBench): { rows: readonly JackRow[]; rowsBy: RowsBy } {
  const { predictor, settings } = bench;
  const { tip: red, sleeve: black } = jackOf(predictor.layout);
  const rest = new View(predictor.layout, settings.list[0] as Setting, []);
  const found = settings.list.map((setting): Found => {
    const read = (at: Setting) => cellOf(bench, { kind: 'ohms', red, black, setting: at });
    const coils = coilsHeard(bench, rest.in(setting));
    return { setting, coils, atTen: read(setting), atZero: read(knobsAt(setting, 0)) };
  });
  const figure = ({ expected: { low, high, text } }: CardCell) =>
    low === undefined || high === undefined ? text : `${low.toPrecision(6)}~${high.toPrecision(6)}`;
  const heard = ({ coils }: Found) => coils.join('+');
  const ways: Record<RowsBy, (one: Found) => string> = {
    figure: (one) => `${heard(one)} ${figure(one.atTen)} ${figure(one.atZero)}`,
    coils: heard,
    'number of coils': (one) => (one.coils.length > 2 ? `${one.coils.length}` : heard(one)),
  };
  for (const rowsBy of ['figure', 'coils', 'number of coils'] as const) {
    const groups = grouped(found, ways[rowsBy]);
    if (groups.size > MOST_ROWS && rowsBy !== 'number of coils') continue;
    const rows = [...groups.values()].map((group): JackRow => {
      const [first] = group as [Found];
      const merged = new Set(group.map(ways.figure)).size;
      return {
        coils: group.every((one) => heard(one) === heard(first)) ? first.coils : [],
        heard: first.coils.length,
        stands: standsOf(
          bench.circuit,
          settings.list,
          group.map(({ setting }) => setting),
        ),
        settings: group.length,
        merged,
        atTen: together(group.map(({ atTen }) => atTen)),
        atZero: together(group.map(({ atZero }) => atZero)),
      };
    });
    return { rows, rowsBy };
  }
  throw new Error('unreachable: the last way of grouping always returns');
}

function grouped<T>(all: readonly T[], nameOf: (one: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const name = nameOf(one);
    const group = groups.get(name);
    if (group) group.push(one);
    else groups.set(name, [one]);
  }
  return groups;
}

/** Several figures as one band from the lowest to the highest; the ask is the first one's. */
function together(cells: readonly CardCell[]): CardCell {
  const [first] = cells as readonly [CardCell];
  const texts = new Set(cells.map(({ expected }) => expected.text));
  if (texts.size === 1) return first;
  const bands = cells.flatMap(({ expected: { low, high } }) =>
    low === undefined || high === undefined ? [] : [{ low, high }],
  );
  const beeps = cells.every((cell) => cell.beeps === first.beeps) ? first.beeps : 'some';
  const open = bands.length < cells.length ? [ohmsText('open')] : [];
  if (bands.length === 0) return { ...first, beeps };
  const low = ohms(Math.min(...bands.map((band) => band.low)));
  const high = ohms(Math.max(...bands.map((band) => band.high)));
  const band = diagnosisWords().betweenOhmsAndOhms2(ohmsText(low), ohmsText(high));
  const text = open[0] ? diagnosisWords().orOpen(band, open[0]) : band;
  return { ask: first.ask, expected: open.length > 0 ? { text } : { text, low, high }, beeps };
}
