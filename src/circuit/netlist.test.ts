// Above 300 lines: the hand-written tables of what every starting wiring joins stand side by side.
import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { oneHumbuckerOneKnob } from './catalog/one-humbucker-one-knob.ts';
import type { Circuit } from './circuit.ts';
import { layoutOf, nodeAt, siteAt, siteValues } from './netlist.ts';
import { switchSettings } from './setting.ts';

interface Joined {
  readonly at: string;
  readonly hot: Record<string, string>;
  readonly positions: Record<string, readonly string[]>;
}

const fiveWay = {
  '1': ['bridge'],
  '2': ['bridge', 'middle'],
  '3': ['middle'],
  '4': ['middle', 'neck'],
  '5': ['neck'],
};

const singlesThrough = (one: string, two: string, three: string) => ({
  [one]: `${one}Coil.finish`,
  [two]: `${two}Coil.finish`,
  [three]: `${three}Coil.finish`,
});

/** Which pickups' hot ends are joined to the lug that feeds the volume (or the jack), by lever position, written by hand. */
const heard: Record<string, Joined> = {
  'two-humbuckers-four-knobs': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.2', bridge: 'bridgeVolume.2' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'three-singles-five-position': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish', middle: 'middleCoil.finish', neck: 'neckCoil.finish' },
    positions: fiveWay,
  },
  'two-singles-three-position': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish', neck: 'neckCoil.finish' },
    positions: { bridge: ['bridge'], both: ['bridge', 'neck'], neck: ['neck'] },
  },
  'two-pickups-shared-controls': {
    at: 'volume.3',
    hot: { neck: 'neckCoil.finish', bridge: 'bridgeCoil.finish' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'one-humbucker-one-knob': {
    at: 'volume.3',
    hot: { bridge: 'bridgeSlug.finish' },
    positions: { '': ['bridge'] },
  },
  'two-humbuckers-shared-controls': {
    at: 'volume.3',
    hot: { neck: 'neckSlug.finish', bridge: 'bridgeSlug.finish' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'two-wide-singles-four-knobs': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.2', bridge: 'bridgeVolume.2' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'three-singles-one-tone': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish', middle: 'middleCoil.finish', neck: 'neckCoil.finish' },
    positions: fiveWay,
  },
  'humbucker-two-singles': {
    at: 'volume.3',
    hot: { bridge: 'bridgeSlug.finish', middle: 'middleCoil.finish', neck: 'neckCoil.finish' },
    positions: fiveWay,
  },
  'one-single-two-knobs': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish' },
    positions: { '': ['bridge'] },
  },
  'one-three-conductor-humbucker': {
    at: 'volume.3',
    hot: { bridge: 'bridgeSlug.finish' },
    positions: { '': ['bridge'] },
  },
  'four-strings-split-pickup': {
    at: 'volume.3',
    hot: { both: 'highHalf.finish' },
    positions: { '': ['both'] },
  },
  'four-strings-two-singles': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.3', bridge: 'bridgeVolume.3' },
    positions: { '': ['neck', 'bridge'] },
  },
  'two-three-conductor-humbuckers': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.2', bridge: 'bridgeVolume.2' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'two-humbuckers-five-position': {
    at: 'volume.3',
    hot: {
      bridge: 'bridgeSlug.finish',
      'bridge link': 'bridgeLink.joint',
      neck: 'neckSlug.finish',
      'neck link': 'neckLink.joint',
    },
    positions: {
      '1': ['bridge'],
      '2': ['bridge', 'neck', 'neck link'],
      '3': ['bridge', 'neck'],
      '4': ['bridge', 'bridge link', 'neck'],
      '5': ['neck'],
    },
  },
  'two-humbuckers-six-position': {
    at: 'volume.3',
    hot: {
      bridge: 'bridgeSlug.finish',
      'bridge screw': 'bridgeScrew.finish',
      neck: 'neckSlug.finish',
      'neck screw': 'neckScrew.finish',
    },
    positions: {
      '1': ['bridge'],
      '2': ['bridge', 'neck'],
      '3': ['neck'],
      '4': ['bridge screw'],
      '5': ['bridge screw', 'neck screw'],
      '6': ['neck screw'],
    },
  },
  'two-humbuckers-stereo-jack': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.2', bridge: 'bridgeVolume.2' },
    positions: { mono: ['neck', 'bridge'], stereo: ['bridge'] },
  },
  'humbucker-two-singles-split': {
    at: 'volume.3',
    hot: { bridge: 'bridgeSlug.finish', middle: 'middleCoil.finish', neck: 'neckCoil.finish' },
    positions: fiveWay,
  },
  'humbucker-single-humbucker': {
    at: 'volume.3',
    hot: { bridge: 'bridgeSlug.finish', middle: 'middleCoil.finish', neck: 'neckSlug.finish' },
    positions: fiveWay,
  },
  'three-singles-six-position': {
    at: 'volume.3',
    hot: singlesThrough('bridge', 'middle', 'neck'),
    positions: {
      '1': ['bridge'],
      '2': ['bridge', 'middle'],
      '3': ['middle'],
      '4': ['middle', 'neck'],
      '5': ['neck'],
      '6': ['bridge', 'neck'],
    },
  },
  // The neck's hot end is there throughout; what its cold end meets is in the table below.
  'two-singles-four-position': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish', neck: 'neckCoil.finish' },
    positions: {
      '1': ['bridge', 'neck'],
      '2': ['bridge', 'neck'],
      '3': ['neck'],
      '4': ['neck'],
    },
  },
  'three-two-conductor-pickups': {
    at: 'volume.3',
    hot: singlesThrough('bridge', 'middle', 'neck'),
    positions: fiveWay,
  },
  'two-wide-singles-shared-controls': {
    at: 'volume.3',
    hot: { neck: 'neckCoil.finish', bridge: 'bridgeCoil.finish' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  'one-wide-single-two-knobs': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish' },
    positions: { '': ['bridge'] },
  },
  'one-single-one-knob': {
    at: 'volume.3',
    hot: { bridge: 'bridgeCoil.finish' },
    positions: { '': ['bridge'] },
  },
  'four-strings-split-and-single': {
    at: 'jack.tip',
    hot: { neck: 'neckVolume.3', bridge: 'bridgeVolume.3' },
    positions: { '': ['neck', 'bridge'] },
  },
  'four-strings-two-split-pickups': {
    at: 'volume.3',
    hot: { neck: 'neckHighHalf.finish', bridge: 'bridgeHighHalf.finish' },
    positions: { neck: ['neck'], both: ['neck', 'bridge'], bridge: ['bridge'] },
  },
  // Between wiper and jack stands a resistor each.
  'four-strings-two-singles-four-knobs': {
    at: 'jack.tip',
    hot: { neck: 'neckMixer.b', bridge: 'bridgeMixer.b' },
    positions: { '': ['neck', 'bridge'] },
  },
  'four-strings-humbucker-mini-toggle': {
    at: 'volume.3',
    hot: { slug: 'bridgeSlug.finish', screw: 'bridgeScrew.finish' },
    positions: { up: ['slug'], middle: ['slug'], down: ['slug', 'screw'] },
  },
};

