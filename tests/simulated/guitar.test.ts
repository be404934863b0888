import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { threeSinglesFivePosition } from '../../src/circuit/catalog/three-singles-five-position.ts';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { ohms } from '../../src/circuit/units.ts';
import type { Ask, Seen } from '../../src/readings/reading.ts';
import { type SimulationOptions, simulate } from './index.ts';

const single = oneHumbuckerOneKnob();
const triple = threeSinglesFivePosition();

function full(circuit: Circuit, position?: string, knob = 10): Setting {
  return {
    positions: Object.fromEntries(
      circuit.parts.flatMap((part) =>
        part.kind === 'switch' ? [[part.id, position ?? part.positions[0]!.name]] : [],
      ),
    ),
    knobs: Object.fromEntries(
      circuit.parts.flatMap((part) => (part.kind === 'pot' ? [[part.id, knob]] : [])),
    ),
    plug: 'out',
    lifted: [],
  };
}
const atJack = { red: 'jack.tip', black: 'jack.sleeve' } as const;
const ohmsAtJack = (circuit: Circuit, position?: string, knob = 10): Ask => ({
  kind: 'ohms',
  ...atJack,
  setting: full(circuit, position, knob),
});
const figure = (seen: Seen) =>
  seen.kind === 'ohms' ? (seen.ohms === 'open' ? Infinity : seen.ohms) : Number.NaN;
/** Answers of many guitars to one ask. */
const many = (
  circuit: Circuit,
  edits: readonly Edit[],
  ask: Ask,
  count: number,
  options?: SimulationOptions,
) =>
  Array.from({ length: count }, (_, seed) => simulate(circuit, edits, seed, options).answer(ask));

