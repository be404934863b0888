import { lastAct } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import type { HuntSnapshot, Say } from '../hunt-actor.ts';
import { hrefOf } from '../route.ts';
import { takenBackWords } from '../words.ts';
import { announce } from './announce.tsx';

interface StripProps {
  readonly job: Job;
  readonly snapshot: HuntSnapshot;
  readonly say: Say;
}

/** Above every screen of a hunt: the way out, the job, how many suspects are left, undo. */
export function Strip({ job, snapshot, say }: StripProps) {
  const { assessment, work, takenBack } = snapshot.context;
  const undoable = lastAct(work) !== null;
  return (
    <header class="strip">
      <a class="strip-home" href={hrefOf({ at: 'home' })}>
        <span class="unseen">{pieceWords().home}</span>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
      </a>
      <a class="strip-job" href={hrefOf({ at: 'job', id: job.id, view: 'record' })}>
        <span class="strip-title">{job.title || pieceWords().aJob}</span>
        {assessment && (
          <SuspectBar
            left={assessment.liveSuspects}
            of={assessment.suspects.length}
            short={takenBack !== null}
          />
        )}
      </a>
      {takenBack ? (
        <button type="button" class="quiet" onClick={() => say({ type: 'PUT_BACK' })}>
          {pieceWords().putBack}
        </button>
      ) : null}
      <button
        type="button"
        class="quiet"
        disabled={!undoable}
        onClick={() => {
          announce(takenBackWords(lastAct(work)));
          say({ type: 'UNDO' });
        }}
      >
        {pieceWords().undo}
      </button>
    </header>
  );
}

/** How many suspects are left, as a bar that shortens. */
function SuspectBar({ left, of, short }: { left: number; of: number; short: boolean }) {
  const share = of > 0 ? Math.min(1, left / of) : 0;
  return (
    <span class="suspects">
      <span class="bar" aria-hidden="true">
        <span class="bar-fill" style={{ width: `${(100 * share).toFixed(1)}%` }} />
      </span>
      <span class="suspects-count">
        {left} <span class={short ? 'unseen' : undefined}>{pieceWords().suspects(left)} </span>
        {pieceWords().left}
      </span>
    </span>
  );
}
