import { askKey } from '../diagnosis/ask-key.ts';
import { logSum } from '../diagnosis/gauss.ts';
import { observe } from '../readings/index.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import { SELDOM } from './apart.ts';
import type { ClosingBench } from './plan.ts';
import { counted, type Row } from './table.ts';

/** Chance that words alone ever raise an alarm on a healthy guitar. */
const FALSE_ALARM = 0.001;

type Choice = Extract<Prediction, { type: 'choice' }>;
interface Said {
  readonly reading: Reading;
  readonly key: string;
  readonly at: number;
  readonly word: string;
  readonly healthy: Choice;
}

export interface WordScore {
  readonly off: ReadonlySet<Reading>;
  /** Whether all words together speak against a healthy guitar beyond chance. */
  readonly alarm: boolean;
}

/**
 * Words against what a healthy guitar brings. The ratio of likelihoods, averaged over the faults that words are to find, is 1 on
 * average for a healthy guitar however many answers come and whenever one looks, so it exceeds 1 / a with chance at most a (Ville's
 * inequality; Wald's sequential test). Alone, one odd word proves nothing: it is asked again.
 * @param rows faults that words are to find
 */
export function scoreWords(
  { predictor, healthy }: Pick<ClosingBench, 'predictor' | 'healthy'>,
  rows: readonly Row[],
  readings: readonly Reading[],
): WordScore {
  const said: Said[] = [];
  for (const reading of readings) {
    const key = askKey(reading.ask);
    const { predictions } = predictor.foretell(healthy, reading.ask, key);
    observe(reading.seen).forEach((seen, at) => {
      const prediction = predictions[at];
      if (seen?.type === 'choice' && prediction?.type === 'choice')
        said.push({ reading, key, at, word: seen.word, healthy: prediction });
    });
  }
  const own = signed(said.map(({ healthy: prediction, word }) => ({ prediction, word })));
  const off = new Set(
    said
      .filter(
        ({ healthy: prediction, word }) =>
          (((own.mirrored ? prediction.mirrored : undefined) ?? prediction.chances)[
            word
          ] as number) < SELDOM,
      )
      .map(({ reading }) => reading),
  );
  // Nothing odd: nothing to weigh.
  if (off.size === 0 || rows.length === 0) return { off, alarm: false };
  const ratios = rows.map(({ members: [fault] }) => {
    if (!fault) return Number.NEGATIVE_INFINITY;
    const kinds = counted(fault);
    return (
      signed(
        said.map(({ reading: { ask }, key, at, word, healthy: prediction }) => ({
          prediction: kinds.includes(ask.kind)
            ? (predictor.foretell(fault, ask, key).predictions[at] as Choice)
            : prediction,
          word,
        })),
      ).log - own.log
    );
  });
  return { off, alarm: logSum(ratios) - Math.log(rows.length) > -Math.log(FALSE_ALARM) };
}

/** ln of the chance of all words, over both signs the taps may start from, and which sign they fit better; the first tap decides a tie. */
function signed(list: readonly { readonly prediction: Choice; readonly word: string }[]): {
  readonly log: number;
  readonly mirrored: boolean;
} {
  let [free, plain, turned] = [0, 0, 0];
  let first = 0;
  for (const { prediction, word } of list) {
    const chance = Math.log(prediction.chances[word] ?? 1e-6);
    if (!prediction.mirrored) {
      free += chance;
      continue;
    }
    const other = Math.log(prediction.mirrored[word] ?? 1e-6);
    plain += chance;
    turned += other;
    if (first === 0) first = chance - other;
  }
  const tie = Math.abs(plain - turned) < 1e-9;
  return {
    log: free + logSum([plain, turned]) - Math.LN2,
    mirrored: tie ? first < 0 : turned > plain,
  };
}
