/** A complex number as [real, imaginary]. */
export type Complex = readonly [number, number];

/**
 * A complex symmetric nodal matrix of one pattern for many frequencies, in the form L D L'. The circuit is sparse, so its unknowns are
 * eliminated in an order of least degree (Tinney and Walker 1967, from memory), found once; each frequency then runs through a
 * list of slots. No pivots are sought: in a network with losses every one has a real part above zero.
 */
export class AcMatrix {
  private readonly size: number;
  /** Where each unknown stands in the order of elimination; the driven one is the last. */
  private readonly rank: Int32Array;
  /** Slots: one an unknown for the diagonal in the order of elimination, then those beside it. */
  private readonly slotOf: Map<number, number>;
  /** Of each step: how many neighbours, their slots, their ranks, then the slots of every pair of neighbours. */
  private readonly program: Int32Array;
  /** Where each step of the program begins. */
  private readonly starts: Int32Array;
  private readonly fixed: Float64Array;
  private readonly re: Float64Array;
  private readonly im: Float64Array;
  private readonly vr: Float64Array;
  private readonly vi: Float64Array;

  /** Pairs of unknowns that something joins, -1 for the reference; `driven` is the unknown that 1 A enters. */
  constructor(pairs: readonly (readonly [number, number])[], driven: number) {
    const size = 1 + pairs.reduce((most, [p, q]) => Math.max(most, p, q), driven);
    const beside: Set<number>[] = Array.from({ length: size }, () => new Set());
    for (const [p, q] of pairs)
      if (p >= 0 && q >= 0 && p !== q) {
        beside[p]?.add(q);
        beside[q]?.add(p);
      }
    const rank = new Int32Array(size).fill(-1);
    /** Neighbours left at the time of elimination, by rank. */
    const left: number[][] = [];
    for (let step = 0; step < size; step += 1) {
      const next = step === size - 1 ? driven : leastDegree(beside, rank, driven);
      rank[next] = step;
      const neighbours = [...(beside[next] as Set<number>)];
      left.push(neighbours);
      for (const one of neighbours) {
        const set = beside[one] as Set<number>;
        set.delete(next);
        for (const other of neighbours) if (other !== one) set.add(other);
      }
    }
    this.size = size;
    this.rank = rank;
    this.slotOf = new Map();
    let slots = size;
    left.forEach((neighbours, step) => {
      for (const one of neighbours) {
        this.slotOf.set(step * size + (rank[one] as number), slots);
        slots += 1;
      }
    });
    const program: number[] = [];
    this.starts = new Int32Array(size);
    left.forEach((neighbours, step) => {
      this.starts[step] = program.length;
      const ranks = neighbours.map((one) => rank[one] as number).sort((a, b) => a - b);
      program.push(ranks.length);
      for (const one of ranks) program.push(this.slot(step, one));
      program.push(...ranks);
      ranks.forEach((one, i) => {
        for (const other of ranks.slice(i)) program.push(this.slot(one, other));
      });
    });
    this.program = Int32Array.from(program);
    this.fixed = new Float64Array(slots);
    this.re = new Float64Array(slots);
    this.im = new Float64Array(slots);
    this.vr = new Float64Array(size);
    this.vi = new Float64Array(size);
  }

  private slot(p: number, q: number): number {
    if (p === q) return p;
    return this.slotOf.get(Math.min(p, q) * this.size + Math.max(p, q)) as number;
  }

  /** Slots of an admittance between two unknowns (-1: the reference): [diagonal, diagonal, beside]; null where it joins nothing unknown. */
  place(p: number, q: number): Int32Array | null {
    const ranks = [p, q].filter((one) => one >= 0).map((one) => this.rank[one] as number);
    const [x, y] = ranks;
    if (x === undefined) return null;
    return Int32Array.from(y === undefined ? [x, -1, -1] : [x, y, this.slot(x, y)]);
  }

  /** An admittance of all frequencies. */
  constant(place: Int32Array, siemens: number): void {
    spread(this.fixed, place, siemens);
  }

  /** Before the admittances of another frequency are added. */
  reset(): void {
    this.re.set(this.fixed);
    this.im.fill(0);
  }

  add(place: Int32Array, re: number, im: number): void {
    spread(this.re, place, re);
    spread(this.im, place, im);
  }

  /** Potentials for 1 A into the driven unknown. */
  solve(): void {
    const { re, im, program, size, starts } = this;
    for (let step = 0; step < size; step += 1) {
      const slots = at(starts, step) + 1;
      const count = at(program, slots - 1);
      const dr = at(re, step);
      const di = at(im, step);
      const norm = dr * dr + di * di;
      const pr = dr / norm;
      const pi = -di / norm;
      let target = slots + 2 * count;
      for (let i = 0; i < count; i += 1) {
        const slot = at(program, slots + i);
        const lr = at(re, slot) * pr - at(im, slot) * pi;
        const li = at(re, slot) * pi + at(im, slot) * pr;
        for (let j = i; j < count; j += 1) {
          const other = at(program, slots + j);
          const to = at(program, target);
          re[to] = at(re, to) - (lr * at(re, other) - li * at(im, other));
          im[to] = at(im, to) - (lr * at(im, other) + li * at(re, other));
          target += 1;
        }
        re[slot] = lr;
        im[slot] = li;
      }
      re[step] = pr;
      im[step] = pi;
    }
    this.back();
  }

  /** The current enters at the last unknown, whose voltage is 1 / its pivot; from there back, v_k = - sum of l_ki v_i. */
  private back(): void {
    const { re, im, vr, vi, program, size, starts } = this;
    vr[size - 1] = at(re, size - 1);
    vi[size - 1] = at(im, size - 1);
    for (let step = size - 2; step >= 0; step -= 1) {
      const slots = at(starts, step) + 1;
      const count = at(program, slots - 1);
      let sr = 0;
      let si = 0;
      for (let i = slots; i < slots + count; i += 1) {
        const slot = at(program, i);
        const rank = at(program, i + count);
        sr -= at(re, slot) * at(vr, rank) - at(im, slot) * at(vi, rank);
        si -= at(re, slot) * at(vi, rank) + at(im, slot) * at(vr, rank);
      }
      vr[step] = sr;
      vi[step] = si;
    }
  }

  value(unknown: number): Complex {
    const at = this.rank[unknown] as number;
    return [this.vr[at] as number, this.vi[at] as number];
  }
}

const at = (list: Float64Array | Int32Array, index: number): number => list[index] as number;

function leastDegree(beside: readonly Set<number>[], rank: Int32Array, driven: number): number {
  let best = -1;
  for (let one = 0; one < beside.length; one += 1) {
    if (one === driven || rank[one] !== -1) continue;
    if (best < 0 || (beside[one]?.size ?? 0) < (beside[best]?.size ?? 0)) best = one;
  }
  return best;
}

function spread(into: Float64Array, place: Int32Array, amount: number): void {
  const x = at(place, 0);
  into[x] = at(into, x) + amount;
  const y = at(place, 1);
  if (y < 0) return;
  into[y] = at(into, y) + amount;
  const between = at(place, 2);
  into[between] = at(into, between) - amount;
}
