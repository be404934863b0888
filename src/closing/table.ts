import { askKey } from '../diagnosis/ask-key.ts';
import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Foretold, Predictor } from '../diagnosis/predictor.ts';
import type { Ask } from '../readings/reading.ts';
import { type Apart, apart, figureIn, separation } from './apart.ts';
import type { Figure } from './figure.ts';

/** One reading as a column: what a healthy guitar shows, and how far each answer of a faulty one is from it. */
export interface Column {
  readonly ask: Ask;
  readonly key: string;
  readonly healthy: Foretold;
  /** The figure a healthy guitar shows; null for words and over-range. */
  readonly figure: Figure | null;
  /** Squared separation of a healthy guitar from one whose taps all swing the other way. */
  readonly turned: number;
  readonly known: Map<Foretold, Apart | null>;
  /** The same for each single fault that was looked at, by its index. */
  readonly singles: (Apart | null | undefined)[];
}

/** Whether it is read in ohms; where a healthy guitar is over-range there is no figure, and a faulty one may bring one. */
export const byFigures = ({ ask }: Column): boolean => ask.kind === 'ohms' || ask.kind === 'turn';

/** Faults, in one size each, that none of the columns tells from each other. */
export interface Row {
  readonly members: readonly Hypothesis[];
  /** Whether they come and go with a movement. */
  readonly moving: boolean;
  /** By column; absent where the reading shows what a healthy guitar shows. */
  readonly apart: ReadonlyMap<Column, Apart>;
}

export const columnsOf = (
  predictor: Predictor,
  healthy: Hypothesis,
  asks: readonly Ask[],
): readonly Column[] =>
  asks.map((ask) => {
    const key = askKey(ask);
    const foretold = predictor.foretell(healthy, ask, key);
    return {
      ask,
      key,
      healthy: foretold,
      figure: figureIn(foretold.predictions, predictor.deviations(healthy)),
      turned: foretold.predictions.reduce(
        (sum, one) =>
          sum + (one.type === 'choice' && one.mirrored ? separation(one.chances, one.mirrored) : 0),
        0,
      ),
      known: new Map(),
      singles: [],
    };
  });

const NOTHING = 1e-3;
const matters = (one: Apart): boolean =>
  one.decisive ||
  Math.abs(one.shift) > NOTHING ||
  one.words > NOTHING ||
  one.direct > NOTHING ||
  one.mirrored > NOTHING;

/** Whether a fault comes and goes with a movement, and is steady at rest. */
export const isMoving = ({ edits }: Hypothesis): boolean =>
  edits.every(({ op }) => op === 'worn' || op === 'intermittent');

/**
 * Kinds of reading that count for a fault. What comes and goes with a movement is found by that movement alone: a wire that makes and
 * breaks by flexing it, a worn track by turning. Of a steady bad joint the figures tell more than any movement.
 */
export function counted({ edits }: Hypothesis): readonly Ask['kind'][] {
  if (edits.some(({ op }) => op === 'worn')) return ['turn'];
  // One that is open just now shows in the figures, too.
  if (edits.some(({ op }) => op === 'intermittent')) return ['ohms', 'turn', 'flex'];
  return ['ohms', 'turn', 'tap', 'touch', 'listen'];
}

/** How each column sets one faulty guitar apart. */
export function apartBy(
  predictor: Predictor,
  healthy: Hypothesis,
  hypothesis: Hypothesis,
  columns: readonly Column[],
): Map<Column, Apart> {
  const found = new Map<Column, Apart>();
  const kinds = counted(hypothesis);
  // Pairs are looked at once, and there are very many of them.
  const single = hypothesis.faults.length < 2;
  for (const column of columns) {
    if (!kinds.includes(column.ask.kind)) continue;
    let one = single ? column.singles[hypothesis.index] : undefined;
    if (one === undefined) {
      one = measured(column);
      if (single) column.singles[hypothesis.index] = one;
    }
    if (one) found.set(column, one);
  }
  return found;

  function measured(column: Column): Apart | null {
    const now = predictor.foretell(hypothesis, column.ask, column.key);
    if (now === column.healthy) return null;
    const known = column.known.get(now);
    if (known !== undefined) return known;
    const one = apart(
      column.healthy.predictions,
      now.predictions,
      { healthy: predictor.deviations(healthy), faulty: predictor.deviations(hypothesis) },
      predictor.meter,
    );
    const made = matters(one) ? one : null;
    column.known.set(now, made);
    return made;
  }
}

/** Joins what the same readings set apart alike. */
export function rowsOf(
  list: readonly { readonly hypothesis: Hypothesis; readonly apart: ReadonlyMap<Column, Apart> }[],
): readonly Row[] {
  const numbers = new Map<Apart, number>();
  const number = (one: Apart) => {
    if (!numbers.has(one)) numbers.set(one, numbers.size);
    return numbers.get(one);
  };
  const rows = new Map<string, Row & { readonly members: Hypothesis[] }>();
  for (const { hypothesis, apart: by } of list) {
    const moving = isMoving(hypothesis);
    const name = `${moving} ${[...by.values()].map(number).join()}`;
    const row = rows.get(name);
    if (row) row.members.push(hypothesis);
    else rows.set(name, { members: [hypothesis], moving, apart: by });
  }
  return [...rows.values()];
}
