import type { Prediction } from '../readings/prediction.ts';

/** ln-ohm bins of 0.06 from tenths of an ohm to the meter's limit; the last bin is over-range. */
const LOWEST = Math.log(0.05);
const WIDTH = 0.06;
const BINS = 345;
const OVER = BINS;

/** One part of what a hypothesis predicts; for a level, its mean shift and variance (noise included) given what was read so far. */
export interface ForeseenPart {
  readonly prediction: Prediction;
  readonly shift: number;
  readonly variance: number;
  /** Its outcomes laid out, kept where the same part is weighed again and again. */
  laid?: Laid;
}

/** Outcomes and their shares, in the order they were laid. */
interface Laid {
  readonly outcomes: readonly number[];
  readonly shares: readonly number[];
}

/** One hypothesis of a question: its weight, the answer it stands for (a repair, 0..groups-1), and what it predicts for the reading. */
export interface Foreseen {
  readonly weight: number;
  readonly group: number;
  readonly parts: readonly ForeseenPart[];
}

/** Outcome numbers: bins and over-range first, then two for a beep, then words in order of first meeting. */
const BEEPS = BINS + 1;
const SILENT = BINS + 2;
const WORDS = BINS + 3;
const OUTCOMES = 512;
/** Numbers of words, the same in every table, so that what is laid out for one serves all. Readings know some dozens of words. */
const numbers = new Map<string, number>();

function numberOf(word: string): number {
  const known = numbers.get(word);
  if (known !== undefined) return known;
  const number = WORDS + numbers.size;
  if (number >= OUTCOMES) throw new Error(`There are more words than outcomes: ${word}.`);
  numbers.set(word, number);
  return number;
}

/**
 * Expected entropy (nats) over the groups once the reading is known. Sums over outcomes: words as they are, beeps by a
 * threshold of about 55 ohm with its uncertainty, levels as normal densities laid into bins, two parts as pairs.
 */
export function expectedEntropy(list: readonly Foreseen[], groups: number): number {
  return tableOf(list, groups).entropy();
}

/**
 * Expected chance that two guitars drawn from what is still believed ask for different answers, once the reading is known: the
 * edges that an equivalence class edge cutting rule would still have to cut (Golovin, Krause and Ray, "Near-Optimal Bayesian
 * Active Learning with Noisy Observations", 2010; from memory), here with noise.
 */
export function expectedEdges(list: readonly Foreseen[], groups: number): number {
  return tableOf(list, groups).edges();
}

function tableOf(list: readonly Foreseen[], groups: number): Table {
  const table = new Table(groups);
  for (const { weight, group, parts } of list) {
    const [first, second] = parts;
    if (!first) continue;
    const one = laidOf(first);
    if (!second) {
      for (let at = 0; at < one.outcomes.length; at += 1)
        table.add(one.outcomes[at] as number, group, weight * (one.shares[at] as number));
      continue;
    }
    const other = laidOf(second);
    for (let at = 0; at < one.outcomes.length; at += 1) {
      const row = ((one.outcomes[at] as number) + 1) * OUTCOMES;
      const share = weight * (one.shares[at] as number);
      for (let and = 0; and < other.outcomes.length; and += 1)
        table.add(
          row + (other.outcomes[and] as number),
          group,
          share * (other.shares[and] as number),
        );
    }
  }
  return table;
}

function laidOf(part: ForeseenPart): Laid {
  if (part.laid) return part.laid;
  const laid = { outcomes: [] as number[], shares: [] as number[] };
  outcomes(part, (outcome, share) => {
    laid.outcomes.push(outcome);
    laid.shares.push(share);
  });
  part.laid = laid;
  return laid;
}

/** Mass by outcome and group: rows of groups, given out as outcomes are first met. Reused storage, as thousands of tables are filled a step. */
let store = new Float64Array(1 << 16);
/** Where the row of an outcome of one part begins, in the table that was filled last; of no row where the outcome at that row is another. */
const rowOf = new Int32Array(OUTCOMES);
class Table {
  /** Outcomes by row. */
  private readonly met: number[] = [];
  /** Rows of pairs of outcomes, which are too many for a list. */
  private readonly pairs = new Map<number, number>();
  private readonly groups: number;
  constructor(groups: number) {
    this.groups = groups;
  }

