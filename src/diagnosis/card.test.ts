import { describe, expect, it } from 'vitest';
import { withBleed } from '../circuit/catalog/modifications/fitted-bleed.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Switch } from '../circuit/parts/part.ts';
import { switchSettings } from '../circuit/setting.ts';
import { farads, ohms } from '../circuit/units.ts';
import { type Card, cardOf } from './card.ts';
import { settingsOf, standsOf } from './card-stands.ts';
import { Bench, meter } from './evidence.fixture.ts';

const two = new Bench('two-pickups-shared-controls');
const one = new Bench('one-humbucker-one-knob');
const cardFor = ({ circuit }: Bench, readings: Parameters<typeof cardOf>[0]['readings'] = []) =>
  cardOf({ circuit, meter, readings, repairs: [] });

/** A switch that is wired to nothing. */
const idle = (id: string, positions = 2): Switch => ({
  kind: 'switch',
  id,
  title: id,
  style: 'mini-toggle',
  positions: Array.from({ length: positions }, (_, at) => ({
    name: `p${at}`,
    title: `place ${at}`,
    joins: at === 0 ? [] : [['A', 'B']],
  })),
  rows: [['A', 'B']],
  frame: false,
});
const withIdle = (circuit: Circuit, count: number): Circuit => ({
  ...circuit,
  parts: [...circuit.parts, ...Array.from({ length: count }, (_, at) => idle(`idle${at}`))],
});

describe('the rows of the jack', () => {
  it('are one a figure, knobs at 10 beside knobs at 0, and name the coils that are heard', () => {
    const { jack, rowsBy } = cardFor(two);
    expect(rowsBy).toBe('figure');
    expect(jack.map(({ coils }) => coils)).toEqual([
      ['neckCoil'],
      ['neckCoil', 'bridgeCoil'],
      ['bridgeCoil'],
    ]);
    expect(jack.map(({ stands }) => stands)).toEqual([
      [{ selector: ['neck'] }],
      [{ selector: ['both'] }],
      [{ selector: ['bridge'] }],
    ]);
    for (const { atTen, atZero } of jack) {
      expect(atTen.ask.setting.knobs).toEqual({ volume: 10, tone: 10 });
      expect(atZero.ask.setting.knobs).toEqual({ volume: 0, tone: 0 });
      expect(atTen.beeps).toBe('no');
      // Ohms stay at the stop of a pot: one meter beeps, another does not.
      expect(atZero.beeps).toBe('some');
    }
  });

  it('stay as few when switches are added that change nothing', () => {
    const circuit = withIdle(two.circuit, 6);
    const { jack, thrown } = cardOf({ circuit, meter, readings: [], repairs: [] });
    expect(thrown).toBeUndefined();
    expect(jack.map(({ stands, settings }) => [stands, settings])).toEqual([
      [[{ selector: ['neck'] }], 64],
      [[{ selector: ['both'] }], 64],
      [[{ selector: ['bridge'] }], 64],
    ]);
  });

  it('say how many switches were thrown where there are too many settings to look at all', () => {
    const circuit = withIdle(two.circuit, 12);
    const { jack, thrown } = cardOf({ circuit, meter, readings: [], repairs: [] });
    expect(thrown).toBe(2);
    // At rest; one of 12 or one of the selector's other two; two of them.
    expect(settingsOf(circuit).list).toHaveLength(1 + 14 + (66 + 24));
    expect(jack.map(({ stands }) => stands)).toEqual([
      [{ selector: ['neck'] }],
      [{ selector: ['both'] }],
      [{ selector: ['bridge'] }],
    ]);
  });

  it('are put together by coils where figures are too many, and by their number where coils are', () => {
    const six = manyCoils(6);
    const { jack, rowsBy } = cardOf({ circuit: six, meter, readings: [], repairs: [] });
    expect(rowsBy).toBe('number of coils');
    // None, 6 alone, 15 pairs, and one row each for 3, 4, 5 and 6 coils.
    expect(jack).toHaveLength(1 + 6 + 15 + 4);
    const three = jack.find(({ settings }) => settings === 20)!;
    expect(three.atTen.expected.text).toMatch(/^between .* and /);
    // Three of coils of 4 to 6.5 k in parallel.
    expect(three.merged).toBe(20);
    const each = [4000, 4500, 5000, 5500, 6000, 6500];
    const parallel = (...all: number[]) => 1 / all.reduce((sum, r) => sum + 1 / r, 0);
    expect(three.atTen.expected.low!).toBeLessThan(parallel(4000, 4500, 5000));
    expect(three.atTen.expected.high!).toBeGreaterThan(parallel(5500, 6000, 6500));
    expect(jack.reduce((sum, { settings }) => sum + settings, 0)).toBe(2 ** each.length);
  });
});

