import type { Part } from '../circuit/parts/part.ts';

/** Pairs of lugs of a part close enough for solder or a strand to join, in the part's own names. */
export function neighbours(part: Part): readonly (readonly [string, string])[] {
  switch (part.kind) {
    case 'pot':
      return [
        ['1', '2'],
        ['2', '3'],
        ['1', 'case'],
        ['2', 'case'],
        ['3', 'case'],
      ];
    case 'switch': {
      const pairs: [string, string][] = [];
      part.rows.forEach((row, r) => {
        row.forEach((lug, c) => {
          const right = row[c + 1];
          if (right) pairs.push([lug, right]);
          // A blade's two rows stand on either side of its frame: only small switches have rows a strand can cross.
          const below = part.style === 'blade' ? undefined : part.rows[r + 1]?.[c];
          if (below) pairs.push([lug, below]);
          if (part.frame) pairs.push([lug, 'frame']);
        });
      });
      return pairs;
    }
    case 'jack':
      return part.ring
        ? [
            ['tip', 'ring'],
            ['ring', 'sleeve'],
            ['tip', 'sleeve'],
          ]
        : [['tip', 'sleeve']];
    default:
      return [];
  }
}

/** Lugs of a part on which a lead meant for `lug` may land by a slip of one. */
export function slips(part: Part, lug: string): readonly string[] {
  return neighbours(part).flatMap(([a, b]) => (a === lug ? [b] : b === lug ? [a] : []));
}
