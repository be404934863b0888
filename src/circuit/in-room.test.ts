import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import type { Circuit } from './circuit.ts';
import { coilInRoom, inRoom, isInLine, partValue } from './in-room.ts';
import type { Part, Value } from './parts/part.ts';
import { celsius, ohms } from './units.ts';

const base = startingWirings.find(({ id }) => id === 'one-single-two-knobs')!.build();
const partOf = (circuit: Circuit, kind: Part['kind']) =>
  circuit.parts.find((part) => part.kind === kind)!;
/** The wiring with one part measured. */
const measured = (kind: Part['kind'], value: Partial<Value<number>>): Circuit => ({
  ...base,
  parts: base.parts.map((part) =>
    part === partOf(base, kind)
      ? ({
          ...part,
          ...(part.kind === 'capacitor'
            ? { farads: { ...part.farads, ...value } }
            : { ohms: { ...partValue(part), ...value } }),
        } as Part)
      : part,
  ),
});
const value = (circuit: Circuit, kind: Part['kind']) => partValue(partOf(circuit, kind))!;
const coil = value(base, 'coil').nominal;

describe('copper (IEC 60028: 0.393 % a kelvin at 20 C)', () => {
  it('of 5000 ohm at 20 C has 5196.5 at 30 C, and back', () => {
    expect(coilInRoom(ohms(5000), celsius(20), celsius(30))).toBeCloseTo(5196.5, 6);
    expect(coilInRoom(ohms(5196.5), celsius(30), celsius(20))).toBeCloseTo(5000, 6);
  });

  it('of the printed value goes with the room, other parts stay', () => {
    expect(inRoom(base)).toBe(base);
    const warm = inRoom(base, celsius(30));
    expect(value(warm, 'coil').nominal).toBeCloseTo(1.0393 * coil, 6);
    expect(value(warm, 'pot')).toEqual(value(base, 'pot'));
    expect(inRoom(base, celsius(20))).toBe(base);
  });

  it('measured warm is less in a cooler room, and just as much where nobody noted how warm it was', () => {
    const noted = measured('coil', { measured: 6000, measuredAt: celsius(30) });
    expect(value(inRoom(noted, celsius(20)), 'coil').measured).toBeCloseTo(6000 / 1.0393, 6);
    expect(value(inRoom(noted), 'coil').measured).toBeCloseTo(6000 / 1.0393, 6);
    const unknown = measured('coil', { measured: 6000 });
    expect(value(inRoom(unknown, celsius(30)), 'coil').measured).toBe(6000);
  });

  it('is warmed once, however often it is asked', () => {
    const warm = inRoom(base, celsius(30));
    expect(inRoom(warm, celsius(30))).toBe(warm);
    expect(inRoom(base, celsius(30))).toBe(warm);
  });
});

describe('a measured part', () => {
  it.each([
    ['pot', { measured: 0.86 * 250e3 }, true],
    ['pot', { measured: 0.5 * 250e3 }, false],
    ['pot', { measuredOpen: true }, false],
    ['coil', { measured: 1.05 * coil }, true],
    ['coil', { measured: 0.3 * coil }, false],
    ['coil', { measuredOpen: true }, false],
    ['capacitor', { measured: 44e-9 }, true],
    ['capacitor', { measured: 4.7e-9 }, false],
  ] as const)('%s %o is in line: %s', (kind, what, inLine) => {
    const circuit = measured(kind, what as Partial<Value<number>>);
    if (kind === 'capacitor') expect(value(base, kind).nominal).toBe(47e-9);
    if (kind === 'pot') expect(value(base, kind).nominal).toBe(250e3);
    expect(isInLine(partOf(circuit, kind))).toBe(inLine);
    const taken = value(inRoom(circuit), kind);
    expect(taken.nominal).toBe(value(base, kind).nominal);
    expect(taken.measured).toBe(inLine ? (what as { measured: number }).measured : undefined);
    expect(taken.measuredOpen).toBeUndefined();
  });

  it('is judged at 20 C: a coil that is right and hot is in line', () => {
    // A quarter more: at 83 C just what is printed.
    const hot = { measured: 1.26 * coil, measuredAt: celsius(83) };
    expect(isInLine(partOf(measured('coil', { measured: 1.28 * coil }), 'coil'))).toBe(false);
    expect(isInLine(partOf(measured('coil', hot), 'coil'))).toBe(true);
  });
});
