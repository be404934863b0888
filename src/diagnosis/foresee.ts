import { farads, ohms } from '../circuit/units.ts';
import { likeliest } from '../readings/likeliest.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';
import type { Ask, Heard, Seen, SeenOf } from '../readings/reading.ts';
import type { Evidence } from './assessment.ts';
import { believed, benchOf } from './kept-bench.ts';
import { ended } from './rests.ts';

/** Hypotheses looked at; what lighter ones would show comes too seldom. */
const LOOKED_AT = 200;

/** The answers most likely to come to `ask`, likeliest first, at most `count`. */
export function likelyAnswers(evidence: Evidence, ask: Ask, count: number): readonly Seen[] {
  const bench = benchOf(evidence.circuit, evidence.meter, evidence.repairs);
  const { belief } = ended(believed(bench, evidence));
  const weights = new Map<string, { seen: Seen; weight: number }>();
  for (const { hypothesis, probability } of belief.weighed.slice(0, LOOKED_AT)) {
    for (const { observed, chance } of showings(bench.predictor.predict(hypothesis, ask))) {
      const seen = seenAs(ask, observed);
      if (!seen) continue;
      const key = JSON.stringify(seen);
      const known = weights.get(key);
      if (known) known.weight += probability * chance;
      else weights.set(key, { seen, weight: probability * chance });
    }
  }
  return [...weights.values()]
    .sort((x, y) => y.weight - x.weight)
    .slice(0, count)
    .map(({ seen }) => seen);
}

/** The evidence as it would be with an answer that may come. */
export const withAnswer = (evidence: Evidence, ask: Ask, seen: Seen): Evidence => {
  const reading = { id: 'foreseen', ask, seen, at: '', round: evidence.repairs.length };
  return { ...evidence, readings: [...evidence.readings, reading] };
};

/** What one guitar may show, each with its chance: the middle of a figure, or any of the words. */
function showings([first, ...rest]: readonly Prediction[]): readonly {
  readonly observed: readonly Observation[];
  readonly chance: number;
}[] {
  if (!first) return [];
  const others = rest.map(likeliest);
  if (first.type !== 'choice') return [{ observed: [likeliest(first), ...others], chance: 1 }];
  return Object.entries(first.chances).map(([word, chance]) => ({
    observed: [{ type: 'choice', word }, ...others],
    chance,
  }));
}

/** Three figures, as a display shows them, so that much the same answers are one. */
const shown = (ln: number): number => Number(Math.exp(ln).toPrecision(3));

/** What a person would enter; null for what no two enter alike. */
function seenAs(ask: Ask, [first, second]: readonly Observation[]): Seen | null {
  const word = first?.type === 'choice' ? first.word : '';
  switch (ask.kind) {
    case 'ohms':
      return first
        ? { kind: 'ohms', ohms: first.type === 'level' ? ohms(shown(first.value)) : 'open' }
        : null;
    case 'beep':
      return first?.type === 'threshold' ? { kind: 'beep', beeps: first.beeps } : null;
    case 'turn':
      return {
        kind: 'turn',
        how: word as 'smooth',
        ...(second && { peak: second.type === 'level' ? ohms(shown(second.value)) : 'open' }),
      };
    case 'farads':
      if (word !== 'value') return { kind: 'farads', farads: word as 'open' };
      return second?.type === 'level'
        ? { kind: 'farads', farads: farads(shown(second.value) / 1e12) }
        : null;
    case 'flex':
      return { kind: 'flex', how: word as 'steady' };
    case 'tap':
      return { kind: 'tap', swing: word as 'plus' };
    case 'look':
      return { kind: 'look', how: word as 'good' };
    case 'pole':
      return { kind: 'pole', pole: word as 'north' };
    case 'listen':
      return { kind: 'listen', heard: word as Heard };
    case 'touch':
      return { kind: 'touch', hum: word as SeenOf<'touch'>['hum'] };
    case 'hum':
      return null;
  }
}
