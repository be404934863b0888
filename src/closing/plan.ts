import { checkCircuit } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { type Layout, layoutOf } from '../circuit/netlist.ts';
import { type Seconds, seconds } from '../circuit/units.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { effortOf } from '../diagnosis/effort.ts';
import { type Hypothesis, singleHypotheses } from '../diagnosis/hypothesis.ts';
import { Predictor } from '../diagnosis/predictor.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import { briefOf } from './brief.ts';
import type { Choice } from './choose.ts';
import type { Showable } from './faults-shown.ts';
import { lowerBound } from './lower-bound.ts';
import { inOrder, secondsOf } from './order.ts';
import { settle } from './settle.ts';
import { always, closingAsks, type Stage } from './stage.ts';
import { byFigures, type Column, columnsOf } from './table.ts';

/** One reading of the list, and how often it is taken. */
export interface PlanItem {
  readonly ask: Ask;
  readonly key: string;
  readonly times: number;
}

export interface Plan {
  /** Those that show most first; both parts in an order that moves little. */
  readonly items: readonly PlanItem[];
  /** Readings in all, each counted as often as it is taken. */
  readonly readings: number;
  /** No plan that shows the same and ends with playing each position has fewer. */
  readonly atLeast: number;
  readonly effort: Seconds;
  /** How many of the items, at the head of the list, show most of what goes wrong, and what share of it. */
  readonly first: { readonly items: number; readonly share: number; readonly effort: Seconds };
  /** What it shows, and what no allowed reading can. */
  readonly showable: Showable;
  /** Pairs of faults, one of them shown alone, that undo each other in all allowed readings, or but for many of them. */
  readonly hiddenPairs: readonly Hypothesis[];
}

/** Everything about one guitar and meter that the check needs; made once. */
export interface ClosingBench {
  readonly layout: Layout;
  readonly predictor: Predictor;
  readonly healthy: Hypothesis;
  /** The healthy guitar first. */
  readonly singles: readonly Hypothesis[];
  readonly plans: Map<string, Plan>;
  readonly columns: Map<Stage, readonly Column[]>;
}

let bench: { readonly key: string; readonly made: ClosingBench } | undefined;

/** Throws CircuitError where the circuit does not hold together. */
export function closingBench(circuit: Circuit, meter: Meter): ClosingBench {
  const key = JSON.stringify([circuit, meter]);
  if (bench?.key === key) return bench.made;
  checkCircuit(circuit);
  const layout = layoutOf(circuit);
  const singles = singleHypotheses(layout);
  const made = {
    layout,
    singles,
    healthy: singles[0] as Hypothesis,
    predictor: new Predictor(layout, meter),
    plans: new Map(),
    columns: new Map(),
  };
  bench = { key, made };
  return made;
}

/** Reading and writing down, on top of the act itself. */
const NOTE = 5;

const repeated = (items: readonly Pick<PlanItem, 'ask' | 'times'>[]) =>
  items.flatMap(({ ask, times }) => Array.from({ length: times }, () => ask));

/** Seconds for these, in this order, moving from one to the next and noting down included. */
export const effortOfItems = (
  layout: Layout,
  items: readonly Pick<PlanItem, 'ask' | 'times'>[],
): Seconds => seconds(secondsOf(layout, repeated(items)) + NOTE * repeated(items).length);

/** The list for one stage, without what could not be followed. */
export function planOf(from: ClosingBench, stage: Stage, refused: readonly Ask[] = []): Plan {
  const without = new Set(refused.map(askKey));
  const name = `${stage} ${[...without].sort().join(' ')}`;
  const known = from.plans.get(name);
  if (known) return known;
  // What is left of the list stays as it is: only what the refused readings showed is looked for elsewhere.
  const before = without.size > 0 ? planOf(from, stage) : undefined;
  const { layout, predictor, healthy, singles } = from;
  let columns = from.columns.get(stage);
  if (!columns) {
    const asks = closingAsks(layout, stage);
    const distinct = new Map([...asks.figures, ...asks.words].map((ask) => [askKey(ask), ask]));
    columns = columnsOf(predictor, healthy, [...distinct.values()]);
    from.columns.set(stage, columns);
  }
  const allowed = columns.filter(({ key }) => !without.has(key));
  const kinds = {
    figures: allowed.filter(byFigures),
    words: allowed.filter(({ ask }) => ask.kind !== 'ohms'),
  };
  const last = allowed.filter(({ ask }) => always(ask));
  const stays = new Set(before?.items.map(({ key }) => key));
  const choice: Choice = {
    columns: allowed,
    seconds: ({ ask }: Column) => seconds(effortOf(layout, ask, null) + NOTE),
    again: ({ ask }: Column) => seconds(effortOf(layout, ask, ask) + NOTE),
    kept: before ? allowed.filter(({ key }) => stays.has(key)) : last,
  };
  const { shown, chosen, hidden } = settle(predictor, healthy, singles, kinds, choice);
  const brief = briefOf(
    predictor,
    healthy,
    shown,
    chosen,
    (column) => choice.seconds(column) + ((chosen.get(column) ?? 1) - 1) * choice.again(column),
  );
  const itemsOf = (some: readonly Column[]) =>
    some.map(
      (column): PlanItem => ({
        ask: column.ask,
        key: column.key,
        times: chosen.get(column) ?? 1,
      }),
    );
  const first = inOrder(layout, itemsOf(brief.columns));
  const items = [
    ...first,
    ...inOrder(
      layout,
      itemsOf([...chosen.keys()].filter((column) => !brief.columns.includes(column))),
      first.at(-1),
    ),
  ];
  const plan: Plan = {
    items,
    readings: repeated(items).length,
    atLeast: lowerBound(shown, allowed, last),
    effort: effortOfItems(layout, items),
    first: { items: first.length, share: brief.share, effort: effortOfItems(layout, first) },
    showable: shown,
    hiddenPairs: hidden,
  };
  from.plans.set(name, plan);
  return plan;
}
