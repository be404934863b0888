import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import { type Choice, type Chosen, choose } from './choose.ts';
import { Claims, type Showable } from './faults-shown.ts';
import { missedSizes } from './missed.ts';
import { hiddenPairs } from './pairs.ts';
import type { Column, Row } from './table.ts';
import { wordsShow } from './together.ts';

/** Readings, and what they are good for. */
export interface Settled {
  readonly chosen: Chosen;
  /** What the readings show. */
  readonly shown: Showable;
  /** Pairs of faults, one of them shown alone, that they do not show. */
  readonly hidden: readonly Hypothesis[];
}

/** Times that a list is made anew for what it does not show yet: pairs of faults which hide each other, single sizes. */
const ROUNDS = 3;

/**
 * What a list claims and the list itself hang on each other: what takes too many figures is not claimed, pairs that the list loses are
 * looked for in other readings. In the end nothing is claimed that the list does not show.
 * @param singles the healthy guitar first
 */
export function settle(
  predictor: Predictor,
  healthy: Hypothesis,
  singles: readonly Hypothesis[],
  kinds: { readonly figures: readonly Column[]; readonly words: readonly Column[] },
  choice: Choice,
): Settled {
  const deviations = predictor.deviations(healthy);
  const beyond = new Set<Hypothesis>();
  const more: { readonly figures: Row[]; readonly words: Row[] } = { figures: [], words: [] };
  const showable = new Claims(predictor, healthy, singles.slice(1), kinds);
  let shown = claims();
  let { chosen, left } = chosenNow();
  for (let round = 1; round < ROUNDS; round += 1) {
    const figures = [...left.figures, ...left.sizes];
    if (figures.length + left.words.length + left.unheard === 0) break;
    more.figures.push(...figures);
    more.words.push(...left.words);
    shown = claims();
    ({ chosen, left } = chosenNow());
  }
  const lost = new Set(left.sizes.flatMap(({ members }) => members));
  return {
    chosen,
    shown: {
      figures: without(shown.figures, lost),
      words: without(shown.words, lost),
      ladders: shown.ladders.map(({ ladder, hidden }) => ({
        ladder,
        hidden: Math.max(hidden, ladder.findLastIndex((size) => lost.has(size)) + 1),
      })),
    },
    hidden: [...left.hidden, ...[...left.figures, ...left.words].flatMap(({ members }) => members)],
  };

  function claims(): Showable {
    const all = showable.without(beyond);
    return {
      ...all,
      figures: without([...all.figures, ...more.figures], beyond),
      words: [...all.words, ...more.words],
    };
  }

  function chosenNow() {
    const made = choose(shown, choice, deviations);
    if (made.beyond.length > 0) {
      for (const { members } of made.beyond) for (const size of members) beyond.add(size);
      shown = claims();
    }
    const pairs = hiddenPairs(predictor, healthy, shown, made.chosen, kinds, singles.length);
    const [reachable, given] = [
      pairs.figures.filter((row) => !isBeyond(row)),
      pairs.figures.filter(isBeyond),
    ];
    return {
      chosen: made.chosen,
      left: {
        figures: reachable,
        words: pairs.words,
        sizes: missedSizes(predictor, healthy, shown, made.chosen, kinds.figures),
        unheard: shown.words.filter((row) => !wordsShow(row, made.chosen)).length,
        hidden: [...pairs.hidden, ...given.flatMap(({ members }) => members)],
      },
    };
  }

  /** Pairs are made anew each time they are looked for: they are known by their faults. */
  function isBeyond({ members }: Row): boolean {
    return members.some((one) => [...beyond].some((other) => alike(one, other)));
  }
}

const nameOf = ({ edits }: Hypothesis): string => JSON.stringify(edits);
const alike = (one: Hypothesis, other: Hypothesis): boolean =>
  one === other || (one.faults.length === other.faults.length && nameOf(one) === nameOf(other));

/** Rows without these faults; a row of which none is left is gone. */
const without = (rows: readonly Row[], faults: ReadonlySet<Hypothesis>): readonly Row[] =>
  rows.flatMap((row) => {
    const members = row.members.filter((one) => !faults.has(one));
    return members.length === 0 ? [] : [{ ...row, members }];
  });
