import { lastAct } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import type { ClosingSay, ClosingSnapshot } from '../closing-actor.ts';
import { announce } from '../pieces/announce.tsx';
import { hrefOf } from '../route.ts';
import { takenBackWords } from '../words.ts';

interface StripProps {
  readonly job: Job;
  readonly snapshot: ClosingSnapshot;
  readonly say: ClosingSay;
}

/** Above every screen of a closing check: the way out, the job, how much of the list is through, the list, undo. */
export function ClosingStrip({ job, snapshot, say }: StripProps) {
  const { closing, work } = snapshot.context;
  const act = lastAct(work);
  return (
    <header class="strip">
      <a class="strip-home" href={hrefOf({ at: 'home' })}>
        <span class="unseen">{proofWords().home}</span>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
      </a>
      <a class="strip-job" href={hrefOf({ at: 'job', id: job.id, view: 'record' })}>
        <span class="strip-title">{job.title}</span>
        {closing && <Through closing={closing} />}
      </a>
      {snapshot.matches('asking') && (
        <button type="button" class="quiet" onClick={() => say({ type: 'LIST' })}>
          {proofWords().list}
        </button>
      )}
      <button
        type="button"
        class="quiet"
        disabled={act?.kind !== 'readings' && act?.kind !== 'refusal'}
        onClick={() => {
          announce(takenBackWords(act));
          say({ type: 'UNDO' });
        }}
      >
        {proofWords().undo}
      </button>
    </header>
  );
}

type Shown = NonNullable<ClosingSnapshot['context']['closing']>;

/** How much of the list is through, as a bar that grows. */
function Through({ closing: { items } }: { closing: Shown }) {
  const done = items.filter(({ mark }) => mark === 'fits').length;
  return (
    <span class="suspects">
      <span class="bar" aria-hidden="true">
        <span
          class="bar-fill bar-through"
          style={{ width: `${((100 * done) / Math.max(1, items.length)).toFixed(1)}%` }}
        />
      </span>
      <span class="suspects-count">
        {proofWords().doneOf(done, items.length)}
        <span class="unseen"> {proofWords().done}</span>
      </span>
    </span>
  );
}
