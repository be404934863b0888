import { describe, expect, it } from 'vitest';
import { checkCircuit } from '../../check.ts';
import { farads, ohms } from '../../units.ts';
import { startingWirings } from '../index.ts';
import { type BleedMake, fittedBleed, withBleed } from './fitted-bleed.ts';
import { volumesOf } from './volumes.ts';

const makes: readonly BleedMake[] = ['none', 'alone', 'parallel', 'series'];
const values = { farads: farads(680e-12), ohms: ohms(150e3) };

describe.each(startingWirings.map(({ id, build }) => [id, build()] as const))(
  '%s',
  (_, circuit) => {
    it('takes each make of bleed after each other one, and none is left as it was', () => {
      for (const volume of volumesOf(circuit)) {
        expect(fittedBleed(circuit, volume.id)).toEqual({ make: 'none' });
        for (const first of makes)
          for (const second of makes) {
            const one = withBleed(circuit, volume, { make: first, ...values });
            const two = withBleed(one, volume, { make: second, ...values });
            checkCircuit(two);
            const fitted = fittedBleed(two, volume.id);
            expect(fitted.make).toBe(second);
            if (second === 'none') expect(two).toEqual(circuit);
            else expect(fitted.capacitor?.farads.nominal).toBe(values.farads);
            if (second === 'series' || second === 'parallel')
              expect(fitted.resistor?.ohms.nominal).toBe(values.ohms);
          }
      }
    });

    it('keeps every part and joint where the make stays and a value changes', () => {
      for (const volume of volumesOf(circuit)) {
        const one = withBleed(circuit, volume, { make: 'parallel', ...values });
        const two = withBleed(one, volume, {
          make: 'parallel',
          farads: farads(1e-9),
          ohms: values.ohms,
        });
        expect(two.leads).toEqual(one.leads);
        expect(two.parts.map(({ id }) => id)).toEqual(one.parts.map(({ id }) => id));
        expect(fittedBleed(two, volume.id).capacitor?.farads.nominal).toBe(1e-9);
      }
    });
  },
);
