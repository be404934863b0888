import { checkSetting } from '../circuit/check.ts';
import { ohms } from '../circuit/units.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { evenly, expectationOf } from '../diagnosis/expect.ts';
import { learnedValues } from '../diagnosis/learned-values.ts';
import { varianceOf } from '../diagnosis/predictor.ts';
import { splitByRepairs } from '../diagnosis/rounds.ts';
import { askText, seenText } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { standAfterRepair } from './after-repair.ts';
import { ALARM, figureIn } from './apart.ts';
import type { Closing, ClosingEvidence, ClosingItem, Mark } from './closing.ts';
import { changesSince } from './compare.ts';
import { ohmsAt } from './figure.ts';
import { type ClosingBench, closingBench, effortOfItems, type PlanItem, planOf } from './plan.ts';
import { type FigureScore, scoreFigures, secondLook, withoutOwn } from './score.ts';
import { Shared } from './shared.ts';
import { shownSoFar } from './so-far.ts';
import { cannotSee, ruledOut } from './unseen.ts';
import { scoreWords, type WordScore } from './words.ts';

/** Everything that follows from the evidence. Throws CircuitError where circuit or settings do not hold together. */
export function closingOf(evidence: ClosingEvidence): Closing {
  const { circuit, meter, stage, refused, repairs } = evidence;
  const bench = closingBench(circuit, meter);
  for (const { ask } of evidence.readings) checkSetting(circuit, ask.setting);
  const plan = planOf(bench, stage, refused);
  const { stale } = splitByRepairs(bench.predictor, bench.singles, evidence.readings, repairs);
  const usable = evidence.readings.filter(
    ({ ask }) => KINDS.includes(ask.kind) && ask.setting.lifted.length === 0,
  );
  const touched = new Set(stale);
  const standing = standAfterRepair(
    bench,
    stage,
    plan,
    { readings: usable, stale: usable.filter((one) => touched.has(one)) },
    repairs,
  );
  const counted = usable.filter((one) => !touched.has(one) || standing.has(one));
  const figures = scoreFigures(bench, counted);
  const words = scoreWords(bench, plan.showable.words, counted);
  const answers = new Map<string, Reading[]>();
  for (const reading of counted) {
    const key = askKey(reading.ask);
    answers.set(key, [...(answers.get(key) ?? []), reading]);
  }
  const markAll = (items: readonly PlanItem[], late: ReadonlySet<Reading>) =>
    items.map((item) => markOf(item, answers.get(item.key) ?? [], figures, words, late));
  let asked: readonly PlanItem[] = [...plan.items, ...besides(new Set())];
  let marks = markAll(asked, new Set());
  // Only a full list is looked at a second time: before, what later readings say is not known.
  if (marks.every((mark) => mark === 'fits')) {
    const late = secondLook(bench, figures);
    asked = [...plan.items, ...besides(late)];
    marks = markAll(asked, late);
  }
  const passed = marks.every((mark) => mark === 'fits');
  const shown =
    evidence.ended && !passed
      ? shownSoFar(bench, stage, plan, (_, at) => marks[at] === 'fits')
      : { ladders: plan.showable.ladders, pairs: plan.hiddenPairs };
  const shared = new Shared(bench.predictor.deviations(bench.healthy));
  for (const { figure, seen } of figures.standing) shared.add(figure, seen);
  const items = asked.map((item, at) =>
    itemOf(bench, item, answers.get(item.key) ?? [], marks[at] as Mark, figures, shared),
  );
  return {
    items,
    readings: plan.readings,
    atLeast: plan.atLeast,
    effort: plan.effort,
    left: effortOfItems(
      bench.predictor.layout,
      items
        .filter(({ mark }) => mark !== 'fits')
        .map(({ ask, times, taken }) => ({ ask, times: Math.max(1, times - taken) })),
    ),
    state: marks.includes('failed') ? 'failed' : passed ? 'passed' : 'checking',
    first: {
      ...plan.first,
      readings: plan.items.slice(0, plan.first.items).reduce((sum, { times }) => sum + times, 0),
      passed: marks.slice(0, plan.first.items).every((mark) => mark === 'fits'),
    },
    ruledOut: ruledOut(shown.ladders),
    cannotSee: cannotSee(shown),
    learned: learnedValues(
      bench.predictor,
      bench.healthy,
      figures.standing.map(({ reading }) => reading),
    ),
    changes: changesSince(
      bench,
      evidence.before ?? [],
      figures.standing.map(({ reading }) => reading),
    ),
  };

  /** What was read besides, in a hunt or because it jumped, and does not fit, is as good as a line of the list. */
  function besides(late: ReadonlySet<Reading>): readonly PlanItem[] {
    const planned = new Set(plan.items.map(({ key }) => key));
    const odd = (one: Reading) => figures.off.has(one) || words.off.has(one) || late.has(one);
    return [...answers]
      .filter(([key, own]) => !planned.has(key) && own.some(odd))
      .map(([key, [first]]): PlanItem => ({ ask: (first as Reading).ask, key, times: 1 }));
  }
}

/** Readings that a list may ask for. What a hunt has read besides speaks here if it is one of these. */
const KINDS: readonly Ask['kind'][] = ['ohms', 'turn', 'flex', 'tap', 'touch', 'listen'];

/** Odd words that outnumber fitting ones by this many are no slips, whatever fault they may come from. */
const STUBBORN = 4;

/**
 * A figure that is off twice running has failed; one that fits after an odd one was a slip. Words are asked until as many more fit
 * than do not as the list asks for, or until they speak against the guitar beyond chance.
 */
function markOf(
  { times }: PlanItem,
  answers: readonly Reading[],
  figures: FigureScore,
  words: WordScore,
  late: ReadonlySet<Reading>,
): Mark {
  const last = answers.at(-1);
  if (!last) return 'open';
  const offFigure = (reading: Reading) => figures.off.has(reading) || late.has(reading);
  if (offFigure(last)) {
    const before = answers.at(-2);
    return late.has(last)
      ? before
        ? 'failed'
        : 'again'
      : before && offFigure(before)
        ? 'failed'
        : 'again';
  }
  const odd = answers.filter((reading) => words.off.has(reading)).length;
  const even = answers.length - odd;
  if (odd > even && (words.alarm || odd - even >= STUBBORN)) return 'failed';
  if (odd > 0) return even - odd >= times ? 'fits' : 'again';
  return answers.length < times ? 'open' : 'fits';
}

function itemOf(
  bench: ClosingBench,
  { ask, key, times }: PlanItem,
  answers: readonly Reading[],
  mark: Mark,
  figures: FigureScore,
  shared: Shared,
): ClosingItem {
  const { layout, predictor, healthy } = bench;
  const deviations = predictor.deviations(healthy);
  const { predictions } = predictor.foretell(healthy, ask, key);
  const figure = figureIn(predictions, deviations);
  const now = figure && withoutOwn(shared, figures.standing, key, () => shared.foretell(figure));
  return {
    ask,
    askText: askText(layout, ask),
    expected: expectationOf(
      predictions,
      ask,
      evenly((level) => ({ shift: 0, variance: varianceOf(level, deviations) })),
    ),
    ...(now
      ? {
          passes: {
            low: ohms(ohmsAt(now.mean - ALARM * now.deviation)),
            high: ohms(ohmsAt(now.mean + ALARM * now.deviation)),
          },
        }
      : {}),
    times,
    taken: answers.length,
    mark,
    answers: answers.map(({ seen }) => seenText(seen)),
    readings: answers.map(({ id }) => id),
  };
}
