import type { Edit } from '../circuit/edit.ts';
import { nodeAt } from '../circuit/netlist.ts';
import { restingSetting } from '../circuit/setting.ts';
import { type Hypothesis, pair } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import { View } from '../readings/view.ts';
import type { Chosen } from './choose.ts';
import { type Showable, timesOf } from './faults-shown.ts';
import { apartBy, byFigures, type Column, type Row, rowsOf } from './table.ts';
import { Together, wordsShow } from './together.ts';

/** Pairs of faults of which a list shows neither. */
export interface Pairs {
  /** Those that other readings would show. */
  readonly figures: readonly Row[];
  readonly words: readonly Row[];
  /** Those that no allowed reading shows, though it shows one of the two alone: they undo each other. */
  readonly hidden: readonly Hypothesis[];
}

/** One fault of a pair, and what the list makes of it. */
interface One {
  readonly hypothesis: Hypothesis;
  readonly apart: Row['apart'];
  /** Columns by their place in the list: of which the figure alone shows it, and which it changes at all. */
  readonly speaks: readonly boolean[];
  touches(at: number): boolean;
  readonly by: 'figures' | 'words' | 'nothing';
  /** The guitar with this fault, and without any, at rest. */
  readonly view: View;
  readonly intended: View;
}

/**
 * Pairs of steady faults that hide each other from a list. Most pairs cannot: where the list has a figure that shows one fault and that
 * the other leaves alone, it shows both. Only the rest are worked out,
 * and joins of what the other fault parts or leaves hanging: a wire's end that comes off where solder joins it all the same.
 * A fault that comes and goes is shown by movement, whatever else there is.
 * @param chosen readings of the list
 * @param allowed all readings there could be
 */
export function hiddenPairs(
  predictor: Predictor,
  healthy: Hypothesis,
  { ladders }: Pick<Showable, 'ladders'>,
  chosen: Chosen,
  allowed: { readonly figures: readonly Column[]; readonly words: readonly Column[] },
  count: number,
): Pairs {
  const deviations = predictor.deviations(healthy);
  const columns = [...chosen.keys()];
  const read = columns.filter(byFigures);
  const rest = restingSetting(predictor.layout.circuit);
  const intended = new View(predictor.layout, rest, []);
  const list = new Together(columns, deviations);
  const parted = (hypothesis: Hypothesis, by: readonly Column[]) => ({
    hypothesis,
    apart: apartBy(predictor, healthy, hypothesis, by),
    moving: false,
  });
  const all = new Together(allowed.figures, deviations);
  const most = new Map(allowed.words.map((column) => [column, timesOf(column)]));
  const [figures, words, hidden]: [Parted[], Parted[], Hypothesis[]] = [[], [], []];
  for (const both of suspicious()) {
    if (aloneShown(both)) continue;
    const hypothesis = pair(both[0].hypothesis, both[1].hypothesis, count);
    // Most are shown by figures: then how they sound need not be worked out.
    if (list.shows(parted(hypothesis, read)) || wordsShow(parted(hypothesis, columns), chosen))
      continue;
    const figured = parted(hypothesis, allowed.figures);
    if (all.shows(figured)) {
      figures.push(figured);
      continue;
    }
    const byWords = parted(hypothesis, allowed.words);
    if (wordsShow(byWords, most)) words.push(byWords);
    else hidden.push(hypothesis);
  }
  return { figures: rowsOf(figures), words: rowsOf(words), hidden };

  function suspicious(): readonly (readonly [One, One])[] {
    const ones = ladders
      .filter(({ ladder: [first] }) => first && !first.edits.some(comesAndGoes))
      // The least size that is claimed; of what nothing shows the largest.
      .map(({ ladder, hidden: unseen }) => ladder[Math.min(unseen, ladder.length - 1)])
      .map((hypothesis) => oneOf(hypothesis as Hypothesis));
    const found: (readonly [One, One])[] = [];
    ones.forEach((x, at) => {
      for (const y of ones.slice(0, at))
        if (apartInPlace(x, y) && !(clear(x, y) || clear(y, x))) found.push([x, y]);
    });
    return found;
  }

  /** How it sounds is worked out only where that is needed. */
  function oneOf(hypothesis: Hypothesis): One {
    const one = parted(hypothesis, read);
    const touched: boolean[] = [];
    const speaks = columns.map((column) => one.apart.get(column)?.alone ?? false);
    return {
      hypothesis,
      apart: one.apart,
      speaks,
      touches: (at) => {
        touched[at] ??= parted(hypothesis, columns.slice(at, at + 1)).apart.size > 0;
        return touched[at];
      },
      by:
        speaks.includes(true) || list.shows(one)
          ? 'figures'
          : wordsShow(parted(hypothesis, columns), chosen)
            ? 'words'
            : 'nothing',
      view: new View(predictor.layout, rest, hypothesis.edits),
      intended,
    };
  }

  /** The readings that either fault changes most, first: mostly one of them shows the pair. */
  function aloneShown([x, y]: readonly [One, One]): boolean {
    const hypothesis = pair(x.hypothesis, y.hypothesis, count);
    const most = (column: Column) =>
      Math.max(...[x, y].map(({ apart }) => strength(apart.get(column))));
    return columns
      .map((column) => ({ column, force: most(column) }))
      .filter(({ force }) => force > 0)
      .sort((a, b) => b.force - a.force)
      .slice(0, TRIED)
      .some(
        ({ column }) =>
          apartBy(predictor, healthy, hypothesis, [column]).get(column)?.alone ?? false,
      );
  }
}

interface Parted {
  readonly hypothesis: Hypothesis;
  readonly apart: Row['apart'];
}

/** Columns tried one by one before a pair is worked out on all of the list. */
const TRIED = 6;

const strength = (one: { readonly decisive: boolean; readonly shift: number } | undefined) =>
  one ? (one.decisive ? Number.POSITIVE_INFINITY : Math.abs(one.shift)) : 0;

const comesAndGoes = ({ op }: Edit): boolean => op === 'worn' || op === 'intermittent';

/** Two sizes of one fault, or two faults that one repair mends, are no pair. At least one must be shown alone. */
const apartInPlace = (x: One, y: One): boolean =>
  x.hypothesis.faults[0]?.remedy.key !== y.hypothesis.faults[0]?.remedy.key &&
  (x.by !== 'nothing' || y.by !== 'nothing');

/** Ohms up to which a join lies beside a wire or a joint. */
const BESIDE = 10;
/** Ohms more, above which something came in between. */
const PARTED = 0.5;

/**
 * Whether what `x` joins is another thing with `y`: its ends are parted (they hang together through what `y` opens, so that it bridges
 * that), or one of them hangs on nothing more.
 */
function matters(x: One, y: One): boolean {
  const { view } = y;
  return x.hypothesis.edits.some((edit) => {
    if (edit.op !== 'bridge') return false;
    const [a, b] = [nodeAt(view.layout, edit.a), nodeAt(view.layout, edit.b)];
    const [then, now] = [x.intended.dc.resistance(a, b), view.dc.resistance(a, b)];
    return then < BESIDE ? now - then > PARTED : Number.isFinite(then) && !Number.isFinite(now);
  });
}

/** Whether the list shows `x` whatever `y` does. */
function clear(x: One, y: One): boolean {
  if (matters(x, y) || matters(y, x)) return false;
  if (x.by === 'figures' && x.speaks.includes(true))
    return x.speaks.some((speaks, at) => speaks && !y.touches(at));
  return x.by !== 'nothing' && !x.speaks.some((_, at) => x.touches(at) && y.touches(at));
}
