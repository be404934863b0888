import type { Closing } from '../../closing/closing.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import type { ClosingSay } from '../closing-actor.ts';
import { ItemMark } from '../pieces/item-mark.tsx';
import { Screen } from '../pieces/screen.tsx';
import { hrefOf } from '../route.ts';
import { capital, closingPlace, held, passWords } from '../words.ts';

interface FailedProps {
  readonly job: Job;
  readonly closing: Closing;
  readonly strip: preact.ComponentChildren;
  readonly say: ClosingSay;
}

/** A reading that is off twice: the hunt takes over, and knows all that was read. */
export function ClosingFailed({ job, closing, strip, say }: FailedProps) {
  const failed = closing.items.filter(({ mark }) => mark === 'failed');
  return (
    <Screen
      name="closing-failed"
      title={proofWords().somethingIsNotAsItShouldBe}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'LIST' })}>
            {proofWords().theList}
          </button>
          <a class="main" href={hrefOf({ at: 'job', id: job.id, view: 'hunt' })}>
            {proofWords().findIt}
          </a>
        </>
      }
    >
      <p>{proofWords().offMoreThanOnce(failed.length)}</p>
      {failed.map((item) => (
        <section key={JSON.stringify(item.ask)}>
          <h2>
            <ItemMark mark="failed" /> {capital(closingPlace(job.circuit, item.ask))}
          </h2>
          <dl class="compare">
            <div>
              <dt>{proofWords().youSaw}</dt>
              <dd>{held(proofWords().inTurn(item.answers.slice(-2)))}</dd>
            </div>
            <div>
              <dt>{proofWords().passes2}</dt>
              <dd>{held(passWords(item))}</dd>
            </div>
          </dl>
          <button type="button" class="quiet" onClick={() => say({ type: 'CHOOSE', item })}>
            {proofWords().readItOnceMore}
          </button>
        </section>
      ))}
    </Screen>
  );
}
