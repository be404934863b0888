import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { ohms } from '../../circuit/units.ts';
import {
  carried,
  newlyOdd,
  type ValueRow,
  valueRows,
  warmthFrom,
  withValues,
} from './value-text.ts';

describe('values as text', () => {
  it.each(startingWirings.map(({ title, build }) => [title, build] as const))(
    'gives back the same circuit when nothing is edited: %s',
    async (_title, build) => {
      const circuit = build();
      const result = await withValues(circuit, valueRows(circuit));
      expect(result).toEqual({ circuit });
    },
  );

  const circuit = startingWirings[0]!.build();
  const edited = (part: string, change: Partial<ValueRow>) =>
    valueRows(circuit).map((row) => (row.part === part ? { ...row, ...change } : row));

  it('keeps what was typed when the wiring changes, but not for a part that is another one now', () => {
    const typed = edited('neckVolume', { measured: '463k' }).map((row) =>
      row.part === 'bridgeVolume' ? { ...row, measured: '512k' } : row,
    );
    const after = {
      ...circuit,
      parts: [
        ...circuit.parts.map((part) =>
          part.id === 'bridgeVolume' && part.kind === 'pot'
            ? { ...part, ohms: { ...part.ohms, nominal: ohms(250e3) } }
            : part,
        ),
        { ...circuit.parts.find(({ id }) => id === 'neckCap')!, id: 'newCap' },
      ],
    };
    const rows = carried(typed, valueRows(circuit), valueRows(after));
    const measured = (part: string) => rows.find((row) => row.part === part)?.measured;
    expect(rows.map(({ part }) => part)).toEqual(valueRows(after).map(({ part }) => part));
    expect([measured('neckVolume'), measured('bridgeVolume'), measured('newCap')]).toEqual([
      '463k',
      '',
      '',
    ]);
  });

  it('keeps a measured value beside the printed one', async () => {
    const result = await withValues(
      circuit,
      edited('bridgeVolume', { measured: '463k', tolerance: '0.1' }),
    );
    expect(
      'circuit' in result && result.circuit.parts.find(({ id }) => id === 'bridgeVolume'),
    ).toMatchObject({
      ohms: { nominal: 500e3, tolerance: 0.1, measured: 463e3 },
    });
  });

  it('keeps how warm a coil was when it was measured, and asks it of coils alone', async () => {
    const result = await withValues(
      circuit,
      edited('neckScrew', { measured: '3.9k', measuredAt: '24,5 °C' }),
    );
    expect('circuit' in result && result.circuit.parts[0]).toMatchObject({
      id: 'neckScrew',
      ohms: { nominal: 3800, measured: 3900, measuredAt: 24.5 },
    });
    const again = 'circuit' in result ? result.circuit : circuit;
    expect(valueRows(again)[0]).toMatchObject({ measured: '3.9 kΩ', measuredAt: '24.5' });
    expect(await withValues(again, valueRows(again))).toEqual({ circuit: again });
    expect(valueRows(circuit).filter((row) => row.measuredAt !== undefined)).toHaveLength(4);
    expect(
      await withValues(circuit, edited('neckScrew', { measured: '3.9k', measuredAt: 'warm' })),
    ).toEqual({
      faults: [
        {
          part: 'neckScrew',
          field: 'measuredAt',
          sentence:
            'neck pickup\'s screw coil: "warm" is no temperature of a room: type degrees Celsius from -30 to 60, as in 21.',
        },
      ],
    });
  });

  it('takes open for a measured part, keeps it, and lets it be typed over', async () => {
    const dead = await withValues(circuit, edited('neckScrew', { measured: 'OL' }));
    if (!('circuit' in dead)) throw new Error('refused');
    expect(dead.circuit.parts[0]).toMatchObject({
      ohms: { nominal: 3800, tolerance: 0.16, measuredOpen: true },
    });
    const rows = valueRows(dead.circuit);
    expect(rows[0]).toMatchObject({ measured: 'OL', odd: true });
    expect(await withValues(dead.circuit, rows)).toEqual(dead);
    const mended = await withValues(
      dead.circuit,
      rows.map((row, at) => (at === 0 ? { ...row, measured: '3.8k' } : row)),
    );
    expect('circuit' in mended && mended.circuit.parts[0]).toEqual({
      ...circuit.parts[0],
      ohms: { nominal: 3800, tolerance: 0.16, measured: 3800 },
    });
  });

  it('tells once of what is far from what is printed', async () => {
    const result = await withValues(circuit, edited('neckVolume', { measured: '52k' }));
    if (!('circuit' in result)) throw new Error('refused');
    expect(newlyOdd(circuit, result.circuit)).toEqual([
      'neck volume: 52 kΩ measured, 500 kΩ printed',
    ]);
    expect(newlyOdd(result.circuit, result.circuit)).toEqual([]);
    const near = await withValues(circuit, edited('neckVolume', { measured: '430k' }));
    expect('circuit' in near && newlyOdd(circuit, near.circuit)).toEqual([]);
  });

  it.each([
    ['', undefined],
    ['21', 21],
    ['-5 c', -5],
    ['300', '"300" is no temperature of a room: type degrees Celsius from -30 to 60, as in 21.'],
  ])('reads degrees: %j', (text, degrees) => {
    expect(warmthFrom(text)).toBe(degrees);
  });

  it('names the part whose value cannot be read', async () => {
    const result = await withValues(circuit, edited('neckVolume', { nominal: 'five' }));
    expect(result).toMatchObject({
      faults: [
        {
          part: 'neckVolume',
          field: 'nominal',
          sentence: expect.stringContaining('neck volume: "five"'),
        },
      ],
    });
  });

  it('takes no open and no zero for a value', async () => {
    expect(await withValues(circuit, edited('neckVolume', { nominal: 'OL' }))).toHaveProperty(
      'faults',
    );
    expect(await withValues(circuit, edited('neckVolume', { measured: '0' }))).toHaveProperty(
      'faults',
    );
  });

  it.each([
    ['2x220k in series', 440e3],
    ['1 M || 500 k', 1e6 / 3],
    ['470k + 30k', 500e3],
  ])('works out %s', async (text, ohms) => {
    const result = await withValues(circuit, edited('neckVolume', { measured: text }));
    const part = 'circuit' in result && result.circuit.parts.find(({ id }) => id === 'neckVolume');
    expect(part).toMatchObject({ ohms: { nominal: 500e3, measured: expect.closeTo(ohms, 3) } });
  });

  it('names the uppermost fault first', async () => {
    const rows = valueRows(circuit).map((row) => ({ ...row, nominal: 'five + ' }));
    const result = await withValues(circuit, rows);
    expect('faults' in result && result.faults.map(({ part }) => part)).toEqual(
      rows.map(({ part }) => part),
    );
  });
});
