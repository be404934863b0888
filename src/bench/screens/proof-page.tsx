import type { Closing } from '../../closing/closing.ts';
import type { DoneCheck } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { called } from '../../words/called.ts';
import { proofWords } from '../../words/en/proof.ts';
import { ItemMark } from '../pieces/item-mark.tsx';
import { bandOf, capital, closingPlace, held } from '../words.ts';
import {
  changeWords,
  countWords,
  learnedWords,
  placesWords,
  wasRead,
  whenWords,
  withWords,
} from './proof-words.ts';

interface PageProps {
  readonly job: Job;
  readonly check: DoneCheck;
  readonly closing: Closing;
}

/** More lines than this are set smaller on paper, to stay on one page. */
const DENSE = 40;

/** Places of one kind that the page names one by one. */
const NAMED = 2;

/** One page: what was read and with what, what that rules out, and what it cannot see. */
export function ProofPage({ job, check, closing }: PageProps) {
  const changes = changeWords(job, closing);
  const learned = learnedWords(closing);
  return (
    <article class={wasRead(closing).length > DENSE ? 'proof proof-dense' : 'proof'}>
      <p class="proof-name">
        <strong>{job.title}</strong>, {whenWords(check)}
        <span class="soft">{capital(called(job.circuit.title))}</span>
      </p>
      <p>
        <ItemMark mark={closing.state === 'passed' ? 'fits' : 'again'} />{' '}
        {held(countWords(closing))}
      </p>
      <p class="soft">{held(withWords(job, check))}</p>
      {changes.length > 0 && (
        <section>
          <h2>{proofWords().sinceTheCheckBefore}</h2>
          <ul>
            {changes.slice(0, 8).map((words) => (
              <li key={words}>{held(words)}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{proofWords().whatWasRead}</h2>
        <ul class="proof-readings">
          {wasRead(closing).map((item) => (
            <li key={JSON.stringify(item.ask)}>
              <span>{capital(closingPlace(job.circuit, item.ask))}</span>
              <span>
                <strong>{held(item.answers.at(-1) ?? proofWords().notRead)}</strong>{' '}
                {item.passes && <span class="soft">({held(bandOf(item))})</span>}
              </span>
            </li>
          ))}
        </ul>
      </section>
      <section>
        <h2>{proofWords().ruledOut}</h2>
        <p>{closing.ruledOut.join(' · ')}</p>
      </section>
      <section>
        <h2>{proofWords().whatTheseReadingsCannotSee}</h2>
        {closing.cannotSee.length === 0 ? (
          <p>{proofWords().noFaultThatIsKnown}</p>
        ) : (
          <ul>
            {closing.cannotSee.map(({ title, places }) => (
              <li key={title}>
                <strong>{held(title)}:</strong> {placesWords(places, NAMED)}
              </li>
            ))}
          </ul>
        )}
      </section>
      {learned.length > 0 && (
        <section>
          <h2>{proofWords().valuesLearned}</h2>
          <p>{held(learned.join(' · '))}</p>
        </section>
      )}
      {job.repairs.length > 0 && (
        <section>
          <h2>{proofWords().repairs}</h2>
          <ul>
            {job.repairs.map(({ title, at }) => (
              <li key={at}>{title}</li>
            ))}
          </ul>
        </section>
      )}
    </article>
  );
}
