import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import { type Ladder, laddersOf } from './ladder.ts';
import { apartBy, type Column, isMoving, type Row, rowsOf } from './table.ts';
import { Together, wordsShow } from './together.ts';

/** How often the same reading may count. Hands do it anew each time; an ear that is asked again hears the same. */
export const timesOf = ({ ask: { kind } }: Column): number =>
  kind === 'tap' || kind === 'flex' || kind === 'turn' ? 3 : 1;

/** What all allowed readings together could show. */
export interface Showable {
  /** Faults that figures show. Of each fault the sizes from the least that is shown to the first that one figure alone shows. */
  readonly figures: readonly Row[];
  /** Faults that no figure shows but words do. Words count for these alone: an ear is confused one time in twelve. */
  readonly words: readonly Row[];
  /** Every fault with its sizes from the least effect up, and how many of the least are not shown. */
  readonly ladders: readonly { readonly ladder: Ladder; readonly hidden: number }[];
}

/** @param beyond faults, in one size each, that are left out of what figures show */
export function showable(
  predictor: Predictor,
  healthy: Hypothesis,
  faulty: readonly Hypothesis[],
  columns: { readonly figures: readonly Column[]; readonly words: readonly Column[] },
  beyond: ReadonlySet<Hypothesis> = new Set(),
): Showable {
  const deviations = predictor.deviations(healthy);
  const all = new Together(columns.figures, deviations);
  const most = new Map(columns.words.map((column) => [column, timesOf(column)]));
  const [figures, words]: [Parted[], Parted[]] = [[], []];
  const ladders = laddersOf(faulty).map((ladder) => {
    const byFigures = climb(ladder);
    if (byFigures.length > 0) {
      figures.push(...byFigures);
      return { ladder, hidden: ladder.indexOf((byFigures[0] as Parted).hypothesis) };
    }
    const byWords = descend(ladder);
    words.push(...byWords);
    return { ladder, hidden: ladder.length - byWords.length };
  });
  return { figures: rowsOf(figures), words: rowsOf(words), ladders };

  /** From the least effect up, to the first size that one figure alone shows. */
  function climb(ladder: Ladder): readonly Parted[] {
    const shown: Parted[] = [];
    for (const hypothesis of ladder) {
      const apart = apartBy(predictor, healthy, hypothesis, columns.figures);
      const alone = [...apart.values()].some((one) => one.alone);
      if (!beyond.has(hypothesis) && (alone || all.shows({ apart })))
        shown.push({ hypothesis, apart });
      // A size that is not shown though a smaller one is: what is claimed begins above it.
      else shown.length = 0;
      if (alone) break;
    }
    return shown;
  }

  /** From the largest effect down, as long as words show it. */
  function descend(ladder: Ladder): readonly Parted[] {
    const shown: Parted[] = [];
    for (const hypothesis of [...ladder].reverse()) {
      const apart = apartBy(predictor, healthy, hypothesis, columns.words);
      if (!wordsShow({ apart, moving: isMoving(hypothesis) }, most)) break;
      shown.push({ hypothesis, apart });
    }
    return shown;
  }
}

interface Parted {
  readonly hypothesis: Hypothesis;
  readonly apart: Row['apart'];
}