  private find(outcome: number): number {
    if (outcome >= OUTCOMES) return this.pairs.get(outcome) ?? -1;
    const row = rowOf[outcome] as number;
    return this.met[row] === outcome ? row * this.groups : -1;
  }

  add(outcome: number, group: number, mass: number): void {
    let row = this.find(outcome);
    if (row < 0) {
      row = this.met.length * this.groups;
      if (outcome < OUTCOMES) rowOf[outcome] = this.met.length;
      else this.pairs.set(outcome, row);
      this.met.push(outcome);
      if (row + this.groups > store.length) {
        const larger = new Float64Array(2 * (row + this.groups));
        larger.set(store);
        store = larger;
      }
      store.fill(0, row, row + this.groups);
    }
    store[row + group] = (store[row + group] as number) + mass;
  }

  entropy(): number {
    let total = 0;
    let entropy = 0;
    const { groups } = this;
    for (let row = 0; row < this.met.length * groups; row += groups) {
      let sum = 0;
      let plogp = 0;
      for (let at = row; at < row + groups; at += 1) {
        const mass = store[at] as number;
        if (mass > 0) {
          sum += mass;
          plogp += mass * Math.log(mass);
        }
      }
      total += sum;
      // sum x H(group | outcome) = sum ln sum - sum of m ln m.
      if (sum > 0) entropy += sum * Math.log(sum) - plogp;
    }
    return total > 0 ? entropy / total : 0;
  }

  edges(): number {
    let total = 0;
    let edges = 0;
    const { groups } = this;
    for (let row = 0; row < this.met.length * groups; row += groups) {
      let sum = 0;
      let squares = 0;
      for (let at = row; at < row + groups; at += 1) {
        const mass = store[at] as number;
        sum += mass;
        squares += mass * mass;
      }
      total += sum;
      if (sum > 0) edges += sum - squares / sum;
    }
    return total > 0 ? edges / total : 0;
  }
}

function outcomes(
  { prediction, shift, variance }: ForeseenPart,
  put: (outcome: number, share: number) => void,
): void {
  switch (prediction.type) {
    case 'over':
      put(OVER, 1);
      return;
    case 'level':
      spread(prediction.mean + shift, Math.sqrt(variance), put);
      return;
    case 'threshold': {
      const beeps = 1 / (1 + (prediction.ohms / 55) ** 2.5);
      put(BEEPS, beeps);
      put(SILENT, 1 - beeps);
      return;
    }
    case 'choice':
      for (const [word, chance] of Object.entries(prediction.chances)) {
        if (chance > 0) put(numberOf(word), chance);
      }
  }
}

/** Entropy (nats) of the groups before the reading. */
export function entropyOf(weights: readonly number[]): number {
  let total = 0;
  let plogp = 0;
  for (const weight of weights)
    if (weight > 0) {
      total += weight;
      plogp += weight * Math.log(weight);
    }
  return total > 0 ? Math.log(total) - plogp / total : 0;
}

const shares = new Float64Array(BINS);

/** Shares of a normal density in the bins within two and a half deviations. */
function spread(mean: number, deviation: number, put: (bin: number, share: number) => void): void {
  const at = (mean - LOWEST) / WIDTH;
  const sd = Math.max(deviation / WIDTH, 0.25);
  const from = Math.max(0, Math.floor(at - 2.5 * sd));
  const to = Math.min(BINS - 1, Math.ceil(at + 2.5 * sd));
  let total = 0;
  for (let bin = from; bin <= to; bin += 1) {
    const share = Math.exp(-0.5 * ((bin + 0.5 - at) / sd) ** 2);
    shares[bin] = share;
    total += share;
  }
  if (!(total > 0)) {
    put(Math.min(BINS - 1, Math.max(0, Math.floor(at))), 1);
    return;
  }
  for (let bin = from; bin <= to; bin += 1) put(bin, (shares[bin] as number) / total);
}
