import type { Ask } from '../readings/reading.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { evenly, expectationOf } from './expect.ts';
import type { Group } from './groups.ts';
import { HEALTHY } from './hypothesis.ts';
import { type Predictor, varianceOf } from './predictor.ts';

/** One sentence: which suspects this reading parts, and by what. */
export function whyOf(predictor: Predictor, groups: readonly Group[], ask: Ask): string {
  const shown = groups
    .filter((group) => group.repair !== HEALTHY)
    .slice(0, 12)
    .flatMap((group) => {
      const lead = group.members[0]?.hypothesis;
      const fault = lead?.faults.find((one) => one.remedy.key === group.repair);
      if (!lead || !fault) return [];
      const text =
        ask.kind === 'tap' || ask.kind === 'pole'
          ? ''
          : expectationOf(
              predictor.predict(lead, ask),
              ask,
              evenly((level) => ({
                shift: 0,
                variance: varianceOf(level, predictor.deviations(lead)),
              })),
            ).text;
      return [{ text, sentence: fault.sentence, weight: group.probability }];
    });
  const [first] = shown;
  if (!first) return diagnosisWords().itChecksOnceMoreThatAllIs;
  if (ask.kind === 'tap') return diagnosisWords().ohmsCannotShowWhichWayRound;
  if (ask.kind === 'pole') return diagnosisWords().itTellsATurnedMagnetFromExchanged;
  const other = shown.find((one) => one.text !== first.text);
  if (!other) return diagnosisWords().itWouldShowWhetherSentence(first.sentence);
  return diagnosisWords().firstIfSentenceOtherIfSentence2(
    capital(first.text),
    first.sentence,
    other.text,
    other.sentence,
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