// Each answer is one run of the simulator, about 10 ms.
// Hundreds of runs of a circuit simulator a test: a busy machine takes three times as long as an idle one.
describe('a simulated guitar', { timeout: 90_000 }, () => {
  it('is the same for the same seed, and answers alike in any order of asks', () => {
    const asks = ['1', '3', '5'].map((position) => ohmsAtJack(triple, position));
    const options = { wrongEntries: 0.3 };
    const [one, other] = [simulate(triple, [], 7, options), simulate(triple, [], 7, options)];
    const forth = asks.map((ask) => one.answer(ask));
    const back = [...asks].reverse().map((ask) => other.answer(ask));
    expect(back.reverse()).toEqual(forth);
    expect(one.meter).toEqual(other.meter);
    const seeds = many(triple, [], asks[0]!, 20).map(figure);
    expect(new Set(seeds).size).toBeGreaterThan(10);
  });

  it('reads around the intended figure when healthy: within the spread of coil, copper and meter', () => {
    // The coils and an end of the track, in parallel with the rest of 500 k; +-8 % coil, -3.1 to +3.9 % copper, 1.5 % meter.
    const coil = single.parts
      .filter((part) => part.kind === 'coil')
      .reduce((sum, part) => sum + part.ohms.nominal, 0);
    const nominal = 1 / (1 / (coil + 10) + 1 / 499_990);
    const seen = many(single, [], ohmsAtJack(single), 60).map(figure);
    expect(Math.min(...seen)).toBeGreaterThan(nominal * 0.87);
    expect(Math.max(...seen)).toBeLessThan(nominal * 1.14);
    const mean = seen.reduce((a, b) => a + b) / seen.length;
    expect(mean / nominal).toBeCloseTo(1, 1);
    const deviation =
      Math.sqrt(seen.reduce((sum, x) => sum + (x - mean) ** 2, 0) / seen.length) / mean;
    expect(deviation).toBeGreaterThan(0.015);
    expect(deviation).toBeLessThan(0.06);
  });

  it('shows a pot where a coil is open, and beeps through a joint of 3 ohm but not of 300', () => {
    const open = many(
      single,
      [{ op: 'open', site: 'bridgeScrew:winding' }],
      ohmsAtJack(single),
      30,
    ).map(figure);
    for (const seen of open) {
      expect(seen).toBeGreaterThan(390e3);
      expect(seen).toBeLessThan(610e3);
    }
    const ground = single.leads.find(({ to }) => to === 'jack.sleeve')!;
    const other = ground.from;
    const beep = { kind: 'beep', red: 'jack.sleeve', black: other, setting: full(single) } as const;
    const joint = (value: number): Edit[] => [
      { op: 'resist', site: `${ground.id}@to`, ohms: ohms(value) },
    ];
    const beeps = (seen: Seen) => seen.kind === 'beep' && seen.beeps;
    expect(many(single, joint(3), beep, 20).every(beeps)).toBe(true);
    expect(many(single, joint(300), beep, 20).some(beeps)).toBe(false);
  });

  it('rounds to the counts of its range and shows nothing beyond its limit', () => {
    const pot = single.parts.find(({ kind }) => kind === 'pot')!;
    const { parts } = single;
    const huge: Circuit = {
      ...single,
      parts: parts.map((part) =>
        part.kind === 'pot' ? { ...part, ohms: { nominal: ohms(30e6), tolerance: 0.2 } } : part,
      ),
    };
    const across: Ask = {
      kind: 'ohms',
      red: `${pot.id}.1`,
      black: `${pot.id}.3`,
      setting: {
        ...full(single),
        lifted: single.leads.flatMap(({ id }) => [`${id}@from`, `${id}@to`]),
      },
    };
    for (let seed = 0; seed < 30; seed++) {
      const guitar = simulate(huge, [], seed);
      const seen = figure(guitar.answer(across));
      expect(seen < Infinity).toBe(guitar.meter.limit === 40e6);
      const small = figure(simulate(single, [], seed).answer(ohmsAtJack(single)));
      expect(small % 10).toBeCloseTo(0, 6);
    }
  });

  it('shows fingers on both tips as roughly a megohm, where they were asked for', () => {
    const ask: Ask = { kind: 'ohms', red: 'jack.tip', black: 'volume.case', setting: full(single) };
    const lifted = { ...ask, setting: { ...ask.setting, lifted: ['jackHot@to'] } };
    const readings = many(single, [], lifted, 20, { fingers: 1 }).map(figure);
    const limits = Array.from({ length: 20 }, (_, seed) => simulate(single, [], seed).meter.limit);
    readings.forEach((reading, seed) => {
      expect(reading).toBeGreaterThan(0.38e6);
      if (limits[seed]! > 2e6) expect(reading).toBeLessThan(2.6e6);
    });
    expect(many(single, [], lifted, 5).map(figure)).toEqual(Array(5).fill(Infinity));
  });

  it('leaves 10 ohm of the track at the end stop as stated, or 1 to 100 ohm as drawn', () => {
    const ask: Ask = { kind: 'ohms', ...atJack, setting: full(single, undefined, 0) };
    const stated = many(single, [], ask, 20, { trackEnds: 'stated' }).map(figure);
    expect(Math.min(...stated)).toBeGreaterThan(9.9);
    expect(Math.max(...stated)).toBeLessThan(11.5);
    const drawn = many(single, [], ask, 20).map(figure);
    expect(Math.min(...drawn)).toBeGreaterThan(0.9);
    expect(Math.max(...drawn)).toBeLessThan(103);
  });

  it('jumps when a worn pot is turned, and sticks when the knob does nothing', () => {
    const pot = single.parts.find((part) => part.kind === 'pot' && part.role === 'volume')!;
    const turn = { kind: 'turn', pot: pot.id, ...atJack, setting: full(single) } as const;
    const share = (edits: Edit[], how: string) =>
      many(single, edits, turn, 25).filter((seen) => seen.kind === 'turn' && seen.how === how)
        .length / 25;
    expect(share([{ op: 'worn', part: pot.id }], 'jumps')).toBeGreaterThan(0.7);
    expect(share([], 'smooth')).toBeGreaterThan(0.85);
    expect(
      share([{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.2) }], 'stuck'),
    ).toBe(1);
    // Peak (R_pot + R_pickup) / 4, recomputed by hand: about 127 k here.
    for (const seen of many(single, [], turn, 20)) {
      const peak = seen.kind === 'turn' ? Number(seen.peak) : Number.NaN;
      expect(peak).toBeGreaterThan(0.79 * 127e3);
      expect(peak).toBeLessThan(1.21 * 127e3);
    }
  });

  it('jumps when the loose wire is flexed, on the path alone', () => {
    const hot = single.leads.find(({ to }) => to === 'jack.tip')!;
    const strings = single.leads.find(({ from, to }) => /strings/.test(from + to))!;
    const share = (loose: string, flexed: string) => {
      const ask: Ask = { kind: 'flex', site: flexed, ...atJack, setting: full(single) };
      const edits: Edit[] = [{ op: 'intermittent', site: loose }];
      return (
        many(single, edits, ask, 40).filter((seen) => seen.kind === 'flex' && seen.how === 'jumps')
          .length / 40
      );
    };
    expect(share(`${hot.id}@to`, hot.id)).toBeGreaterThan(0.7);
    expect(share(`${hot.id}@to`, `${strings.id}@to`)).toBeLessThan(0.15);
    expect(share(`${strings.id}@to`, strings.id)).toBeLessThan(0.15);
  });

  it('taps both coils of a humbucker to one sign, and a coil with its leads swapped to the other', () => {
    const coils = single.parts.filter((part) => part.kind === 'coil').map(({ id }) => id);
    const sign = (seen: Seen) =>
      seen.kind === 'tap' ? { plus: 1, minus: -1, nothing: 0 }[seen.swing] : Number.NaN;
    const agreement = (edits: Edit[]) => {
      let sum = 0;
      for (let seed = 0; seed < 16; seed++) {
        const guitar = simulate(single, edits, seed);
        const [a, b] = coils.map((coil) =>
          sign(guitar.answer({ kind: 'tap', coil, ...atJack, setting: full(single) })),
        );
        sum += a! * b!;
      }
      return sum / 16;
    };
    expect(agreement([])).toBeGreaterThan(0.6);
    expect(agreement([{ op: 'turn-magnet', coil: coils[0]! }])).toBeLessThan(-0.6);
    const reversed: Edit = { op: 'exchange', lugs: [`${coils[0]}.start`, `${coils[0]}.finish`] };
    expect(agreement([reversed])).toBeLessThan(-0.6);
    const dead: Edit = { op: 'open', site: `${coils[0]}:winding` };
    expect(Math.abs(agreement([dead]))).toBeLessThan(0.2);
  });

  it('hears silence, weakness and thinness where they should be, and mostly normal when healthy', () => {
    const share = (edits: Edit[], word: string, setting = full(single)) =>
      many(single, edits, { kind: 'listen', setting }, 16).filter(
        (seen) => seen.kind === 'listen' && seen.heard === word,
      ).length / 16;
    expect(share([], 'normal')).toBeGreaterThan(0.8);
    const hot = single.leads.find(({ to }) => to === 'jack.tip')!;
    expect(
      share([{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) }], 'silent'),
    ).toBeGreaterThan(0.8);
    expect(share([{ op: 'open', site: hot.id }], 'silent')).toBeGreaterThan(0.8);
    // Also where the jack is joined to nothing else: its own two lugs on each other are a shorted input.
    const sleeveLeads = single.leads.filter(({ from, to }) => [from, to].includes('jack.sleeve'));
    const shortedAlone: Edit[] = [
      ...[hot, ...sleeveLeads].map(({ id }): Edit => ({ op: 'open', site: id })),
      { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) },
    ];
    expect(share(shortedAlone, 'silent')).toBeGreaterThan(0.8);
    const coils = single.parts.filter((part) => part.kind === 'coil').map(({ id }) => id);
    // Two coils against each other: the string's signal cancels, all but the coils' difference.
    const reversed: Edit = { op: 'exchange', lugs: [`${coils[0]}.start`, `${coils[0]}.finish`] };
    expect(share([reversed], 'normal')).toBeLessThan(0.2);
    // High notes reach the two coils at different times: what is left is thin, and not nothing.
    expect(share([reversed], 'silent')).toBeLessThan(0.2);
    // An open coil still passes treble through its own capacitance.
    expect(share([{ op: 'open', site: `${coils[0]}:winding` }], 'thin')).toBeGreaterThan(0.7);
  });

  it('takes hum down by the strings when they are grounded, and not when their wire is off', () => {
    const touch = {
      kind: 'touch',
      metal: 'strings.metal',
      setting: { ...full(single), plug: 'in' },
    } as const;
    const strings = single.leads.find(({ from, to }) => /strings/.test(from + to))!;
    const down = (edits: Edit[]) =>
      many(single, edits, touch, 40).filter((seen) => seen.kind === 'touch' && seen.hum === 'down')
        .length / 40;
    expect(down([])).toBeGreaterThan(0.8);
    expect(down([{ op: 'open', site: strings.id }])).toBeLessThan(0.15);
  });

  it('hears hum where a hand feeds it in: strings on the hot, ground cold at the jack, and not with a bad string wire', () => {
    const setting = full(single);
    const plugged = { ...setting, plug: 'in' } as const;
    const strings = single.leads.find(({ from, to }) => /strings/.test(from + to))!;
    const ground = single.leads.find(({ to }) => to === 'jack.sleeve')!;
    const share = (edits: Edit[], ask: Ask, word: string) =>
      many(single, edits, ask, 12).filter((seen) => JSON.stringify(seen).includes(word)).length /
      12;
    const touch: Ask = { kind: 'touch', metal: 'strings.metal', setting: plugged };
    const listen: Ask = { kind: 'listen', setting };
    const onHot: Edit[] = [{ op: 'land', joint: `${strings.id}@to`, lug: 'volume.3' }];
    const coldJack: Edit[] = [{ op: 'resist', site: `${ground.id}@to`, ohms: ohms(8000) }];
    const coldStrings: Edit[] = [{ op: 'resist', site: `${strings.id}@to`, ohms: ohms(8000) }];
    for (const edits of [onHot, coldJack]) {
      expect(share(edits, touch, 'up')).toBeGreaterThan(0.7);
      expect(share(edits, listen, 'hum')).toBeGreaterThan(0.7);
    }
    expect(share(coldStrings, touch, 'up')).toBeLessThan(0.2);
    expect(share(coldStrings, listen, 'hum')).toBeLessThan(0.2);
    // With the volume down the output is shorted to the sleeve, and nothing is heard of the strings on its outer lug.
    const down: Ask = {
      kind: 'listen',
      setting: { ...setting, knobs: { ...setting.knobs, volume: 0 } },
    };
    expect(share(onHot, down, 'silent')).toBeGreaterThan(0.7);
  });

  it('sees a bridge of solder in the stated share of looks', () => {
    const look = { kind: 'look', at: 'jack', setting: full(single) } as const;
    const bridge: Edit = { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.2) };
    const found = many(single, [bridge], look, 400, { finds: 0.7 }).filter(
      (seen) => seen.kind === 'look' && seen.how === 'bridged',
    ).length;
    expect(found / 400).toBeGreaterThan(0.62);
    expect(found / 400).toBeLessThan(0.78);
  });

  it('sees a lead on a wrong lug where it should be, in the stated share of looks', () => {
    const hot = single.leads.find(({ to }) => to === 'jack.tip')!;
    const look = { kind: 'look', at: `${hot.id}@to`, setting: full(single) } as const;
    const astray: Edit = { op: 'land', joint: `${hot.id}@to`, lug: 'jack.sleeve' };
    const share = (edits: Edit[]) =>
      many(single, edits, look, 400, { finds: 0.7 }).filter(
        (seen) => seen.kind === 'look' && seen.how === 'elsewhere',
      ).length / 400;
    expect(share([astray])).toBeGreaterThan(0.62);
    expect(share([astray])).toBeLessThan(0.78);
    expect(share([])).toBeLessThan(0.04);
  });

  it('measures a capacitor with a leg lifted, and names one that is shorted or has lost its body', () => {
    const cap = single.parts.find((part) => part.kind === 'capacitor');
    const wired = cap ? single : triple;
    const { id, farads: value } = wired.parts.find((part) => part.kind === 'capacitor')!;
    const leg = wired.leads.find(({ from, to }) => from === `${id}.b` || to === `${id}.b`)!;
    const joint = leg.from === `${id}.b` ? `${leg.id}@to` : `${leg.id}@from`;
    const ask: Ask = {
      kind: 'farads',
      part: id,
      red: `${id}.a`,
      black: `${id}.b`,
      setting: { ...full(wired), lifted: [joint] },
    };
    for (const seen of many(wired, [], ask, 20)) {
      const read = seen.kind === 'farads' ? Number(seen.farads) : Number.NaN;
      expect(Math.abs(read / value.nominal - 1)).toBeLessThan(0.14);
    }
    const [open] = many(wired, [{ op: 'open', site: `${id}:body` }], ask, 1);
    expect(open).toEqual({ kind: 'farads', farads: 'open' });
    const short: Edit = { op: 'bridge', a: `${id}.a`, b: `${id}.b`, ohms: ohms(1) };
    expect(many(wired, [short], ask, 1)).toEqual([{ kind: 'farads', farads: 'short' }]);
  });

  it('makes wrong entries at the stated share, none by default, and half of them again', () => {
    const ask = ohmsAtJack(triple);
    let first = 0;
    let again = 0;
    for (let seed = 0; seed < 120; seed++) {
      const guitar = simulate(triple, [], seed, { wrongEntries: 0.3 });
      guitar.answer(ask);
      if (guitar.slips[0] === undefined) continue;
      first += 1;
      guitar.answer(ask);
      if (guitar.slips[1] === guitar.slips[0]) again += 1;
    }
    expect(first / 120).toBeGreaterThan(0.22);
    expect(first / 120).toBeLessThan(0.42);
    // Half by habit, and 0.3 / 4 of the other half by chance.
    expect(again / first).toBeGreaterThan(0.32);
    expect(again / first).toBeLessThan(0.76);
    const honest = simulate(triple, [], 1);
    for (let time = 0; time < 5; time++) honest.answer(ask);
    expect(honest.slips.every((slip) => slip === undefined)).toBe(true);
  });
});
