import { likeliest } from '../readings/likeliest.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { effortOf } from './effort.ts';
import type { Weighed } from './hypothesis.ts';
import { mixed, type Signs } from './known-signs.ts';
import type { Play } from './play-out.ts';
import type { Predictor } from './predictor.ts';
import type { Rule } from './rule.ts';

/** A suspect with the place of its answer among the groups. */
export interface Member {
  readonly weighed: Weighed;
  readonly group: number;
}

/** Of the panel, those whose end is played, the heaviest first. */
const PLAYERS = 100;
/** Figures this far apart, in ln ohm, are told apart. */
const APART = 0.3;

interface Playing {
  readonly predictor: Predictor;
  readonly panel: readonly Member[];
  /** From which sign each of the panel starts. */
  readonly signs: readonly Signs[];
  readonly asks: readonly Ask[];
  /** Where the person stands now. */
  readonly last: Ask | null;
  readonly cost: NonNullable<Rule['cost']>;
}

/** The panel with what each would show if nothing goes wrong. */
export function playOf({ predictor, panel, signs, asks, last, cost }: Playing): Play {
  const players = panel.slice(0, PLAYERS);
  const seen = asks.map((ask) => {
    const key = askKey(ask);
    const numbers = new Map<string, number>();
    return players.map(({ weighed }, player) => {
      const { predictions } = predictor.foretell(weighed.hypothesis, ask, key);
      const name = predictions
        .map((one) => shown(one.type === 'level' ? one : mixed(one, signs[player] as Signs)))
        .join();
      const number = numbers.get(name) ?? numbers.size;
      numbers.set(name, number);
      return number;
    });
  });
  const costs = new Map<number, number>();
  return {
    suspects: players.map(({ weighed, group }, at) => ({
      weight: weighed.probability,
      group,
      seen: seen.map((numbers) => numbers[at] as number),
    })),
    asks: asks.length,
    cost(before, at) {
      const key = (before + 1) * asks.length + at;
      const known = costs.get(key);
      if (known !== undefined) return known;
      const ask = asks[at] as Ask;
      const from = before < 0 ? last : (asks[before] as Ask);
      const found = cost({ kind: ask.kind, seconds: effortOf(predictor.layout, ask, from) });
      costs.set(key, found);
      return found;
    },
  };
}

function shown(prediction: Prediction): string {
  const seen = likeliest(prediction);
  switch (seen.type) {
    case 'level':
      return `${Math.round(seen.value / APART)}`;
    case 'over':
      return 'over';
    case 'threshold':
      return `${seen.beeps}`;
    case 'choice':
      return seen.word;
  }
}
