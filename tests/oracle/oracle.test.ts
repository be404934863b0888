import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Pot } from '../../src/circuit/parts/part.ts';
import { farads, henries, ohms } from '../../src/circuit/units.ts';
import {
  allPairs,
  lugsOf,
  magnitudes,
  resistances,
  responses,
  shareAt,
  spiceNetlist,
  tapTransfer,
} from './index.ts';

/** A coil of 7500 ohm straight to a jack, a volume pot of 500 k across it with its wiper to nothing. */
const bench: Circuit = {
  id: 'bench',
  title: 'one coil, one pot',
  parts: [
    {
      kind: 'coil',
      id: 'coil',
      title: 'coil',
      ohms: { nominal: ohms(7500), tolerance: 0.1 },
      henries: henries(0.12),
      selfFarads: farads(480e-9),
      winding: 1,
      magnet: 1,
      place: 'single',
      ends: 'eyelets',
    },
    {
      kind: 'pot',
      id: 'volume',
      title: 'volume',
      ohms: { nominal: ohms(500e3), tolerance: 0.2 },
      taper: 'linear',
      midShare: 0.15,
      role: 'volume',
    },
    { kind: 'jack', id: 'jack', title: 'jack', ring: false },
  ],
  leads: [
    { id: 'hot', kind: 'pickup', from: 'coil.finish', to: 'volume.3' },
    { id: 'cold', kind: 'pickup', from: 'coil.start', to: 'volume.1' },
    { id: 'tip', kind: 'wire', from: 'volume.2', to: 'jack.tip' },
    { id: 'ground', kind: 'wire', from: 'volume.1', to: 'jack.sleeve' },
    { id: 'second ground', kind: 'wire', from: 'coil.start', to: 'jack.sleeve' },
  ],
  pickups: [],
};
const at = (knob: number, lifted: string[] = []): Setting => ({
  positions: {},
  knobs: { volume: knob },
  plug: 'out',
  lifted,
});
const jack = ['jack.tip', 'jack.sleeve'] as const;
const parallel = (a: number, b: number) => (a * b) / (a + b);

describe('the netlist for the simulator', () => {
  it('has a coil in parallel with its volume pot at the jack, 10 ohm of the track at the end', () => {
    const netlist = spiceNetlist(bench, at(10));
    // 10 ohm of the track above the wiper, the rest of 500 k below it.
    expect(resistances(netlist, [jack])[0]).toBeCloseTo(parallel(499_990, 10 + 7500), 6);
  });

  it('peaks at a quarter of pot plus pickup while the knob turns, recomputed by hand', () => {
    // Lower part equal to upper part plus pickup: share 0.5 + 7500 / (2 * 500 k), through the end resistances.
    const share = (250e3 + 7500 / 2 - 10) / (500e3 - 20);
    const netlist = spiceNetlist(bench, at(share * 10));
    expect(resistances(netlist, [jack])[0]).toBeCloseTo((500_000 + 7500) / 4, 3);
  });

  it('shows a lifted joint, an opened winding and an open pot lug as open', () => {
    const pairs = [jack, ['volume.case', 'jack.tip'], ['tip@to', 'jack.tip']] as const;
    const lifted = resistances(spiceNetlist(bench, at(10, ['tip@to'])), pairs);
    expect([...lifted]).toEqual([Infinity, Infinity, Infinity]);
    const broken = spiceNetlist(bench, at(10), [{ op: 'open', site: 'coil:winding' }]);
    expect(resistances(broken, [jack])[0]).toBeCloseTo(499_990, 4);
  });

  it('moves what is soldered: land, exchange, bridge, resist, scale', () => {
    const read = (...edits: Parameters<typeof spiceNetlist>[2] & object) =>
      resistances(spiceNetlist(bench, at(10), edits), [jack])[0]!;
    // The wiper's wire on lug 3 sees the coil under the whole track.
    expect(read({ op: 'land', joint: 'tip@from', lug: 'volume.3' })).toBeCloseTo(
      parallel(500e3, 7500),
      6,
    );
    // Outer lugs swapped: at full turn the wiper is 10 ohm above ground.
    expect(read({ op: 'exchange', lugs: ['volume.1', 'volume.3'] })).toBeCloseTo(
      parallel(10, 507_490),
      6,
    );
    expect(read({ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0) })).toBeCloseTo(
      0,
      9,
    );
    const healthy = read();
    expect(read({ op: 'resist', site: 'tip', ohms: ohms(1234) })).toBeCloseTo(healthy + 1234, 6);
    expect(read({ op: 'scale', part: 'volume', factor: 0.5 })).toBeCloseTo(
      parallel(249_990, 10 + 7500),
      6,
    );
    // One of two ground wires is no loss.
    expect(read({ op: 'open', site: 'ground' })).toBeCloseTo(healthy, 6);
  });

  it('names what it does not know', () => {
    expect(() => spiceNetlist(bench, at(10), [{ op: 'open', site: 'cold@middle' }])).toThrow(
      'cold@middle',
    );
    expect(() => spiceNetlist(bench, at(11))).toThrow('volume the knob figure 11');
  });

  it('turns an audio taper in two straight segments, and mirrors it for reverse audio', () => {
    const pot = bench.parts[1] as Pot;
    const shares = (taper: Pot['taper']) =>
      [0, 2.5, 5, 7.5, 10].map((knob) => shareAt({ ...pot, taper }, knob));
    expect(shares('linear')).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(shares('audio')).toEqual([0, 0.075, 0.15, 0.575, 1]);
    expect(shares('reverse-audio')).toEqual([0, 0.42500000000000004, 0.85, 0.925, 1]);
  });
});

