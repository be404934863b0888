import type { Removed } from '../notebook/bin.ts';
import { keepingWords } from '../words/en/keeping.ts';
import type { Ports } from './ports.ts';
import { go } from './route.ts';
import { routeOfSheet } from './sheet-route.ts';

/** Puts back what was removed and goes there. Throws where it cannot be. */
export async function putBack(
  { notebook }: Ports,
  { id, what }: Pick<Removed, 'id' | 'what'>,
): Promise<void> {
  const back = await notebook.bin.putBack(id);
  if (what === 'jobs') go({ at: 'job', id: back, view: 'record' });
  if (what === 'sheets') go(routeOfSheet(await notebook.sheets.read(back)));
}

/** What one of them is called, for a line of a list. */
export const removedName = ({ what, title }: Pick<Removed, 'what' | 'title'>): string => {
  if (what !== 'photos') return title || keepingWords().withoutAName;
  return title ? keepingWords().photoOf(title) : keepingWords().aPhoto;
};
