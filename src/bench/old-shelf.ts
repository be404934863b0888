import type { PickupSheet, Sheet } from '../notebook/index.ts';
import { pieceWords } from '../words/en/pieces.ts';

/** Where a pickup was kept before there were sheets. */
const SHELF = 'pickup-on-the-mat';

/** Moves the pickup that an older app kept outside the notebook into it. What cannot be moved stays where it is. */
export async function moveFromOldShelf(
  sheets: { write(sheet: Sheet): Promise<unknown> },
  at: string,
  id: string,
): Promise<void> {
  const text = localStorage.getItem(SHELF);
  if (!text) return;
  try {
    const work = JSON.parse(text) as Pick<PickupSheet, 'seen' | 'meter' | 'readings' | 'refused'>;
    if (work.seen) {
      const { seen, meter, readings, refused } = work;
      await sheets.write({
        format: 'lugwise-pickup',
        version: 1,
        id,
        title: pieceWords().pickupMap(seen.leads.map(({ colour }) => colour).join(', ')),
        createdAt: at,
        changedAt: at,
        seen,
        meter,
        readings,
        refused,
      });
    }
    localStorage.removeItem(SHELF);
  } catch {
    // It stays on its shelf: nothing is lost.
  }
}
