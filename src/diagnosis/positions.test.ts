import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { compose } from '../circuit/catalog/modifications/compose.ts';
import { modifications } from '../circuit/catalog/modifications/index.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { positionsOf } from './positions.ts';

const built = (id: string): Circuit => startingWirings.find((one) => one.id === id)!.build();
const told = (circuit: Circuit) =>
  positionsOf(circuit).map(({ coils, pairs, hum }) => [
    coils.length,
    pairs.map(({ signal }) => signal).join(' '),
    hum,
  ]);

// By hand, from winding senses and magnets: coils of one sense add their hum, of two senses cancel it; common knowledge of the trade.
describe('how coils go together', () => {
  it('of three single coils with a reversed middle: both in-between positions cancel hum', () => {
    expect(told(built('three-singles-five-position'))).toEqual([
      [1, '', 'stays'],
      [2, 'add', 'cancels'],
      [1, '', 'stays'],
      [2, 'add', 'cancels'],
      [1, '', 'stays'],
    ]);
  });

  it('of two humbuckers: every coil adds to every other, and hum cancels everywhere', () => {
    for (const [coils, signals, hum] of told(built('two-humbuckers-four-knobs'))) {
      expect(hum).toBe('cancels');
      expect(signals).toBe(coils === 2 ? 'add' : 'add add add add add add');
    }
  });

  it('a coil soldered the other way round fights in the position of both, and its hum no longer cancels', () => {
    const circuit = built('three-singles-five-position');
    const other = (lug: string) =>
      lug === 'middleCoil.start'
        ? 'middleCoil.finish'
        : lug === 'middleCoil.finish'
          ? 'middleCoil.start'
          : lug;
    const turned = {
      ...circuit,
      leads: circuit.leads.map((lead) => ({ ...lead, from: other(lead.from), to: other(lead.to) })),
    };
    expect(told(turned)[1]).toEqual([2, 'fight', 'stays']);
    expect(told(turned)[0]).toEqual([1, '', 'stays']);
  });

  it('a split leaves one coil, which hums', () => {
    const base = built('two-humbuckers-four-knobs');
    const modification = modifications.find(({ id }) => id === 'coil-split')!;
    const place = modification.applies(base)[0]!;
    const { circuit } = compose(base, [{ modification, place, chosen: {} }]);
    const split = positionsOf(circuit).filter(({ title }) => title.includes(':'));
    expect(split.length).toBeGreaterThan(0);
    expect(split.some(({ coils, hum }) => coils.length === 1 && hum === 'stays')).toBe(true);
  });
});
