import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { likelyAnswers, withAnswer } from '../diagnosis/foresee.ts';

/** Answers that are worked out before they come. */
export const ANSWERS = 5;

/**
 * While the person holds the probes, the engine works out what would follow from the likeliest answers, one at a time, so that a
 * question that comes meanwhile waits for one at most. Returns a function that ends it.
 */
export function lookAhead(
  evidence: Evidence,
  { next: [asked] }: Assessment,
  keep: (evidence: Evidence) => void,
  later: (act: () => void) => void = (act) => setTimeout(act, 0),
): () => void {
  let ended = false;
  const soon = (act: () => void) => later(() => ended || act());
  if (asked)
    soon(() => {
      const waiting = [...likelyAnswers(evidence, asked.ask, ANSWERS)];
      const one = () => {
        const seen = waiting.shift();
        if (!seen) return;
        keep(withAnswer(evidence, asked.ask, seen));
        soon(one);
      };
      soon(one);
    });
  return () => {
    ended = true;
  };
}
