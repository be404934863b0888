import { add, type Complex, complex, divide, lusolve, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { Ac, type AcNetwork, NetworkError } from './index.ts';

interface Branch {
  readonly a: number;
  readonly b: number;
  readonly ohms: number;
  readonly henries?: number;
  readonly farads?: number;
  readonly coreOhms?: number;
  readonly lossTangent?: number;
}
const net = (nodes: number, branches: readonly Branch[]): AcNetwork => ({
  nodes,
  a: Int32Array.from(branches, ({ a }) => a),
  b: Int32Array.from(branches, ({ b }) => b),
  ohms: Float64Array.from(branches, ({ ohms }) => ohms),
  henries: Float64Array.from(branches, ({ henries = 0 }) => henries),
  farads: Float64Array.from(branches, ({ farads = 0 }) => farads),
  coreOhms: Float64Array.from(branches, ({ coreOhms = Infinity }) => coreOhms),
  lossTangent: Float64Array.from(branches, ({ lossTangent = 0 }) => lossTangent),
});
const size = ([re, im]: readonly [number, number]) => Math.hypot(re, im);

/** A generator of its own, so that a failure can be had again. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A tree with as many chords again, of coils, capacitors and resistors. */
function tangle(nodes: number, seed: number): AcNetwork {
  const throwOne = dice(seed);
  const between = (low: number, high: number) => low * (high / low) ** throwOne();
  const one = (a: number, b: number): Branch => {
    const kind = throwOne();
    if (kind < 0.5) return { a, b, ohms: between(1, 1e6) };
    if (kind < 0.75)
      return { a, b, ohms: Infinity, farads: between(1e-11, 1e-6), lossTangent: 0.005 };
    return {
      a,
      b,
      ohms: between(1e3, 1e4),
      henries: between(0.5, 8),
      farads: between(5e-11, 3e-10),
      coreOhms: between(1e5, 2e6),
    };
  };
  const branches = Array.from({ length: nodes - 1 }, (_, at) =>
    one(at + 1, Math.floor(throwOne() * (at + 1))),
  );
  for (let i = 0; i < nodes / 2; i += 1) {
    const [a, b] = [Math.floor(throwOne() * nodes), Math.floor(throwOne() * nodes)];
    if (a !== b) branches.push(one(a, b));
  }
  return net(nodes, branches);
}

describe('at one frequency', () => {
  it('a series circuit of 0.12 H, 480 nF and 23 ohm resonates at 663.15 Hz with Q 21.74 (worked example, recomputed)', () => {
    // Driven between its ends: 23 ohm at resonance, sqrt(2) times that at f0 (1 +- 1 / 2 Q) to first order.
    const series = net(3, [
      { a: 0, b: 1, ohms: 23, henries: 0.12 },
      { a: 1, b: 2, ohms: Infinity, farads: 480e-9 },
    ]);
    const ac = new Ac(series, [], 0, 2);
    const at = (hertz: number) => size(ac.solve(hertz).voltage(0, 2));
    const swept = Array.from({ length: 4001 }, (_, i) => 600 + i * 0.05);
    const least = swept.reduce((best, hertz) => (at(hertz) < at(best) ? hertz : best));
    expect(least).toBeCloseTo(663.15, 1);
    expect(at(663.1456)).toBeCloseTo(23, 4);
    // Half power where the impedance is sqrt(2) R: the band between is f0 / Q (textbook).
    const band = swept.filter((hertz) => at(hertz) <= Math.SQRT2 * 23);
    expect(663.1456 / ((band.at(-1) as number) - (band[0] as number))).toBeCloseTo(21.74, 1);
    // The voltage over the capacitance is Q times the EMF in the coil.
    ac.solve(663.1456);
    const [re, im] = ac.transfer(0);
    expect(Math.hypot(re, im)).toBeCloseTo(1, 9);
    expect(size(ac.voltage(1, 2)) / 23).toBeCloseTo(21.74, 2);
  });

  // Potentiometer of R with a load of n R on its wiper: deviation from linear x (1 - x) x / (x (1 - x) + n), greatest share of the
  // full voltage 6.673, 0.7326, 0.1478 % (textbook, loaded divider).
  it.each([
    [2, 6.673],
    [20, 0.7326],
    [100, 0.1478],
  ])('a pot loaded by %d times its track is at most %f percent off linear', (ratio, most) => {
    const deviations = Array.from({ length: 999 }, (_, i) => {
      const turn = (i + 1) / 1000;
      const pot = net(3, [
        { a: 0, b: 1, ohms: 1e5 * (1 - turn) },
        { a: 1, b: 2, ohms: 1e5 * turn },
      ]);
      const load = { from: 1, to: 2, ohms: ratio * 1e5, farads: 0 };
      // 1 A into the top: the share of the voltage that is on the wiper.
      const ac = new Ac(pot, [load], 0, 2).solve(1000);
      return turn - ac.voltage(1, 2)[0] / ac.voltage(0, 2)[0];
    });
    expect(100 * Math.max(...deviations)).toBeCloseTo(most, 3);
  });

  it('the core of a coil loses what a resistance across its inductance alone loses', () => {
    // At x = core: j x parallel to x is (x + j x) / 2 (textbook).
    const x = 2 * Math.PI * 1000 * 2.5;
    const coil = net(2, [{ a: 0, b: 1, ohms: 5000, henries: 2.5, coreOhms: x }]);
    const [re, im] = new Ac(coil, [], 0, 1).solve(1000).voltage(0, 1);
    expect(re).toBeCloseTo(5000 + x / 2, 6);
    expect(im).toBeCloseTo(x / 2, 6);
  });

  it('a capacitor with loss has its loss tangent as the ratio of the two parts of its admittance', () => {
    const film = net(2, [{ a: 0, b: 1, ohms: Infinity, farads: 22e-9, lossTangent: 0.005 }]);
    const [re, im] = new Ac(film, [], 0, 1).solve(440).voltage(0, 1);
    expect(re / -im).toBeCloseTo(0.005, 9);
  });

  it('is a teraohm between points that nothing joins, and 0 between joined ones', () => {
    const apart = net(4, [
      { a: 0, b: 1, ohms: 0 },
      { a: 2, b: 3, ohms: 100 },
    ]);
    expect(size(new Ac(apart, [], 0, 2).solve(1000).voltage(0, 2))).toBe(1e12);
    expect(new Ac(apart, [], 0, 2).solve(1000).transfer(1)).toEqual([0, 0]);
    expect(size(new Ac(apart, [], 0, 1).solve(1000).voltage(0, 1))).toBe(0);
  });

  it('turns away a frequency that is none', () => {
    const one = net(2, [{ a: 0, b: 1, ohms: 1 }]);
    for (const frequency of [0, -1, Number.NaN])
      expect(() => new Ac(one, [], 0, 1).solve(frequency)).toThrow(NetworkError);
    expect(() => new Ac(one, [], 0, 1).solve(0)).toThrow('a frequency should be above 0 Hz, got 0');
  });
});

describe('against a general elimination (mathjs)', () => {
  it.each([2, 5, 12, 30])('agrees on random networks of %d nodes', (nodes) => {
    for (let seed = 1; seed <= 4; seed += 1) {
      const network = tangle(nodes, seed * 97 + nodes);
      const hertz = [20, 1000, 20_000][seed % 3] as number;
      const ac = new Ac(network, [], nodes - 1, 0).solve(hertz);
      const expected = byElimination(network, hertz, nodes - 1);
      for (let node = 1; node < nodes; node += 1) {
        const [re, im] = ac.voltage(node, 0);
        const other = expected(node);
        // Of the largest voltage there is: a general elimination loses digits where ohms stand beside megohms, too.
        expect(Math.hypot(re - other[0], im - other[1])).toBeLessThan(
          1e-9 * size(expected(nodes - 1)),
        );
      }
    }
  });

  it.each([30, 60, 100])('keeps the balance of currents at every one of %d nodes', (nodes) => {
    for (let seed = 1; seed <= 6; seed += 1) {
      const network = tangle(nodes, seed * 89 + nodes);
      const hertz = [20, 1000, 20_000][seed % 3] as number;
      const ac = new Ac(network, [], nodes - 1, 0).solve(hertz);
      const into = Array.from({ length: nodes }, () => [0, 0, 0] as [number, number, number]);
      for (let i = 0; i < network.ohms.length; i += 1) {
        const [arm, farads] = [ac.transfer(i), ac.throughFarads(i)];
        for (const [node, sign] of [
          [network.a[i]!, 1],
          [network.b[i]!, -1],
        ] as const) {
          into[node]![0] += sign * (arm[0] + farads[0]);
          into[node]![1] += sign * (arm[1] + farads[1]);
          into[node]![2] += size(arm) + size(farads);
        }
      }
      into[0]![0] += 1;
      into[nodes - 1]![0] -= 1;
      for (const [re, im, all] of into) expect(Math.hypot(re, im)).toBeLessThan(1e-7 * (1 + all));
    }
  });

  it('is the same whichever pair is driven: reciprocity', () => {
    const network = tangle(40, 5);
    const forth = new Ac(network, [], 7, 0).solve(1500).voltage(31, 0);
    const back = new Ac(network, [], 31, 0).solve(1500).voltage(7, 0);
    expect(forth[0]).toBeCloseTo(back[0], 6);
    expect(forth[1]).toBeCloseTo(back[1], 6);
  });
});

/** Nodal equations with node 0 as zero, solved by mathjs: [[G, -B], [B, G]] (real, imaginary) = (1, 0). */
function byElimination(
  network: AcNetwork,
  hertz: number,
  driven: number,
): (node: number) => readonly [number, number] {
  const omega = 2 * Math.PI * hertz;
  const size = network.nodes - 1;
  const y = Array.from({ length: 2 * size }, () => new Array<number>(2 * size).fill(0));
  for (let i = 0; i < network.ohms.length; i += 1) {
    const [r, l, c] = [network.ohms[i]!, network.henries[i]!, network.farads[i]!];
    const core = network.coreOhms[i]!;
    const x = complex(0, omega * l);
    const inner = l > 0 && core < Infinity ? divide(multiply(x, core), add(x, core)) : x;
    const arm = r === Infinity ? complex(0, 0) : divide(1, add(inner, r));
    const all = add(
      arm,
      complex(omega * c * network.lossTangent[i]!, omega * c),
    ) as unknown as Complex;
    const [p, q] = [network.a[i]! - 1, network.b[i]! - 1];
    for (const [row, column, sign] of [
      [p, p, 1],
      [q, q, 1],
      [p, q, -1],
      [q, p, -1],
    ] as const) {
      if (row < 0 || column < 0) continue;
      y[row]![column]! += sign * all.re;
      y[row + size]![column + size]! += sign * all.re;
      y[row + size]![column]! += sign * all.im;
      y[row]![column + size]! -= sign * all.im;
    }
  }
  const right = Array.from({ length: 2 * size }, (_, at) => (at === driven - 1 ? 1 : 0));
  const solved = (lusolve(y, right) as number[][]).map(([one]) => one!);
  return (node) => [solved[node - 1]!, solved[node - 1 + size]!];
}
