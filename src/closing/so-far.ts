import type { ClosingBench, Plan, PlanItem } from './plan.ts';
import type { Stage } from './stage.ts';
import { apartBy, isMoving } from './table.ts';
import { Together, wordsShow } from './together.ts';
import type { Shown } from './unseen.ts';

/** What the taken items of a list show by themselves, for a check that was ended before it was through. */
export function shownSoFar(
  { predictor, healthy, columns: made }: ClosingBench,
  stage: Stage,
  { items, showable, hiddenPairs }: Plan,
  taken: (item: PlanItem, at: number) => boolean,
): Shown {
  const counts = new Map(items.filter(taken).map(({ key, times }) => [key, times]));
  const columns = (made.get(stage) ?? []).filter(({ key }) => counts.has(key));
  const together = new Together(columns, predictor.deviations(healthy));
  const times = new Map(columns.map((column) => [column, counts.get(column.key) ?? 0]));
  const ladders = showable.ladders.map(({ ladder, hidden }) => {
    const least = ladder.findIndex((fault, at) => {
      if (at < hidden) return false;
      const row = {
        apart: apartBy(predictor, healthy, fault, columns),
        moving: isMoving(fault),
      };
      return together.shows(row) || wordsShow(row, times);
    });
    return { ladder, hidden: least < 0 ? ladder.length : least };
  });
  return { ladders, pairs: hiddenPairs };
}
