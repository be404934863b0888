import type { Circuit, Setting } from '../../src/circuit/circuit.ts';

/** Every combination of switch positions, each with all knobs at 10, all at 0 and all at 5; nothing lifted. */
export function everySetting(circuit: Circuit): Setting[] {
  let positions: Record<string, string>[] = [{}];
  for (const part of circuit.parts)
    if (part.kind === 'switch')
      positions = positions.flatMap((chosen) =>
        part.positions.map(({ name }) => ({ ...chosen, [part.id]: name })),
      );
  const pots = circuit.parts.filter(({ kind }) => kind === 'pot');
  return [10, 0, 5].flatMap((knob) =>
    positions.map((chosen) => ({
      positions: chosen,
      knobs: Object.fromEntries(pots.map(({ id }) => [id, knob])),
      plug: 'out' as const,
      lifted: [],
    })),
  );
}
