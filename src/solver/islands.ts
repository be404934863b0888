/** Disjoint sets over 0..count-1 with path halving; the smaller index becomes the root, so that labels do not depend on order. */
export class Sets {
  private readonly parent: Int32Array;
  constructor(count: number) {
    this.parent = new Int32Array(count);
    for (let i = 0; i < count; i += 1) this.parent[i] = i;
  }
  root(of: number): number {
    const { parent } = this;
    let at = of;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] as number] as number;
      at = parent[at] as number;
    }
    return at;
  }
  join(x: number, y: number): void {
    const [a, b] = [this.root(x), this.root(y)];
    if (a < b) this.parent[b] = a;
    else if (b < a) this.parent[a] = b;
  }
  /** Labels 0..n-1 in order of first member. */
  labels(): { readonly of: Int32Array; readonly count: number } {
    const of = new Int32Array(this.parent.length).fill(-1);
    let count = 0;
    for (let i = 0; i < of.length; i += 1) {
      const root = this.root(i);
      if (of[root] === -1) {
        of[root] = count;
        count += 1;
      }
      of[i] = of[root] as number;
    }
    return { of, count };
  }
}
