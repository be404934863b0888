import { describe, expect, it } from 'vitest';
import { NetworkError, network, solveDc } from './index.ts';

describe('a network', () => {
  it.each<[string, number, readonly (readonly [number, number, number])[], string]>([
    ['no node', 0, [], 'a network needs at least one node, got 0'],
    ['half a node', 1.5, [], 'a network needs at least one node, got 1.5'],
    ['a branch to nowhere', 2, [[0, 2, 1]], 'branch 0 ends on node 2; there are nodes 0 to 1'],
    ['a branch to itself', 2, [[1, 1, 5]], 'branch 0 runs from node 1 to itself'],
    ['a negative resistance', 2, [[0, 1, -5]], 'branch 0 has -5 ohm; expected 0 or more'],
    ['no number', 2, [[0, 1, Number.NaN]], 'branch 0 has NaN ohm; expected 0 or more'],
  ])('with %s is turned away by name', (_what, nodes, branches, sentence) => {
    expect(() => network(nodes, branches)).toThrow(NetworkError);
    expect(() => network(nodes, branches)).toThrow(sentence);
  });

  it('has values for what is no error: open, a short, an island', () => {
    const dc = solveDc(
      network(5, [
        [0, 1, 0],
        [1, 2, 100],
        [2, 3, Number.POSITIVE_INFINITY],
      ]),
    );
    expect(dc.resistance(0, 1)).toBe(0);
    expect(dc.resistance(0, 2)).toBeCloseTo(100, 12);
    expect(dc.resistance(0, 3)).toBe(Number.POSITIVE_INFINITY);
    expect(dc.resistance(4, 4)).toBe(0);
    expect(dc.transfer(0, 4, 1)).toBe(0);
    expect(dc.sensitivity(0, 3, 1)).toBe(0);
  });

  it('names a node or branch that is asked for and not there', () => {
    const dc = solveDc(
      network(3, [
        [0, 1, 0],
        [1, 2, 100],
      ]),
    );
    expect(() => dc.resistance(0, 7)).toThrow('there is no node 7; the network has 3');
    expect(() => dc.transfer(0, 2, 9)).toThrow('there is no branch 9; the network has 2');
    expect(() => dc.transfer(0, 2, 0)).toThrow(
      'branch 0 is an ideal connection: its share of the current is not defined',
    );
  });
});