/** What is on ground by lever position, where a selector splits coils or puts them in series. */
const grounded: Record<string, Joined> = {
  'two-humbuckers-five-position': {
    at: 'jack.sleeve',
    hot: { bridge: 'bridgeLink.joint', neck: 'neckLink.joint' },
    positions: { '1': [], '2': ['bridge'], '3': [], '4': ['neck'], '5': [] },
  },
  'humbucker-two-singles-split': {
    at: 'jack.sleeve',
    hot: { bridge: 'bridgeLink.joint' },
    positions: { '1': [], '2': ['bridge'], '3': [], '4': [], '5': [] },
  },
  'humbucker-single-humbucker': {
    at: 'jack.sleeve',
    hot: { bridge: 'bridgeLink.joint', neck: 'neckLink.joint' },
    positions: { '1': [], '2': ['bridge'], '3': [], '4': ['neck'], '5': [] },
  },
  'two-singles-four-position': {
    at: 'jack.sleeve',
    hot: { neck: 'neckCoil.start', bridge: 'bridgeCoil.start' },
    positions: {
      '1': ['bridge'],
      '2': ['neck', 'bridge'],
      '3': ['neck', 'bridge'],
      '4': ['bridge'],
    },
  },
  'four-strings-humbucker-mini-toggle': {
    at: 'jack.sleeve',
    hot: { slug: 'bridgeSlug.start', screw: 'bridgeScrew.start' },
    positions: { up: ['screw'], middle: ['slug', 'screw'], down: ['slug', 'screw'] },
  },
};

