import { doubt, formatOhms } from '../readings/entry.ts';
import type { Seen } from '../readings/reading.ts';
import type { SortQuestion } from '../sorter/sort.ts';
import { flowWords } from '../words/en/flows.ts';
import type { Doubt } from './doubt.ts';

/** A figure may lie so far outside of its band: a cold coil, a meter of the cheaper sort. */
const NEAR = 1.25;

/** 5.9 typed for 5.9 k: a figure that this pickup cannot show, and would with another unit. Null where there is none. */
export function doubtOnTheMat(question: SortQuestion | null, seen: Seen): Doubt | null {
  if (!question || seen.kind !== 'ohms' || seen.ohms === 'open') return null;
  const { likely } = question;
  const figure = seen.ohms;
  if (likely.some(({ low, high }) => figure >= low / NEAR && figure <= high * NEAR)) return null;
  const bands = likely.length > 0 ? likely : [undefined];
  for (const band of bands) {
    const found = doubt(figure, { text: '', ...band });
    if (!found) continue;
    const better = { kind: 'ohms', ohms: found.better } as const;
    const shown = formatOhms(figure, 4);
    const sentence =
      found.better === 'open'
        ? flowWords().youEnteredShownADeadShort(shown)
        : flowWords().youEnteredShownCoilsReadThousands(shown, formatOhms(found.better, 4));
    return { sentence, entered: seen, better };
  }
  return null;
}
