import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { likelyAnswers, withAnswer } from '../diagnosis/foresee.ts';
import type { Rests } from '../diagnosis/rests.ts';

/** Answers that are worked out before they come. */
export const ANSWERS = 8;

/** While the person holds the probes, the engine works out what would follow from the likeliest answers. */
export function* lookAhead(
  evidence: Evidence,
  { next: [asked] }: Assessment,
  answer: (evidence: Evidence) => Rests<unknown>,
): Rests<void> {
  if (!asked) return;
  const likely = likelyAnswers(evidence, asked.ask, ANSWERS);
  for (const seen of likely) {
    yield;
    yield* answer(withAnswer(evidence, asked.ask, seen));
  }
}
