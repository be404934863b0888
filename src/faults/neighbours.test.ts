import { describe, expect, it } from 'vitest';
import { threeSinglesFivePosition } from '../circuit/catalog/three-singles-five-position.ts';
import { twoPickupsSharedControls } from '../circuit/catalog/two-pickups-shared-controls.ts';
import { kindOf } from '../circuit/parts/index.ts';
import { neighbours, slips } from './neighbours.ts';

const part = (id: string) => [...threeSinglesFivePosition().parts].find((one) => one.id === id)!;
const toggle = twoPickupsSharedControls().parts.find(({ id }) => id === 'selector')!;
const keys = (pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([a, b]) => [a, b].sort().join('-')).sort();

describe('neighbouring lugs', () => {
  it('of a pot: along the row, and each with the case behind it', () => {
    expect(keys(neighbours(part('volume')))).toEqual(
      ['1-2', '2-3', '1-case', '2-case', '3-case'].sort(),
    );
  });

  it('of a toggle: outer lugs with the middle one, not with each other', () => {
    const pairs = keys(neighbours(toggle));
    expect(pairs).toContain('A-C');
    expect(pairs).toContain('B-C');
    expect(pairs).not.toContain('A-B');
  });

  it('of a blade: along each row, not across the frame between them', () => {
    const pairs = keys(neighbours(part('selector')));
    expect(pairs).toContain('A1-A2');
    expect(pairs).not.toContain('A1-BC');
  });

  it('of a jack: tip and sleeve', () => {
    expect(keys(neighbours(part('jack')))).toEqual(['sleeve-tip']);
  });

  it('are lugs of the part', () => {
    for (const one of threeSinglesFivePosition().parts)
      for (const [a, b] of neighbours(one)) {
        expect(kindOf(one).lugs(one)).toContain(a);
        expect(kindOf(one).lugs(one)).toContain(b);
      }
  });
});

describe('a slip of one lug', () => {
  it('goes either way', () => {
    expect([...slips(part('selector'), 'A2')].sort()).toEqual(['A1', 'A3', 'frame']);
    expect([...slips(part('volume'), '1')].sort()).toEqual(['2', 'case']);
  });
});
