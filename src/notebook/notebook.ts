import type { Bin } from './bin.ts';
import type { Brought, Everything } from './collection.ts';
import type { Plan } from './import-plan.ts';
import type { Job } from './job.ts';
import type { JobSummary } from './job-summary.ts';
import type { NotebookError } from './notebook-error.ts';
import type { Notice } from './notices.ts';
import type { Photos } from './photos.ts';
import type { Sheet, SheetSummary } from './sheet.ts';
import type { Shelf } from './shelf.ts';

/** The jobs of this device, and beside them the sheets. Every failure is a NotebookError. */
export interface Notebook extends Shelf<Job, JobSummary> {
  /** `memory`: nothing outlives the page, for the reason in `trouble`. */
  readonly place: 'disk' | 'memory';
  readonly trouble: NotebookError | null;
  /** The same jobs as `list`, and beside them those of practice: all else leaves these out. Newest first. */
  withPractice(): Promise<{
    readonly jobs: readonly JobSummary[];
    readonly practised: readonly JobSummary[];
  }>;
  readonly sheets: Shelf<Sheet, SheetSummary>;
  readonly photos: Photos;
  readonly bin: Bin;
  /** All that is kept, as it stands, damaged records too; what was removed is not in it. */
  everything(): Promise<Everything>;
  /** What taking these in would change. Nothing is changed. */
  plan(brought: Brought): Promise<Plan>;
  /** Takes them in, all or none, and says what was done. */
  takeIn(brought: Brought): Promise<Plan>;
  /** Records that this page alone holds. */
  unsaved(): number;
  /** Tells what other tabs did; returns the way to stop listening. */
  watch(listener: (notice: Notice) => void): () => void;
  /** Tries the disk again and moves there what this page alone holds. Gives the notebook to go on with. */
  retry(): Promise<Notebook>;
  close(): void;
}
