import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { likelyAnswers, withAnswer } from '../diagnosis/foresee.ts';
import type { Rests } from '../diagnosis/rests.ts';

/** Answers that are worked out before they come. */
export const ANSWERS = 8;

/** What looks ahead: see `Foresight`. */
interface Looking {
  believe(evidence: Evidence): Rests<void>;
  answer(evidence: Evidence): Rests<unknown>;
}

/**
 * While the person holds the probes, the engine works out what would follow from the likeliest answers: first what is believed after each,
 * which is shown as soon as one is entered, then all the rest, for which there is time while that is read.
 */
export function* lookAhead(
  evidence: Evidence,
  { next: [asked] }: Assessment,
  looking: Looking,
): Rests<void> {
  if (!asked) return;
  const answered = likelyAnswers(evidence, asked.ask, ANSWERS).map((seen) =>
    withAnswer(evidence, asked.ask, seen),
  );
  for (const one of answered) {
    yield;
    yield* looking.believe(one);
  }
  for (const one of answered) {
    yield;
    yield* looking.answer(one);
  }
}
