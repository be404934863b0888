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
    outcomes(first, table.words, (outcome, share) => {
      if (!second) table.add(outcome, group, weight * share);
      else
        outcomes(second, table.words, (other, part) =>
          table.add((outcome + 1) * OUTCOMES + other, group, weight * share * part),
        );
    });
  }
  return table;
}

/** Mass by outcome and group: rows of groups, given out as outcomes are first met. Reused storage, as thousands of tables are filled a step. */
let store = new Float64Array(1 << 16);
class Table {
  readonly words = new Map<string, number>();
  private readonly rows = new Map<number, number>();
  private readonly groups: number;
  constructor(groups: number) {
    this.groups = groups;
  }

  add(outcome: number, group: number, mass: number): void {
    let row = this.rows.get(outcome);
    if (row === undefined) {
      row = this.rows.size * this.groups;
      this.rows.set(outcome, row);
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
    for (let row = 0; row < this.rows.size * groups; row += groups) {
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
    for (let row = 0; row < this.rows.size * groups; row += groups) {
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
  words: Map<string, number>,
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
        const id = words.get(word) ?? WORDS + words.size;
        words.set(word, id);
        if (chance > 0) put(id, chance);
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
