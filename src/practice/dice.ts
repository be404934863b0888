/**
 * Repeatable chance. The generator is mulberry32, the seed a hash of the text (FNV-1a): both are public domain and written
 * from memory; the test beside this file checks evenness. Text seeds let each question have dice of its own, so that an
 * answer does not depend on what was asked before.
 */
export class Dice {
  private state: number;
  private spare: number | undefined;

  constructor(seed: string | number) {
    let hash = 0x811c9dc5;
    for (const byte of new TextEncoder().encode(String(seed)))
      hash = Math.imul(hash ^ byte, 0x01000193);
    this.state = hash;
    // Texts that differ in their last letter alone start close together; a few throws part them.
    for (let warm = 0; warm < 4; warm++) this.throw();
  }

  /** Even over 0 <= x < 1. */
  throw(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  chance(probability: number): boolean {
    return this.throw() < probability;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.throw();
  }

  pick<T>(from: readonly T[]): T {
    if (from.length === 0) throw new RangeError('nothing to pick from');
    return from[Math.floor(this.throw() * from.length)]!;
  }

  /** Normal with mean 0 and standard deviation 1 (Box and Muller). */
  normal(): number {
    if (this.spare !== undefined) {
      const spare = this.spare;
      this.spare = undefined;
      return spare;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - this.throw()));
    const angle = 2 * Math.PI * this.throw();
    this.spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  /** Normal, thrown again until within +-limit. */
  normalWithin(mean: number, deviation: number, limit: number): number {
    for (;;) {
      const value = mean + deviation * this.normal();
      if (Math.abs(value) <= limit) return value;
    }
  }
}
