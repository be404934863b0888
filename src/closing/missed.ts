import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import type { Chosen } from './choose.ts';
import type { Showable } from './faults-shown.ts';
import { apartBy, byFigures, type Column, isMoving, type Row, rowsOf } from './table.ts';
import { Together, wordsShow } from './together.ts';

/**
 * Claimed sizes of faults that a list does not show. The law that larger sizes are shown where a smaller one is holds for one figure
 * by itself; what shows a size only together with others may lose a larger one, so each size is looked at once the list is there.
 */
export function missedSizes(
  predictor: Predictor,
  healthy: Hypothesis,
  { ladders }: Pick<Showable, 'ladders'>,
  chosen: Chosen,
  figures: readonly Column[],
): readonly Row[] {
  const columns = [...chosen.keys()];
  const read = columns.filter(byFigures);
  const list = new Together(columns, predictor.deviations(healthy));
  const missed = ladders
    .flatMap(({ ladder, hidden }) => ladder.slice(hidden))
    .filter((hypothesis) => {
      // Most are shown by figures: then how it sounds need not be worked out.
      if (list.shows({ apart: apartBy(predictor, healthy, hypothesis, read) })) return false;
      const row = {
        apart: apartBy(predictor, healthy, hypothesis, columns),
        moving: isMoving(hypothesis),
      };
      return !list.shows(row) && !wordsShow(row, chosen);
    });
  return rowsOf(
    missed.map((hypothesis) => ({
      hypothesis,
      apart: apartBy(predictor, healthy, hypothesis, figures),
    })),
  );
}