const wirings = startingWirings.map(({ id, build }) => [id, build] as const);

/** Points joined without resistance to the lug, by flooding from it; by position. */
function joinedTo(circuit: Circuit, { at, hot }: Joined): Record<string, readonly string[]> {
  const layout = layoutOf(circuit);
  const table: Record<string, readonly string[]> = {};
  for (const setting of switchSettings(circuit)) {
    const { ohms } = siteValues(layout, setting);
    const reached = new Set([nodeAt(layout, at)]);
    for (let grown = true; grown; ) {
      grown = false;
      for (const { a, b, index } of layout.sites)
        if (ohms[index] === 0 && reached.has(a) !== reached.has(b)) {
          reached.add(a).add(b);
          grown = true;
        }
    }
    table[Object.values(setting.positions).join(' ')] = Object.entries(hot)
      .filter(([, lug]) => reached.has(nodeAt(layout, lug)))
      .map(([name]) => name);
  }
  return table;
}

describe('each lever position', () => {
  it.each(wirings)('of %s brings the pickups it should', (id, build) => {
    expect(joinedTo(build(), heard[id]!)).toEqual(heard[id]!.positions);
    const below = grounded[id];
    if (below) expect(joinedTo(build(), below)).toEqual(below.positions);
  });
});

describe('a layout', () => {
  it.each(wirings)('of %s gives every lead three sites in a row, lug to lug', (_id, build) => {
    const layout = layoutOf(build());
    for (const lead of layout.circuit.leads) {
      const [from, wire, to] = [`${lead.id}@from`, lead.id, `${lead.id}@to`].map((id) =>
        siteAt(layout, id),
      );
      expect([from!.a, from!.b, wire!.a, wire!.b, to!.b, to!.a]).toEqual(
        [
          lead.from,
          `${lead.id}@from`,
          `${lead.id}@from`,
          `${lead.id}@to`,
          `${lead.id}@to`,
          lead.to,
        ].map((name) => nodeAt(layout, name)),
      );
    }
  });

  it.each(wirings)('of %s has each node and site once, and is made once', (_id, build) => {
    const circuit = build();
    const layout = layoutOf(circuit);
    expect(new Set(layout.nodes).size).toBe(layout.nodes.length);
    expect(new Set(layout.sites.map(({ id }) => id)).size).toBe(layout.sites.length);
    expect(layoutOf(circuit)).toBe(layout);
  });

  it('names a lug, a site and a lead end that are not there', () => {
    const circuit = oneHumbuckerOneKnob();
    const layout = layoutOf(circuit);
    expect(() => nodeAt(layout, 'volume.9')).toThrow(
      'there is no lug or lead end called volume.9 in this guitar',
    );
    expect(() => siteAt(layout, 'volume:middle')).toThrow(
      'there is no joint, lead or part site called volume:middle in this guitar',
    );
    expect(() =>
      layoutOf({
        ...circuit,
        leads: [{ id: 'stray', kind: 'wire', from: 'volume.1', to: 'moon.1' }],
      }),
    ).toThrow('lead stray ends on moon.1, which is no lug of this guitar');
  });
});
