import { describe, expect, it } from 'vitest';
import type { Circuit } from '../circuit/circuit.ts';
import { partValue } from '../circuit/in-room.ts';
import type { Part, PartId, Value } from '../circuit/parts/part.ts';
import { celsius } from '../circuit/units.ts';
import { apartReadings } from './apart.ts';
import { assess } from './assess.ts';
import { cardOf } from './card.ts';
import { Bench, meter } from './evidence.fixture.ts';
import { expectation } from './expect.ts';

const bench = new Bench('two-pickups-shared-controls');
const measured = (values: Readonly<Record<PartId, Partial<Value<number>>>>): Circuit => ({
  ...bench.circuit,
  parts: bench.circuit.parts.map((part) => {
    const value = values[part.id];
    if (!value) return part;
    const key = part.kind === 'capacitor' ? 'farads' : 'ohms';
    return { ...part, [key]: { ...partValue(part), ...value } } as Part;
  }),
});
const shares = (circuit: Circuit, ids: readonly string[]): readonly number[] => {
  const { suspects } = assess(bench.evidence([], { circuit }));
  const faults = suspects.flatMap((suspect) => suspect.faults);
  return ids.map((id) => faults.find((fault) => fault.id === id)?.probability ?? 0);
};

describe('a part measured out of circuit', () => {
  it('is a reading with everything off it, all of them in one setting', () => {
    const circuit = measured({
      volume: { measured: 430e3 },
      neckCoil: { measuredOpen: true },
      toneCap: { measured: 21e-9 },
    });
    const all = apartReadings(circuit, undefined);
    expect(all.map(({ part, inLine }) => [part, inLine]).sort()).toEqual([
      ['neckCoil', false],
      ['toneCap', true],
      ['volume', true],
    ]);
    expect(new Set(all.map(({ reading }) => JSON.stringify(reading.ask.setting))).size).toBe(1);
    const seen = Object.fromEntries(all.map(({ part, reading }) => [part, reading.seen]));
    expect(seen).toEqual({
      volume: { kind: 'ohms', ohms: 430e3 },
      neckCoil: { kind: 'ohms', ohms: 'open' },
      toneCap: { kind: 'farads', farads: 21e-9 },
    });
    const fits = assess(bench.evidence([], { circuit })).readings;
    expect(fits.map(({ apart, fits: how, expected }) => [apart, how, expected.text])).toEqual([
      ['neckCoil', 'off', 'about 7.50 kΩ'],
    ]);
  });

  it('is expected at what it measured: 430 k of 500 k is no suspect, and less of one than before', () => {
    const circuit = measured({ volume: { measured: 430e3 } });
    const track = { kind: 'turn', pot: 'volume', red: 'jack.tip', black: 'jack.sleeve' } as const;
    const peak = expectation(circuit, meter, { ...track, setting: bench.at('neck') });
    // (430 k + 7.5 k) / 4.
    expect(peak.text).toBe('changes smoothly, highest about 109 kΩ');
    // Its wiper may still be bad: that was not measured. Its track and its value were.
    const faults = ['track-lower:volume', 'track-upper:volume', 'wrong-pot:volume'];
    const before = shares(bench.circuit, faults);
    shares(circuit, faults).forEach((share, at) => {
      expect(share).toBeLessThan(0.05 * before[at]!);
    });
    const report = assess(bench.evidence([bench.ohms(7300, bench.at('neck'))], { circuit }));
    expect(report.readings.map(({ fits }) => fits)).toEqual(['fits']);
    expect(report.learned.map(({ part }) => part)).not.toContain('volume');
  });

  it.each([
    ['a dead coil', { neckCoil: { measuredOpen: true } }, /neckCoil/],
    ['a pot of another value', { volume: { measured: 251e3 } }, /^pot:volume$/],
    ['a dead track', { volume: { measuredOpen: true } }, /^pot:volume$/],
  ] as const)('is a suspect as %s, ahead of all others, before any reading', (_, what, repair) => {
    const circuit = measured(what as Readonly<Record<PartId, Partial<Value<number>>>>);
    const { suspects: all } = assess(bench.evidence([], { circuit }));
    const suspects = all.filter((one) => one.repair !== 'something else');
    expect(all[0]).toBe(suspects[0]);
    expect(suspects[0]!.repair).toMatch(repair);
    // Well ahead of the next, though one entry in eighty is a probe that missed.
    expect(suspects[0]!.probability).toBeGreaterThan(5 * suspects[1]!.probability);
    // What is expected of the guitar is still what was meant.
    expect(cardOf({ circuit, meter, readings: [], repairs: [] }).jack).toEqual(
      cardOf({ circuit: bench.circuit, meter, readings: [], repairs: [] }).jack,
    );
  });

  it('that was replaced since speaks no more', () => {
    const circuit = measured({ volume: { measured: 251e3 } });
    const after = assess(bench.evidence([], { circuit, repairs: ['pot:volume'] }));
    expect(after.readings).toEqual([]);
    expect(after.recheck).toEqual([]);
    expect(after.suspects[0]!.repair).toBe('healthy');
  });

  it('starts no hunt inside: the first figure is still taken at the jack', () => {
    const circuit = measured({ bridgeCoil: { measured: 8300 } });
    for (const { ask } of assess(bench.evidence([], { circuit })).next)
      if ('red' in ask) expect(ask.red).toMatch(/^(jack|strings)[.]/);
  });
});

describe('a room whose warmth is known', () => {
  const at = bench.at('neck');
  const ask = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting: at } as const;
  const parallel = (a: number, b: number) => (a * b) / (a + b);
  const middle = ({ low, high }: { low?: number; high?: number }) => Math.sqrt(low! * high!);

  it('warms the coils by 0.393 % a kelvin (IEC 60028), and narrows their band', () => {
    const warm = { ...meter, room: celsius(30) };
    const shown = expectation(bench.circuit, warm, ask);
    const coil = 7500 * (1 + 0.00393 * 10);
    expect(middle(shown) - meter.leads).toBeCloseTo(parallel(coil + 10, 500e3 - 10), 3);
    const circuit = measured({ neckCoil: { measured: 7400, measuredAt: celsius(24) } });
    const width = (room?: number) => {
      const { low, high } = expectation(
        circuit,
        room === undefined ? meter : { ...meter, room: celsius(room) },
        ask,
      );
      return Math.log(high! / low!);
    };
    expect(width(24)).toBeLessThan(0.65 * width());
  });

  it('takes a coil measured elsewhere to this room, on the card as well', () => {
    const circuit = measured({ neckCoil: { measured: 7400, measuredAt: celsius(14) } });
    const room = celsius(29);
    const card = cardOf({ circuit, meter: { ...meter, room }, readings: [], repairs: [] });
    const coil = (7400 * (1 + 0.00393 * 9)) / (1 - 0.00393 * 6);
    const neck = card.jack.find(({ coils }) => coils.join() === 'neckCoil')!;
    expect(middle(neck.atTen.expected) - meter.leads).toBeCloseTo(
      parallel(coil + 10, 500e3 - 10),
      3,
    );
  });
});