describe('the simulator', () => {
  it('gives the sign and share of an EMF: finish above start, swapped coil leads the other way', () => {
    const share = 499_990 / (499_990 + 10 + 7500);
    expect(tapTransfer(spiceNetlist(bench, at(10)), 'coil', ...jack)).toBeCloseTo(share, 9);
    const swapped = spiceNetlist(bench, at(10), [
      { op: 'exchange', lugs: ['coil.start', 'coil.finish'] },
    ]);
    expect(tapTransfer(swapped, 'coil', ...jack)).toBeCloseTo(-share, 9);
    const open = spiceNetlist(bench, at(10), [{ op: 'open', site: 'coil:winding' }]);
    expect(tapTransfer(open, 'coil', ...jack)).toBe(0);
  });

  it('resonates where L and C say: 0.12 H and 480 nF at 663.15 Hz (recomputed)', () => {
    const hertz = 1 / (2 * Math.PI * Math.sqrt(0.12 * 480e-9));
    expect(hertz).toBeCloseTo(663.15, 2);
    // 23 ohm of copper: the voltage at the capacitance is Q = 21.74 times the EMF, with nothing else attached.
    const netlist = spiceNetlist(bench, at(10, ['hot@from']), [], {
      values: { coil: 23 },
      lossless: true,
    });
    const across = ['coil.finish', 'coil.start'] as const;
    const [response] = responses(
      [{ netlist, drive: { emfs: { coil: 1 } }, loads: [], across }],
      [hertz],
    );
    expect(magnitudes(response!)[0]).toBeCloseTo(Math.sqrt(0.12 / 480e-9) / 23, 4);
    expect(Math.sqrt(0.12 / 480e-9) / 23).toBeCloseTo(21.74, 2);
  });

  it.each(startingWirings.map((wiring) => [wiring.id, wiring.build()] as const))(
    'reads the same whether %s has its ideal joins merged or written as 0 V sources',
    (_, circuit) => {
      const setting: Setting = {
        positions: Object.fromEntries(
          circuit.parts.flatMap((part) =>
            part.kind === 'switch' ? [[part.id, part.positions[0]!.name]] : [],
          ),
        ),
        knobs: Object.fromEntries(
          circuit.parts.flatMap((part) => (part.kind === 'pot' ? [[part.id, 7]] : [])),
        ),
        plug: 'out',
        lifted: [],
      };
      const jobs = [{ netlist: spiceNetlist(circuit, setting), nodes: lugsOf(circuit) }];
      const [merged] = allPairs(jobs, 'merged');
      const [sources] = allPairs(jobs, 'sources');
      merged!.ohms.forEach((reading, pair) => {
        const other = sources!.ohms[pair]!;
        if (reading === Infinity) expect(other).toBe(Infinity);
        else expect(Math.abs(reading - other)).toBeLessThanOrEqual(1e-8 * reading + 1e-6);
      });
    },
  );
});
