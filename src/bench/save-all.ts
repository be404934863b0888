import { exportCollection } from '../notebook/collection.ts';
import type { Job } from '../notebook/job.ts';
import { keepingWords } from '../words/en/keeping.ts';
import { saveText } from './pieces/save-text.ts';
import type { Ports } from './ports.ts';

/** Everything in the notebook as one file; gives how many records are in it. */
export async function saveAll({ notebook, drafts, now }: Ports): Promise<number> {
  const all = { ...(await notebook.everything()), drafts: await drafts.list() };
  saveText(exportCollection(all, now()), { title: keepingWords().nameOfFile, changedAt: now() });
  return all.jobs.length + all.sheets.length + all.photos.length + all.drafts.length;
}

/** Jobs with their photos as the text of one file. */
export async function withPhotos(
  { notebook, now }: Pick<Ports, 'notebook' | 'now'>,
  jobs: readonly Job[],
): Promise<string> {
  const photos = await Promise.all(jobs.map(({ id }) => notebook.photos.of(id)));
  return exportCollection({ jobs, sheets: [], photos: photos.flat() }, now());
}
