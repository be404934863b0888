import type { Job } from '../../notebook/job.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { startDrawing } from '../editor/new-draft.ts';
import { usePorts } from '../ports.ts';

/** From an open job to its wiring on the drawing board. */
export function Redraw({ job }: { job: Job }) {
  const ports = usePorts();
  return (
    <button
      type="button"
      class="quiet"
      onClick={() =>
        startDrawing(ports, { title: job.title, access: job.access, circuit: job.circuit, job })
      }
    >
      {pieceWords().theWiringIsDifferent}
    </button>
  );
}
