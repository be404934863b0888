import { askKey } from '../diagnosis/ask-key.ts';
import { effortOf } from '../diagnosis/effort.ts';
import type { Reading } from '../readings/reading.ts';
import { type Choice, choose } from './choose.ts';
import type { ClosingBench, Plan } from './plan.ts';
import { scoreFigures } from './score.ts';
import { always, type Stage } from './stage.ts';
import { apartBy, byFigures, type Column, rowsOf } from './table.ts';
import { Together } from './together.ts';
import { scoreWords } from './words.ts';

/**
 * Of the readings that a repair may have changed, those that need not be taken again. A repair touches one place. A reading through that
 * place which fitted before tells that all else on its way is sound, and the place itself is proved anew by as few lines of the list as
 * show every fault of it which the list claims. The last pass is always played anew.
 * @param readings all there are, oldest first
 * @param stale those of them that a repair may have changed
 */
export function standAfterRepair(
  bench: ClosingBench,
  stage: Stage,
  plan: Plan,
  {
    readings,
    stale,
  }: { readonly readings: readonly Reading[]; readonly stale: readonly Reading[] },
  repairs: readonly string[],
): ReadonlySet<Reading> {
  if (stale.length === 0) return new Set();
  const columns = (bench.columns.get(stage) ?? []).filter(({ key }) =>
    plan.items.some((item) => item.key === key),
  );
  const lines = new Set(columns.map(({ key }) => key));
  const figures = scoreFigures(bench, readings);
  const words = scoreWords(bench, plan.showable.words, readings);
  // What did not fit tells nothing of what else is on its way.
  const odd = new Set(
    readings
      .filter((one) => figures.off.has(one) || words.off.has(one))
      .map(({ ask }) => askKey(ask)),
  );
  const proofs = new Map<string, ReadonlySet<string>>();
  return new Set(
    stale.filter(({ ask, round }) => {
      const since = repairs.slice(round);
      const name = since.join(' ');
      const proof = proofs.get(name) ?? proofOf(bench, plan, columns, new Set(since));
      proofs.set(name, proof);
      const key = askKey(ask);
      return lines.has(key) && !odd.has(key) && !proof.has(key) && !always(ask);
    }),
  );
}

/** Lines that show together every claimed fault of the repaired places, beside those that no fault of these places changes. */
function proofOf(
  { predictor, healthy, layout }: ClosingBench,
  { showable }: Plan,
  columns: readonly Column[],
  repaired: ReadonlySet<string>,
): ReadonlySet<string> {
  const parted = showable.ladders.flatMap(({ ladder, hidden }) =>
    ladder.flatMap((hypothesis, size) =>
      hypothesis.faults.some(({ remedy }) => repaired.has(remedy.key))
        ? [
            {
              hypothesis,
              apart: apartBy(predictor, healthy, hypothesis, columns),
              claimed: size >= hidden,
            },
          ]
        : [],
    ),
  );
  const touched = new Set(parted.flatMap(({ apart }) => [...apart.keys()]));
  const deviations = predictor.deviations(healthy);
  const all = new Together(columns.filter(byFigures), deviations);
  const rows = rowsOf(parted.filter(({ claimed }) => claimed));
  const byFigure = rows.filter((row) => all.shows(row));
  const effort: Pick<Choice, 'seconds' | 'again'> = {
    seconds: ({ ask }) => effortOf(layout, ask, null),
    again: ({ ask }) => effortOf(layout, ask, ask),
  };
  const { chosen, beyond } = choose(
    { figures: byFigure, words: rows.filter((row) => !all.shows(row)) },
    { ...effort, columns, kept: columns.filter((column) => !touched.has(column)) },
    deviations,
  );
  // What only very many lines show together is shown by all of them.
  if (beyond.length > 0) return new Set([...touched].map(({ key }) => key));
  return new Set([...chosen.keys()].filter((column) => touched.has(column)).map(({ key }) => key));
}
