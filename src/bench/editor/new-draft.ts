import type { Circuit } from '../../circuit/circuit.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import type { Job } from '../../notebook/job.ts';
import { editorWords } from '../../words/en/editor.ts';
import type { Ports } from '../ports.ts';
import { go } from '../route.ts';

const nothing: Circuit = {
  id: 'drawn',
  get title() {
    return editorWords().drawnByHand;
  },
  parts: [],
  leads: [],
  pickups: [],
};

interface Wish extends Pick<WiringDraft, 'title' | 'access'> {
  /** Absent where the drawing starts from nothing. */
  readonly circuit?: Circuit;
  /** The job whose wiring is drawn anew. */
  readonly job?: Job;
}

/** Puts a wiring on the drawing board and goes there. A job has one drawing at a time: an unfinished one is gone on with. */
export async function startDrawing(
  ports: Ports,
  { title, access, circuit = nothing, job }: Wish,
): Promise<void> {
  const before = job && (await ports.drafts.list()).find((draft) => draft.job === job.id);
  if (before) return go({ at: 'draw', id: before.id });
  const drawn = { circuit, places: job?.places ?? {} };
  const draft: WiringDraft = {
    format: 'lugwise-draft',
    id: ports.newId(),
    title,
    access,
    ...(job && { job: job.id }),
    changedAt: ports.now(),
    start: drawn,
    done: [],
    undone: [],
    now: drawn,
  };
  await ports.drafts.write(draft);
  go({ at: 'draw', id: draft.id });
}
