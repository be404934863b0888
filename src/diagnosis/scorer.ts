import { observe } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import type { Hypothesis } from './hypothesis.ts';
import { logLikelihood, type Scored } from './likelihood.ts';
import type { Predictor } from './predictor.ts';
import { sharesOf } from './repeats.ts';

/** Scores hypotheses on a list of readings; those that predict the same are scored once. */
export class Scorer {
  private readonly predictor: Predictor;
  private readonly readings: readonly {
    readonly ask: Ask;
    readonly key: string;
    readonly observations: Scored['observations'];
    readonly share: number;
  }[];
  private readonly known = new Map<number, number>();
  /** Branches by node; the first nodes are roots, one for each reading that a score may begin with. */
  private readonly tree: Map<string | number, number>[] = [];
  private nodes: number;
  /** By reading and what is foretold, for readings in words: these depend on nothing else. */
  private readonly words: readonly Map<number, number>[];

  constructor(predictor: Predictor, readings: readonly Reading[]) {
    this.predictor = predictor;
    const shares = sharesOf(readings);
    this.readings = readings.map(({ ask, seen }, at) => ({
      ask,
      key: askKey(ask),
      observations: observe(seen),
      share: shares[at] as number,
    }));
    this.words = readings.map(() => new Map<number, number>());
    this.nodes = readings.length;
  }

  /** ln of the likelihood of one reading by itself. */
  alone(hypothesis: Hypothesis, at: number): number {
    const { ask, key, ...seen } = this.readings[at] as (typeof this.readings)[number];
    const { id, predictions } = this.predictor.foretell(hypothesis, ask, key);
    const words = this.words[at] as Map<number, number>;
    const known = words.get(id);
    if (known !== undefined) return known;
    if (predictions.some(({ type }) => type === 'level')) return this.score(hypothesis, at, at + 1);
    const value = logLikelihood([{ predictions, ...seen }], new Float64Array(0));
    words.set(id, value);
    return value;
  }

  /** ln of the likelihood of readings `from` to `to`. */
  score(hypothesis: Hypothesis, from = 0, to = this.readings.length): number {
    let node = this.step(from, `${hypothesis.loose?.deviation ?? 0}`);
    for (let at = from; at < to; at += 1) {
      const { ask, key } = this.readings[at] as (typeof this.readings)[number];
      node = this.step(node, this.predictor.foretell(hypothesis, ask, key).id);
    }
    const known = this.known.get(node);
    if (known !== undefined) return known;
    const scored = this.readings.slice(from, to).map(({ ask, key, ...seen }): Scored => {
      const { predictions } = this.predictor.foretell(hypothesis, ask, key);
      return { predictions, ...seen };
    });
    const value = logLikelihood(scored, this.predictor.deviations(hypothesis));
    this.known.set(node, value);
    return value;
  }

  /** The next node of the tree of what is foretold, one level a reading: equal for all that foretell the same so far. */
  private step(node: number, name: string | number): number {
    let branches = this.tree[node];
    if (!branches) {
      branches = new Map();
      this.tree[node] = branches;
    }
    const known = branches.get(name);
    if (known !== undefined) return known;
    this.nodes += 1;
    branches.set(name, this.nodes);
    return this.nodes;
  }
}