/** Coils each behind its own on-off switch, all on the jack. */
function manyCoils(count: number): Circuit {
  const [, template] = two.circuit.parts;
  const coil = two.circuit.parts.find(({ kind }) => kind === 'coil')!;
  expect(template).toBeDefined();
  const numbers = Array.from({ length: count }, (_, at) => at);
  return {
    ...two.circuit,
    id: 'many',
    pickups: [],
    parts: [
      ...two.circuit.parts.filter(({ kind }) => kind === 'jack'),
      ...numbers.flatMap((at) => [
        {
          ...coil,
          id: `coil${at}`,
          title: `coil ${at}`,
          ohms: { nominal: 4000 + 500 * at, tolerance: 0.1 },
        } as typeof coil,
        idle(`on${at}`),
      ]),
    ],
    leads: numbers.flatMap((at) => [
      { id: `a${at}`, kind: 'pickup', from: `coil${at}.finish`, to: `on${at}.A` },
      { id: `b${at}`, kind: 'wire', from: `on${at}.B`, to: 'jack.tip' },
      { id: `c${at}`, kind: 'pickup', from: `coil${at}.start`, to: 'jack.sleeve' },
    ]),
  };
}

describe('stands', () => {
  it('hold just the settings of their group, whatever the group', () => {
    const circuit = withIdle(two.circuit, 3);
    const all = switchSettings(circuit);
    for (let seed = 1; seed < 40; seed += 1) {
      const group = all.filter((_, at) => ((at + 1) * seed * 7919) % 13 < 6);
      const stands = standsOf(circuit, all, group);
      const held = all.filter(({ positions }) =>
        stands.some((stand) =>
          Object.entries(stand).every(([id, names]) => names.includes(positions[id]!)),
        ),
      );
      expect(held).toEqual(group);
    }
    expect(standsOf(circuit, all, all)).toEqual([{}]);
  });
});

describe('lines inside', () => {
  const { lines } = cardFor(one);
  const titles = (card: Card, group: string) =>
    card.lines.filter((line) => line.group === group).map(({ title }) => title);

  it('are pickups and their coils, tracks and wipers, contacts, grounds, and knobs at the jack', () => {
    const card = cardFor(two);
    expect(titles(card, 'knobs')).toEqual(['volume']);
    expect(titles(card, 'pickups')).toEqual(['neck pickup', 'bridge pickup']);
    expect(titles(card, 'pots')).toEqual([
      'volume, track',
      'volume, wiper',
      'tone, track',
      'tone, wiper',
    ]);
    expect(
      card.lines.filter(({ group }) => group === 'switches').map(({ stands }) => stands),
    ).toEqual([[{ selector: ['neck', 'both'] }], [{ selector: ['both', 'bridge'] }]]);
    expect(titles(card, 'grounds')).toContain('strings and bridge');
    for (const { group, cell } of card.lines)
      if (group === 'grounds' || group === 'switches') expect(cell.beeps).toBe('yes');
    expect(lines.filter(({ group }) => group === 'pickups')).toHaveLength(3);
  });

  it('read a pickup where the selector leaves it alone', () => {
    const neck = cardFor(two).lines.find(({ title }) => title === 'neck pickup')!;
    expect(neck.stands).toEqual([{ selector: ['bridge'] }]);
    expect(neck.cell.expected.text).toBe('about 7.50 kΩ');
  });

  it('ask for nothing that ohms cannot show', () => {
    for (const { cell } of lines) expect(['ohms', 'turn']).toContain(cell.ask.kind);
  });
});

