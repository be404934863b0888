import { expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { modified } from './modified.ts';

const [parts, leads] = [
  ({ parts }: { parts: unknown }) => JSON.stringify(parts),
  ({ leads }: { leads: unknown }) => JSON.stringify(leads),
];

it('draws no wiring that is still the one it started from, and names what was made of it', () => {
  for (let seed = 0; seed < 60; seed += 1) {
    const { wiring, circuit } = modified(seed);
    const [id, ...made] = wiring.split(' + ');
    const start = startingWirings.find((one) => one.id === id)?.build();
    expect(made.length).toBeGreaterThan(0);
    expect(
      start && parts(start) === parts(circuit) && leads(start) === leads(circuit),
      wiring,
    ).toBe(false);
  }
});
