import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { checkCircuit } from '../../circuit/check.ts';
import { asItIs, offersFor, subjectsOf, triedCircuit } from './trial-subject.ts';

const circuit = startingWirings.find(({ id }) => id === 'two-humbuckers-four-knobs')!.build();
const subject = (key: string) => subjectsOf(circuit).find((one) => one.key === key)!;

describe('what can be tried', () => {
  it.each(startingWirings.map(({ id, build }) => [id, build()] as const))(
    'as it is, leaves %s as it is; each can be made and passes the check',
    async (_, wiring) => {
      for (const one of subjectsOf(wiring)) {
        const result = await triedCircuit(wiring, one, asItIs(wiring, one));
        if (!('circuit' in result)) throw new Error(result.faults[0]?.sentence);
        if (one.is !== 'bass-cut') expect(result.circuit).toBe(wiring);
        else expect(result.circuit.parts.some(({ id }) => id === 'bassCut')).toBe(true);
        const other = await triedCircuit(wiring, one, {
          ohms: '2x220k in series',
          farads: '0.015u',
          taper: 'linear',
          make: 'series',
        });
        if (!('circuit' in other)) throw new Error(other.faults[0]?.sentence);
        checkCircuit(other.circuit);
        if (one.is === 'pot')
          expect(other.circuit.parts.find(({ id }) => id === one.part)).toMatchObject({
            taper: 'linear',
            ohms: { nominal: 440e3 },
          });
      }
    },
  );

  it('says what is wrong with a value, and where', async () => {
    const tried = { ...asItIs(circuit, subject('neckVolume')), ohms: 'loud' };
    expect(await triedCircuit(circuit, subject('neckVolume'), tried)).toMatchObject({
      faults: [{ field: 'ohms', sentence: expect.stringContaining('"loud"') }],
    });
    const open = { ...tried, ohms: 'OL' };
    expect(await triedCircuit(circuit, subject('neckVolume'), open)).toMatchObject({
      faults: [{ sentence: 'A number with its unit is needed.' }],
    });
  });

  it('offers preferred values for capacitors and resistors, never for pots', async () => {
    const tried = { ...asItIs(circuit, subject('neckCap')), farads: '20n', ohms: '260k' };
    expect(await offersFor(subject('neckCap'), tried, 'farads')).toEqual(['22 nF', '18 nF']);
    expect(await offersFor(subject('bleed:neckVolume'), tried, 'ohms')).toEqual([
      '270 kΩ',
      '240 kΩ',
    ]);
    expect(await offersFor(subject('neckVolume'), tried, 'ohms')).toEqual([]);
    expect(await offersFor(subject('neckCap'), { ...tried, farads: '22n' }, 'farads')).toEqual([]);
  });
});
