import { observe } from '../readings/index.ts';
import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import type { Hypothesis } from './hypothesis.ts';
import { logLikelihood, type Scored } from './likelihood.ts';
import type { Predictor } from './predictor.ts';
import { type Counted, sharesOf } from './repeats.ts';

/** ln of the likelihood of one reading by itself: by the size of the fault, and by what is foretold. */
type Apart = Map<number, Map<number, number>>;
/** By what was asked and seen: the earlier readings are scored again after each new one. */
const kept = new WeakMap<Predictor, Map<string, Apart>>();
/** Readings of which that is kept; one takes some kilobytes. */
const KEPT = 200;

function apartOf(
  predictor: Predictor,
  {
    key,
    observations,
    share,
    times,
  }: Pick<Scored, 'observations' | 'share' | 'times'> & { readonly key: string },
): Apart {
  const all = kept.get(predictor) ?? new Map<string, Apart>();
  kept.set(predictor, all);
  const name = JSON.stringify([key, observations, share, times]);
  const known = all.get(name);
  if (known) return known;
  if (all.size >= KEPT) all.clear();
  const made: Apart = new Map();
  all.set(name, made);
  return made;
}

/** Scores hypotheses on a list of readings; those that predict the same are scored once. */
export class Scorer {
  private readonly predictor: Predictor;
  private readonly readings: readonly {
    readonly ask: Ask;
    readonly key: string;
    readonly observations: Scored['observations'];
    readonly share: number;
    readonly times: number;
  }[];
  private readonly known = new Map<number, number>();
  /** Branches by node; the first is the root, which parts by how large the fault may be. */
  private readonly tree: Map<number, number>[] = [];
  private nodes: number;
  /** What is known of each reading by itself. */
  private readonly apart: readonly Apart[];

  constructor(predictor: Predictor, readings: readonly Counted[]) {
    this.predictor = predictor;
    const shares = sharesOf(readings);
    this.readings = readings.map(({ ask, seen, times = 1 }, at) => ({
      ask,
      key: askKey(ask),
      observations: observe(seen),
      share: shares[at] as number,
      times,
    }));
    this.apart = this.readings.map((one) => apartOf(predictor, one));
    this.nodes = 0;
  }

  /** ln of the likelihood of one reading by itself. */
  alone(hypothesis: Hypothesis, at: number): number {
    const { ask, key, ...seen } = this.readings[at] as (typeof this.readings)[number];
    const { id, predictions } = this.predictor.foretell(hypothesis, ask, key);
    // Words depend on nothing but what is foretold; a figure also on how large the fault may be.
    const figure = predictions[0]?.type === 'level' || predictions[1]?.type === 'level';
    const size = figure ? (hypothesis.loose?.deviation ?? 0) : 0;
    const apart = this.apart[at] as Apart;
    let values = apart.get(size);
    if (!values) {
      values = new Map();
      apart.set(size, values);
    }
    const known = values.get(id);
    if (known !== undefined) return known;
    const scored = [{ predictions, ...seen }];
    const value = logLikelihood(scored, this.predictor.deviations(hypothesis));
    values.set(id, value);
    return value;
  }

  /** ln of the likelihood of all readings. */
  score(hypothesis: Hypothesis): number {
    let node = this.step(0, hypothesis.loose?.deviation ?? 0);
    for (const { ask, key } of this.readings)
      node = this.step(node, this.predictor.foretell(hypothesis, ask, key).id);
    const known = this.known.get(node);
    if (known !== undefined) return known;
    const scored = this.readings.map(({ ask, key, ...seen }): Scored => {
      const { predictions } = this.predictor.foretell(hypothesis, ask, key);
      return { predictions, ...seen };
    });
    const value = logLikelihood(scored, this.predictor.deviations(hypothesis));
    this.known.set(node, value);
    return value;
  }

  /** The next node of the tree of what is foretold, one level a reading: equal for all that foretell the same so far. */
  private step(node: number, name: number): number {
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
