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
  if (what !== 'sheets') return;
  // A damaged one has no screen of its own: it lies in the list again.
  const sheet = await notebook.sheets.read(back).catch(() => null);
  go(sheet ? routeOfSheet(sheet) : { at: 'home' });
}

/** What one of them is called, for a line of a list. */
export const removedName = ({ what, title }: Pick<Removed, 'what' | 'title'>): string => {
  if (what !== 'photos') return title || keepingWords().withoutAName;
  return title ? keepingWords().photoOf(title) : keepingWords().aPhoto;
};
