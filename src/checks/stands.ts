import type { Network, Stand } from './network.ts';

/** More combinations of switch positions than these are not gone through one by one. */
const MOST_STANDS = 5000;

export interface Stands {
  readonly all: readonly Stand[];
  /** False where only a part of the combinations is in `all`. */
  readonly complete: boolean;
}

/**
 * Every combination of switch positions, the rest of all switches first. Of too many, every pair of switches in all its
 * combinations with the others at rest, then combinations drawn evenly, the same in every run.
 */
export function standsOf({ switches }: Network): Stands {
  const counts = switches.map(({ positions }) => positions.length);
  const total = counts.reduce((product, count) => product * count, 1);
  if (total <= MOST_STANDS) {
    let all: number[][] = [[]];
    for (const count of counts)
      all = all.flatMap((stand) => Array.from({ length: count }, (_, at) => [...stand, at]));
    return { all, complete: true };
  }
  const rest = counts.map(() => 0);
  const found = new Map<string, Stand>([[rest.join(), rest]]);
  const take = (stand: Stand) => found.set(stand.join(), stand);
  for (const [one, ones] of counts.entries())
    for (let two = 0; two < one; two += 1)
      for (let a = 0; a < ones; a += 1)
        for (let b = 0; b < (counts[two] ?? 0); b += 1)
          take(rest.map((_, at) => (at === one ? a : at === two ? b : 0)));
  // Multiplicative congruence, so that two looks at one wiring say the same.
  let seed = 1;
  const draw = (below: number): number => {
    seed = (seed * 48271) % 2147483647;
    return seed % below;
  };
  for (let tries = 0; tries < 4 * MOST_STANDS && found.size < MOST_STANDS; tries += 1)
    take(counts.map(draw));
  return { all: [...found.values()], complete: false };
}

/** Buttons are let go: nobody holds one. */
export const handsOff = ({ switches }: Network, stand: Stand): boolean =>
  switches.every(({ style }, at) => style !== 'button' || stand[at] === 0);
