import type { Job } from '../../notebook/job.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { startDrawing } from '../editor/new-draft.ts';
import { useOnce } from '../once.ts';
import { usePorts } from '../ports.ts';

/** From an open job to its wiring on the drawing board. */
export function Redraw({ job }: { job: Job }) {
  const ports = usePorts();
  const draw = useOnce(() =>
    startDrawing(ports, { title: job.title, access: job.access, circuit: job.circuit, job }),
  );
  return (
    <button type="button" class="quiet" onClick={() => void draw()}>
      {pieceWords().theWiringIsDifferent}
    </button>
  );
}
