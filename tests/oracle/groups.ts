/** Groups that only ever grow together, of the numbers 0 to count - 1. */
export class Groups {
  private readonly parent: number[];
  constructor(count: number) {
    this.parent = Array.from({ length: count }, (_, index) => index);
  }
  /** The member that stands for the whole group. */
  find(index: number): number {
    let at = index;
    while (this.parent[at] !== at) {
      this.parent[at] = this.parent[this.parent[at]!]!;
      at = this.parent[at]!;
    }
    return at;
  }
  /** False when both were in one group already. */
  join(a: number, b: number): boolean {
    const [rootA, rootB] = [this.find(a), this.find(b)];
    if (rootA === rootB) return false;
    this.parent[rootB] = rootA;
    return true;
  }
}
