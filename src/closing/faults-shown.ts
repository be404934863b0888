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

/** What all allowed readings together could show, of which some sizes may be given up later on. */
export class Claims {
  private readonly predictor: Predictor;
  private readonly healthy: Hypothesis;
  private readonly columns: Kinds;
  private readonly all: Together;
  private readonly most: ReadonlyMap<Column, number>;
  private readonly ladders: readonly Ladder[];
  /** Of each ladder, as long as none of its sizes was given up. */
  private readonly known = new Map<Ladder, Of>();

  constructor(
    predictor: Predictor,
    healthy: Hypothesis,
    faulty: readonly Hypothesis[],
    columns: Kinds,
  ) {
    this.predictor = predictor;
    this.healthy = healthy;
    this.columns = columns;
    this.all = new Together(columns.figures, predictor.deviations(healthy));
    this.most = new Map(columns.words.map((column) => [column, timesOf(column)]));
    this.ladders = laddersOf(faulty);
  }

  /** @param beyond faults, in one size each, that are left out of what figures show */
  without(beyond: ReadonlySet<Hypothesis>): Showable {
    const found = this.ladders.map((ladder) => {
      if (ladder.some((size) => beyond.has(size))) return this.of(ladder, beyond);
      const known = this.known.get(ladder) ?? this.of(ladder, beyond);
      this.known.set(ladder, known);
      return known;
    });
    return {
      figures: rowsOf(found.flatMap(({ figures }) => figures)),
      words: rowsOf(found.flatMap(({ words }) => words)),
      ladders: found.map(({ ladder, hidden }) => ({ ladder, hidden })),
    };
  }

  private of(ladder: Ladder, beyond: ReadonlySet<Hypothesis>): Of {
    const figures = this.climb(ladder, beyond);
    if (figures.length > 0)
      return {
        ladder,
        figures,
        words: [],
        hidden: ladder.indexOf((figures[0] as Parted).hypothesis),
      };
    const words = this.descend(ladder);
    return { ladder, figures, words, hidden: ladder.length - words.length };
  }

  /** From the least effect up, to the first size that one figure alone shows. */
  private climb(ladder: Ladder, beyond: ReadonlySet<Hypothesis>): readonly Parted[] {
    const shown: Parted[] = [];
    for (const hypothesis of ladder) {
      const apart = apartBy(this.predictor, this.healthy, hypothesis, this.columns.figures);
      const alone = [...apart.values()].some((one) => one.alone);
      if (!beyond.has(hypothesis) && (alone || this.all.shows({ apart })))
        shown.push({ hypothesis, apart });
      // A size that is not shown though a smaller one is: what is claimed begins above it.
      else shown.length = 0;
      if (alone) break;
    }
    return shown;
  }

  /** From the largest effect down, as long as words show it. */
  private descend(ladder: Ladder): readonly Parted[] {
    const shown: Parted[] = [];
    for (const hypothesis of [...ladder].reverse()) {
      const apart = apartBy(this.predictor, this.healthy, hypothesis, this.columns.words);
      if (!wordsShow({ apart, moving: isMoving(hypothesis) }, this.most)) break;
      shown.push({ hypothesis, apart });
    }
    return shown;
  }
}

/** Allowed readings by what is learned from them. */
interface Kinds {
  readonly figures: readonly Column[];
  readonly words: readonly Column[];
}

interface Parted {
  readonly hypothesis: Hypothesis;
  readonly apart: Row['apart'];
}

/** One fault in its sizes: what figures and words show of them, and how many of the least are not shown. */
interface Of {
  readonly ladder: Ladder;
  readonly figures: readonly Parted[];
  readonly words: readonly Parted[];
  readonly hidden: number;
}