describe('what was read', () => {
  const width = ({ jack }: Card, at: number) => {
    const { low, high } = jack[at]!.atTen.expected;
    return Math.log(high! / low!);
  };
  const [neck, both, bridge] = ['neck', 'both', 'bridge'].map((name) => two.at(name));

  it('tightens the rest while it fits', () => {
    const plain = cardFor(two);
    expect(plain.basis).toEqual({ kind: 'parts' });
    const card = cardFor(two, [two.ohms(7000, neck!), two.ohms(8300, bridge!)]);
    expect(card.basis).toEqual({ kind: 'readings', count: 2 });
    expect(width(card, 1)).toBeLessThan(0.3 * width(plain, 1));
    // 7000 and 8300 beside the pot, together: the pot was counted in both, so a little more than their parallel.
    const { low, high } = card.jack[1]!.atTen.expected;
    expect(low!).toBeLessThan(3810);
    expect(high!).toBeGreaterThan(3810);
    expect(plain.jack[1]!.atTen.expected.text).not.toBe(card.jack[1]!.atTen.expected.text);
  });

  it('is named where it does not fit, and tightens nothing', () => {
    const card = cardFor(two, [two.ohms(7000, neck!), two.ohms('open', bridge!)]);
    expect(card.basis).toMatchObject({
      kind: 'contradicted',
      reports: [{ id: expect.any(String), fits: 'off' }],
    });
    expect(card.jack).toEqual(cardFor(two).jack);
  });

  it('is named as well where each fits and all together do not', () => {
    const readings = [two.ohms(6600, neck!), two.ohms(7300, bridge!), two.ohms(4300, both!)];
    const card = cardFor(two, readings);
    expect(card.basis).toMatchObject({ kind: 'contradicted' });
    expect(
      card.basis.kind === 'contradicted' && card.basis.reports.map(({ fits }) => fits),
    ).toEqual(['fits', 'fits', 'fits']);
  });

  it('before a repair says nothing of the guitar after it', () => {
    const readings = [two.ohms('open', bridge!)];
    const card = cardOf({ circuit: two.circuit, meter, readings, repairs: ['coil:bridgeCoil'] });
    expect(card.basis).toEqual({ kind: 'parts' });
  });
});

it('refuses a wiring that does not hold together, and says what', () => {
  const circuit = {
    ...two.circuit,
    leads: [...two.circuit.leads, { id: 'stray', kind: 'wire', from: 'volume.9', to: 'jack.tip' }],
  } as Circuit;
  expect(() => cardOf({ circuit, meter, readings: [], repairs: [] })).toThrow(
    'lead stray ends on volume.9, which is no lug of this guitar',
  );
});

describe('capacitors and resistors', () => {
  const bench = new Bench('one-single-two-knobs');
  const small = (circuit: Circuit) =>
    cardOf({ circuit, meter, readings: [], repairs: [] })
      .lines.filter(({ group }) => group === 'small')
      .map(({ title, cell }) => [title, cell.expected.text, cell.ask.setting.lifted.length]);
  const bled = (make: 'parallel' | 'series', value: number) =>
    withBleed(
      bench.circuit,
      { id: 'volume', title: 'volume' },
      {
        make,
        farads: farads(1e-9),
        ohms: ohms(value),
      },
    );
  const tone = ['tone capacitor', '47.0 nF', 1];

  it('have a line each, alone with a leg off, and a changed value is in it', () => {
    expect(small(bench.circuit)).toEqual([tone]);
    for (const make of ['parallel', 'series'] as const)
      for (const [value, text] of [
        [150e3, 'about 150 kΩ'],
        [100e3, 'about 100 kΩ'],
      ] as const)
        expect(small(bled(make, value))).toEqual([
          tone,
          ['treble bleed capacitor of the volume', '1.00 nF', 1],
          ['treble bleed resistor of the volume', text, 1],
        ]);
  });
});
