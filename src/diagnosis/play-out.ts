/** A suspect played to the end: its weight, the answer it stands for, and what would be seen by each ask if nothing goes wrong, as numbers from 0. */
export interface Played {
  readonly weight: number;
  readonly group: number;
  readonly seen: readonly number[];
}

/** Suspects, and the asks that are left to tell them apart. */
export interface Play {
  readonly suspects: readonly Played[];
  readonly asks: number;
  /** Seconds of an ask after another one, or after where the person stands now (-1). */
  cost(last: number, ask: number): number;
}

/** So many answers at most, and this share of the belief in them: with more, hunts end long before all of them are told apart. */
const FEW = { answers: 9, share: 0.95 };

/** @param mass of each answer that is left */
export function isEndgame(mass: readonly number[]): boolean {
  const sorted = mass.toSorted((x, y) => y - x);
  const sum = (some: readonly number[]) => some.reduce((total, one) => total + one, 0);
  return sum(sorted.slice(0, FEW.answers)) >= FEW.share * sum(sorted);
}

/** Of what ranks nearly as high as the best one, how near and how many are played to the end. */
const ALIKE = 0.3;
const AT_MOST = 5;

/**
 * A ranking, the best first, of which those nearly alike are put in the order of what they cost to the end: a reading that tells as much
 * as another may leave suspects that are dear to part.
 */
export function playedOut<One extends { readonly rank: number }>(
  ranked: readonly One[],
  secondsWithOne: (one: One) => number,
): readonly One[] {
  const least = (1 - ALIKE) * (ranked[0]?.rank ?? 0);
  const alike = ranked.slice(0, AT_MOST).filter(({ rank }) => rank >= least);
  if (alike.length < 2) return ranked;
  const played = alike.map((one) => ({ one, seconds: secondsWithOne(one) }));
  played.sort((x, y) => x.seconds - y.seconds);
  return [...played.map(({ one }) => one), ...ranked.slice(alike.length)];
}

/**
 * Seconds expected from here to the answer, where `first` comes next and every reading after it tells most per second. The rule that
 * looks one reading ahead is so improved by playing it to the end (policy rollout: D. Bertsekas, Dynamic Programming and Optimal
 * Control, chapter on approximate dynamic programming; cited from memory).
 * @returns seconds; what no ask parts counts as known as well as it can be
 */
export function secondsWith(play: Play, first: number, last: number): number {
  const set = play.suspects.map((_, at) => at);
  const table = tableFor(play);
  return play.cost(last, first) + partsCost(play, table, split(play, set, first), first);
}

/** What parts of a set cost, each by its share. */
function partsCost(play: Play, table: Table, parts: readonly number[][], last: number): number {
  let [total, sum] = [0, 0];
  for (const part of parts) {
    const mass = massOf(play, part);
    total += mass;
    sum += mass * costFrom(play, table, part, last);
  }
  return total > 0 ? sum / total : 0;
}

function costFrom(play: Play, table: Table, set: readonly number[], last: number): number {
  const { suspects } = play;
  const group = suspects[set[0] as number]?.group;
  if (set.every((at) => suspects[at]?.group === group)) return 0;
  // Bits told are the openness before, the same for all, less what is left.
  const before = table.openness(play, set, -1);
  let [best, most] = [-1, 0];
  for (let ask = 0; ask < play.asks; ask += 1) {
    const told = before - table.openness(play, set, ask);
    if (told <= 1e-9) continue;
    const score = told / play.cost(last, ask);
    if (score > most) [best, most] = [ask, score];
  }
  if (best < 0) return 0;
  return play.cost(last, best) + partsCost(play, table, split(play, set, best), best);
}

const massOf = ({ suspects }: Play, set: readonly number[]): number => {
  let mass = 0;
  for (const at of set) mass += (suspects[at] as Played).weight;
  return mass;
};

function split({ suspects }: Play, set: readonly number[], ask: number): number[][] {
  const parts = new Map<number, number[]>();
  for (const at of set) {
    const seen = (suspects[at] as Played).seen[ask] as number;
    const part = parts.get(seen);
    if (part) part.push(at);
    else parts.set(seen, [at]);
  }
  return [...parts.values()];
}

interface Table {
  /** Weight times entropy (nats) of the answers that a set leaves once an ask is answered, or before any (-1). */
  openness(play: Play, set: readonly number[], ask: number): number;
}

/** Storage for mass by what is seen and answer, filled and emptied again and again. */
function tableFor({ suspects }: Play): Table {
  const groups = 1 + Math.max(0, ...suspects.map(({ group }) => group));
  const rows = 1 + Math.max(0, ...suspects.flatMap(({ seen }) => seen));
  const cells = new Float64Array(rows * groups);
  const sums = new Float64Array(rows);
  const met: number[] = [];
  const metRows: number[] = [];
  return {
    openness(play, set, ask) {
      met.length = 0;
      metRows.length = 0;
      for (const at of set) {
        const { weight, group, seen } = play.suspects[at] as Played;
        const row = ask < 0 ? 0 : (seen[ask] as number);
        const cell = row * groups + group;
        if (cells[cell] === 0) met.push(cell);
        if (sums[row] === 0) metRows.push(row);
        cells[cell] = (cells[cell] as number) + weight;
        sums[row] = (sums[row] as number) + weight;
      }
      let open = 0;
      for (const row of metRows) {
        const sum = sums[row] as number;
        open += sum * Math.log(sum);
        sums[row] = 0;
      }
      for (const cell of met) {
        const mass = cells[cell] as number;
        open -= mass * Math.log(mass);
        cells[cell] = 0;
      }
      return open;
    },
  };
}
