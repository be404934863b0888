import { notebookWords } from '../words/en/notebook.ts';
import type { Job } from './job.ts';
import { restoreJob } from './restore.ts';
import { JobShapeError } from './shape.ts';
import type { Sheet } from './sheet.ts';
import { parsed, type Refused, refused } from './written.ts';

export type Imported = { readonly ok: true; readonly job: Job } | Refused;

/** The job or sheet as the text of a file, readable and in one stable form. See docs/job-file.md. */
export const exportJob = (record: Job | Sheet): string => `${JSON.stringify(record, null, 2)}\n`;

/** Reads the text of a job file. Never throws: whatever is wrong comes back as a sentence. */
export function importJob(text: string): Imported {
  const read = parsed(text);
  if (!read.ok) return read;
  try {
    return { ok: true, job: restoreJob(read.raw) };
  } catch (error) {
    if (error instanceof JobShapeError) return refused(error.message);
    return refused(notebookWords().theJobCouldNotBeReadOneLine(String(error)));
  }
}
