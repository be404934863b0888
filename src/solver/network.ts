import { NetworkError } from './errors.ts';

/**
 * A resistive network. Branch i joins nodes a[i] and b[i] (0..nodes-1) through ohms[i]:
 * 0 is an ideal connection, Infinity no connection. The solver knows nothing else.
 */
export interface Network {
  readonly nodes: number;
  readonly a: Int32Array;
  readonly b: Int32Array;
  readonly ohms: Float64Array;
}

/** Checks and builds a network from branches [a, b, ohms]. Throws NetworkError naming the branch. */
export function network(
  nodes: number,
  branches: readonly (readonly [number, number, number])[],
): Network {
  if (!(Number.isInteger(nodes) && nodes > 0))
    throw new NetworkError('nodes', `a network needs at least one node, got ${String(nodes)}`);
  branches.forEach(([a, b, ohms], at) => {
    for (const node of [a, b])
      if (!(Number.isInteger(node) && node >= 0 && node < nodes))
        throw new NetworkError(
          `branch ${at}`,
          `branch ${at} ends on node ${String(node)}; there are nodes 0 to ${nodes - 1}`,
        );
    if (a === b)
      throw new NetworkError(`branch ${at}`, `branch ${at} runs from node ${a} to itself`);
    if (!(ohms >= 0))
      throw new NetworkError(
        `branch ${at}`,
        `branch ${at} has ${String(ohms)} ohm; expected 0 or more`,
      );
  });
  return {
    nodes,
    a: Int32Array.from(branches, ([a]) => a),
    b: Int32Array.from(branches, ([, b]) => b),
    ohms: Float64Array.from(branches, ([, , ohms]) => ohms),
  };
}
