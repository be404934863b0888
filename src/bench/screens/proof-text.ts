import type { Closing } from '../../closing/closing.ts';
import type { DoneCheck } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { called } from '../../words/called.ts';
import { proofWords } from '../../words/en/proof.ts';
import { capital, closingPlace, passWords } from '../words.ts';
import {
  changeWords,
  countWords,
  learnedWords,
  wasRead,
  whenWords,
  withWords,
} from './proof-words.ts';

/** The page as plain text, every place named. */
export function proofText(job: Job, check: DoneCheck, closing: Closing): string {
  const part = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ['', title, ...lines.map((line) => `- ${line}`)];
  return `${[
    proofWords().closingCheckJobWhen(job.title, whenWords(check)),
    capital(called(job.circuit.title)),
    '',
    countWords(closing),
    withWords(job, check),
    ...part(proofWords().sinceTheCheckBefore, changeWords(job, closing)),
    ...part(
      proofWords().whatWasReadAndWhatPasses,
      wasRead(closing).map(
        (item) =>
          `${capital(closingPlace(job.circuit, item.ask))}: ${item.answers.join(', ') || proofWords().notRead} (${passWords(item)})`,
      ),
    ),
    ...part(proofWords().ruledOut, closing.ruledOut),
    ...part(
      proofWords().whatTheseReadingsCannotSee,
      closing.cannotSee.map(({ title, places }) => `${title}: ${places.join('; ')}`),
    ),
    ...part(proofWords().valuesLearned, learnedWords(closing)),
    ...part(
      proofWords().repairs,
      job.repairs.map(({ title }) => title),
    ),
  ].join('\n')}\n`;
}
