import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { ohms } from '../circuit/units.ts';
import { assess } from './assess.ts';
import { beepsBeside } from './beeps.ts';
import { candidates } from './candidates.ts';

const circuit = startingWirings.find(({ id }) => id.includes('one-humbucker'))?.build();
if (!circuit) throw new Error('No wiring with one humbucker.');

describe('beeps in place of ohms', () => {
  const layout = layoutOf(circuit);
  const beeps = beepsBeside(layout, candidates(layout, 'open'));

  it('are asked only where a healthy guitar beeps, never across a coil', () => {
    expect(beeps.length).toBeGreaterThan(10);
    const partOf = (node: string) => layout.parts.get(node.split('.')[0] ?? '');
    for (const ask of beeps)
      if ('red' in ask && partOf(ask.red)?.kind === 'coil')
        expect(partOf(ask.red)).not.toBe(partOf(ask.black));
    for (const { setting } of beeps) expect(setting.lifted).toEqual([]);
  });

  it('take the place of ohms only for a phone that hears', () => {
    const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
    const first = assess({
      circuit,
      meter,
      access: 'open',
      readings: [],
      refused: [],
      repairs: [],
    });
    const ask = first.next[0]?.ask;
    if (!ask) throw new Error('No first reading.');
    const readings = [
      { id: 'a', ask, seen: { kind: 'ohms', ohms: 'open' }, at: '2026-01-01T00:00:00Z', round: 0 },
    ] as const;
    const told = { circuit, meter, access: 'open', readings, refused: [], repairs: [] } as const;
    const kinds = (byEar: boolean) => assess({ ...told, byEar }).next.map((one) => one.ask.kind);
    expect(kinds(false)).not.toContain('beep');
    expect(kinds(true)[0]).toBe('beep');
  });
});
