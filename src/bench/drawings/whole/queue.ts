/**
 * States by whole-numbered cost that never falls below the last one taken, as a cost with a search in one direction
 * does. One list a cost; of equal costs the last comes first.
 */
export class Queue {
  private readonly lists: number[][] = [];
  private least = 0;
  private count = 0;

  push(cost: number, state: number): void {
    const list = this.lists[cost];
    if (list) list.push(state);
    else this.lists[cost] = [state];
    if (cost < this.least) this.least = cost;
    this.count += 1;
  }

  /** -1 when empty. */
  pop(): number {
    if (this.count === 0) return -1;
    while (!this.lists[this.least]?.length) this.least += 1;
    this.count -= 1;
    return this.lists[this.least]!.pop()!;
  }
}
