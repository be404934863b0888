import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import type { Chosen } from '../../src/circuit/catalog/modifications/modification.ts';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import { layoutOf, nodeAt, siteAt } from '../../src/circuit/netlist.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { soundOf } from '../../src/readings/sound.ts';
import { View } from '../../src/readings/view.ts';
import { solveByOurs } from './against-ngspice.ts';

/**
 * What each modification does, worked out on paper from the values of coils and pots: sums, and products over sums.
 * A pot has 10 ohm between wiper and end lug at the stop (common practice, no source).
 */
const STOP = 10;
const parallel = (...all: readonly number[]) => 1 / all.reduce((sum, one) => sum + 1 / one, 0);
/** A pickup behind a volume at 10 whose wiper is the output, read at the jack. */
const atTen = (pickup: number, track: number) => parallel(pickup + STOP, track - STOP);

/** Unlike coils, so that it shows which one is heard. */
const unlike: Readonly<Record<string, number>> = {
  neckScrew: 3500,
  neckSlug: 3900,
  bridgeScrew: 4600,
  bridgeSlug: 4000,
};
const BRIDGE = 8600;
const NECK = 7400;

function base(id: string): Circuit {
  const circuit = startingWirings.find((one) => one.id === id)!.build();
  return {
    ...circuit,
    parts: circuit.parts.map((part) => {
      const value = unlike[part.id];
      return part.kind === 'coil' && value !== undefined
        ? { ...part, ohms: { ...part.ohms, nominal: ohms(value) } }
        : part;
    }),
  };
}

type Wanted = readonly [id: string, place: string, chosen?: Chosen];

function changed(id: string, ...wanted: readonly Wanted[]): Circuit {
  const from = base(id);
  const { circuit, refused } = compose(
    from,
    wanted.map(([what, where, chosen = {}]) => {
      const modification = modifications.find((one) => one.id === what)!;
      const place = modification.applies(from).find((one) => one.id === where)!;
      return { modification, place, chosen };
    }),
  );
  expect(refused).toEqual([]);
  return circuit;
}

interface Stand {
  readonly on?: readonly string[];
  readonly selector?: string;
  readonly knobs?: Readonly<Record<string, number>>;
  readonly lifted?: readonly string[];
}

function stand(circuit: Circuit, { on = [], selector, knobs = {}, lifted = [] }: Stand): Setting {
  const rest = restingSetting(circuit);
  return {
    ...rest,
    positions: {
      ...rest.positions,
      ...Object.fromEntries(on.map((id) => [id, 'on'])),
      ...(selector && { selector }),
    },
    knobs: { ...rest.knobs, ...knobs },
    lifted,
  };
}

function read(circuit: Circuit, how: Stand = {}, red = 'jack.tip', black = 'jack.sleeve'): number {
  for (const id of how.on ?? []) expect(circuit.parts.map((part) => part.id)).toContain(id);
  const layout = layoutOf(circuit);
  const solved = solveByOurs({ circuit, setting: stand(circuit, how), edits: [] });
  return solved.resistance(nodeAt(layout, red), nodeAt(layout, black));
}

/** Sign of the swing of a coil's tap at the jack; 0 where the coil is not heard. */
function tap(circuit: Circuit, coil: string, how: Stand = {}): number {
  const layout = layoutOf(circuit);
  const solved = solveByOurs({ circuit, setting: stand(circuit, how), edits: [] });
  const [red, black] = [nodeAt(layout, 'jack.tip'), nodeAt(layout, 'jack.sleeve')];
  const share = -solved.transfer(red, black, siteAt(layout, `${coil}:winding`).index);
  return Math.abs(share) < 1e-9 ? 0 : Math.sign(share);
}

const one = 'one-humbucker-one-knob';
const two = 'two-humbuckers-shared-controls';

describe('splits', () => {
  it('leave one coil: the hot one with the link on the cold end, the cold one with it on the hot end', () => {
    const hot = changed(one, ['coil-split', 'bridgePickup']);
    expect(read(hot)).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
    expect(read(hot, { on: ['bridgePickupSplit'] })).toBeCloseTo(atTen(4000, 500e3), 4);
    const cold = changed(one, ['coil-split', 'bridgePickup', { kept: 'cold' }]);
    expect(read(cold, { on: ['bridgePickupSplit'] })).toBeCloseTo(atTen(4600, 500e3), 4);
  });

  it.each([2200, 1100])('partial: coil + other coil || %d ohm', (size) => {
    const circuit = changed(one, ['partial-split', 'bridgePickup', { ohms: String(size) }]);
    const pickup = 4000 + parallel(4600, size);
    expect(read(circuit, { on: ['bridgePickupSplit'] })).toBeCloseTo(atTen(pickup, 500e3), 4);
    const cold = changed(one, [
      'partial-split',
      'bridgePickup',
      { ohms: String(size), kept: 'cold' },
    ]);
    expect(read(cold, { on: ['bridgePickupSplit'] })).toBeCloseTo(
      atTen(4600 + parallel(4000, size), 500e3),
      4,
    );
  });

  it('keep the same coil when a phase switch turns the pickup', () => {
    const circuit = changed(
      two,
      ['coil-split', 'bridgePickup', { carrier: 'push-pull:volume' }],
      ['phase-of-pickup', 'bridgePickup', { carrier: 'push-pull:tone' }],
    );
    for (const on of [['bridgePickupSplit'], ['bridgePickupSplit', 'bridgePickupPhase']])
      expect(read(circuit, { on, selector: 'bridge' })).toBeCloseTo(atTen(4000, 500e3), 4);
  });
});

it('two coils in parallel: product over sum', () => {
  const circuit = changed(one, ['series-parallel', 'bridgePickup']);
  expect(read(circuit)).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
  const on = ['bridgePickupCoils'];
  expect(read(circuit, { on })).toBeCloseTo(atTen((4600 * 4000) / 8600, 500e3), 4);
  // Both coils still pull the same way.
  for (const coil of ['bridgeScrew', 'bridgeSlug'])
    expect(tap(circuit, coil, { on })).toBe(tap(circuit, coil));
});

describe('a split knob', () => {
  const track = 10e3;
  const at = (knob: number, end: string, kept = 'hot') => {
    const circuit = changed(one, [
      'swept-split',
      'bridgePickup',
      { track: String(track), end, kept },
    ]);
    return read(circuit, { knobs: { bridgePickupSplitKnob: knob } });
  };
  const share = (knob: number) => STOP + (track - 2 * STOP) * (knob / 10);

  it.each([0, 2, 5, 9])('at %d leaves coil + other coil || its share of the track', (knob) => {
    const hot = atTen(4000 + parallel(4600, share(knob)), 500e3);
    for (const end of ['no-load', 'loaded']) expect(at(knob, end)).toBeCloseTo(hot, 4);
    const cold = atTen(4600 + parallel(4000, share(knob)), 500e3);
    expect(at(knob, 'loaded', 'cold')).toBeCloseTo(cold, 4);
  });

  it('at 10 is out of the circuit if it is a no-load pot, and else the whole track', () => {
    expect(at(10, 'no-load')).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
    expect(at(10, 'loaded')).toBeCloseTo(atTen(4000 + parallel(4600, track - STOP), 500e3), 4);
  });
});

it('both splits on one switch: one coil of each pickup', () => {
  const place = 'neckPickup-bridgePickup';
  const hot = changed(two, ['split-both', place]);
  const cold = changed(two, ['split-both', place, { kept: 'cold', carrier: 'push-pull:tone' }]);
  const on = ['bothSplits'];
  for (const [circuit, neck, bridge] of [
    [hot, 3900, 4000],
    [cold, 3500, 4600],
  ] as const) {
    expect(read(circuit, { on, selector: 'neck' })).toBeCloseTo(atTen(neck, 500e3), 4);
    expect(read(circuit, { on, selector: 'bridge' })).toBeCloseTo(atTen(bridge, 500e3), 4);
    expect(read(circuit, { selector: 'bridge' })).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
  }
});

describe('a no-load tone pot', () => {
  const circuit = changed(two, ['no-load-tone', 'tone']);
  it('stands on nothing at 10, and on its track below', () => {
    const wiper = (knob: number) => read(circuit, { knobs: { tone: knob } }, 'tone.2', 'tone.1');
    expect(wiper(10)).toBe(Infinity);
    expect(wiper(0)).toBeCloseTo(STOP, 4);
    // Audio taper: 15 % of the track at half turn.
    expect(wiper(5)).toBeCloseTo(STOP + 0.15 * (500e3 - 2 * STOP), 4);
  });
  it('sounds at 10 as if its capacitor were lifted, and no longer below', () => {
    const high = (knob: number, lifted: readonly string[] = []) => {
      const setting = stand(circuit, { knobs: { tone: knob }, lifted });
      return soundOf(new View(layoutOf(circuit), setting, []), null).high;
    };
    const without = high(10, ['capHotLeg@to']);
    expect(high(10) / without).toBeCloseTo(1, 3);
    expect(high(5) / without).toBeLessThan(0.99);
  });
});

describe('left-handed pots', () => {
  const circuit = changed(two, ['left-handed-pots', 'pots']);
  it('stand at 10 on lug 1, at 0 on lug 3, and hold the audio sweep from lug 3', () => {
    const volume = (knob: number, end: '1' | '3') =>
      read(circuit, { selector: 'neck', knobs: { volume: knob } }, 'volume.2', `volume.${end}`);
    // The other way round goes through the rest of the track and the pickup between its ends.
    expect(volume(10, '1')).toBeCloseTo(parallel(STOP, 500e3 - STOP + NECK), 4);
    expect(volume(0, '3')).toBeCloseTo(parallel(STOP, 500e3 - STOP + NECK), 4);
    // Audio taper: 15 % of the track at half turn.
    const short = STOP + 0.15 * (500e3 - 2 * STOP);
    expect(volume(5, '3')).toBeCloseTo(parallel(short, 500e3 - short + NECK), 2);
  });
  it('read at the jack what the usual ones read', () => {
    expect(read(circuit, { selector: 'bridge' })).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
    expect(read(circuit, { selector: 'neck' })).toBeCloseTo(atTen(NECK, 500e3), 4);
  });
});

describe('a ground wire of its own', () => {
  const singles = 'two-singles-three-position';
  const circuit = changed(
    singles,
    ['own-ground', 'bridgePickup'],
    ['phase-of-pickup', 'bridgePickup'],
  );
  it('keeps the metal grounded while its pickup is reversed', () => {
    for (const on of [[], ['bridgePickupPhase']]) {
      expect(read(circuit, { on }, 'bridgePlate.metal', 'jack.sleeve')).toBe(0);
      expect(read(circuit, { on })).toBeCloseTo(atTen(7000, 250e3), 4);
    }
    const was = tap(base(singles), 'bridgeCoil');
    expect(tap(circuit, 'bridgeCoil')).toBe(was);
    expect(tap(circuit, 'bridgeCoil', { on: ['bridgePickupPhase'] })).toBe(-was);
  });
});

describe('phase', () => {
  it.each([
    ['switched', {}],
    ['fixed', { carrier: 'fixed' }],
  ] as const)(
    '%s turns both coils of its pickup, and leaves the other pickup and all ohms',
    (how, chosen) => {
      const before = base(two);
      const circuit = changed(two, ['phase-of-pickup', 'neckPickup', chosen]);
      const on = how === 'switched' ? ['neckPickupPhase'] : [];
      for (const coil of ['neckScrew', 'neckSlug', 'bridgeScrew', 'bridgeSlug']) {
        const was = tap(before, coil, { selector: 'both' });
        expect(was).not.toBe(0);
        expect(tap(circuit, coil, { on, selector: 'both' })).toBe(
          coil.startsWith('neck') ? -was : was,
        );
        if (on.length > 0) expect(tap(circuit, coil, { selector: 'both' })).toBe(was);
      }
      expect(read(circuit, { on, selector: 'both' })).toBeCloseTo(
        read(before, { selector: 'both' }),
        4,
      );
    },
  );

  it.each(['bridgeScrew', 'bridgeSlug'])('of one coil turns %s alone', (turned) => {
    const before = base(one);
    const circuit = changed(one, ['phase-of-coil', turned]);
    for (const coil of ['bridgeScrew', 'bridgeSlug'])
      expect(tap(circuit, coil, { on: [`${turned}Phase`] })).toBe(
        tap(before, coil) * (coil === turned ? -1 : 1),
      );
  });
});

it('straight to the jack: the pickup alone, whatever volume and selector say', () => {
  const circuit = changed(two, ['straight-to-jack', 'bridgePickup']);
  const on = ['bridgePickupBypass'];
  for (const selector of ['neck', 'both', 'bridge'])
    expect(read(circuit, { on, selector, knobs: { volume: 0 } })).toBeCloseTo(BRIDGE, 4);
  expect(read(circuit, { selector: 'bridge' })).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
  expect(read(circuit, { selector: 'neck' })).toBeCloseTo(atTen(NECK, 500e3), 4);
});

it('added in: the pickup in parallel with what the selector has on', () => {
  const circuit = changed(two, ['add-in', 'bridgePickup']);
  const on = ['bridgePickupAddIn'];
  expect(read(circuit, { on, selector: 'neck' })).toBeCloseTo(
    atTen(parallel(NECK, BRIDGE), 500e3),
    4,
  );
  expect(read(circuit, { selector: 'neck' })).toBeCloseTo(atTen(NECK, 500e3), 4);
});

describe('a blend knob', () => {
  const at = (knob: number, end = 'no-load') =>
    read(changed(two, ['blend', 'bridgePickup', { end }]), {
      knobs: { bridgePickupBlend: knob },
      selector: 'neck',
    });
  it('leaves the other pickup alone at 10', () => {
    expect(at(10)).toBeCloseTo(atTen(NECK, 500e3), 4);
    expect(at(10, 'loaded')).toBeCloseTo(atTen(parallel(NECK, BRIDGE + 250e3 - STOP), 500e3), 4);
  });
  it.each([
    [0, STOP],
    [5, STOP + 0.5 * (250e3 - 2 * STOP)],
  ])('at %d adds its pickup behind the share of its track', (knob, share) => {
    expect(at(knob)).toBeCloseTo(atTen(parallel(NECK, BRIDGE + share), 500e3), 4);
  });
});

describe('a master', () => {
  const four = 'two-humbuckers-four-knobs';
  it('volume stands behind the others: at 10 the pickup beside two tracks, at 0 a short', () => {
    const circuit = changed(four, ['master-volume', 'jack']);
    const first = atTen(NECK, 500e3);
    expect(read(circuit)).toBeCloseTo(parallel(first + STOP, 500e3 - STOP), 4);
    expect(read(circuit, { knobs: { masterVolume: 0 } })).toBeCloseTo(
      parallel(STOP, first + 500e3 - STOP),
      4,
    );
  });
  it('tone hangs on the jack, new or moved there', () => {
    const added = changed(four, ['master-tone', 'jack']);
    expect(read(added, {}, 'masterToneCap.a', 'jack.tip')).toBe(0);
    expect(read(added, {}, 'masterTone.2', 'masterTone.1')).toBeCloseTo(500e3 - STOP, 4);
    expect(read(added, {}, 'masterTone.1', 'jack.sleeve')).toBe(0);
    const moved = changed(four, ['master-tone', 'jack', { made: 'neckTone' }]);
    expect(read(moved, {}, 'neckCap.a', 'jack.tip')).toBe(0);
    expect(read(moved, { knobs: { neckVolume: 5 } }, 'neckCap.a', 'neckVolume.3')).toBeGreaterThan(
      1000,
    );
  });
});

it('two single coils in series: their sum where the first is selected, the pot alone where the second is', () => {
  const circuit = changed('three-singles-one-tone', [
    'pickups-in-series',
    'bridgePickup-neckPickup',
  ]);
  const on = ['bridgePickupSeries'];
  expect(read(circuit, { on, selector: '1' })).toBeCloseTo(atTen(6400 + 5800, 250e3), 4);
  expect(read(circuit, { on, selector: '5' })).toBeCloseTo(250e3 - STOP, 4);
  expect(read(circuit, { selector: '5' })).toBeCloseTo(atTen(5800, 250e3), 4);
  for (const coil of ['bridgeCoil', 'neckCoil'])
    expect(tap(circuit, coil, { on, selector: '1' })).toBe(
      tap(base(circuit.id), coil, { selector: coil === 'bridgeCoil' ? '1' : '5' }),
    );
});

it('two single coils in series can be heard where the other is selected', () => {
  const circuit = changed('three-singles-one-tone', [
    'pickups-in-series',
    'bridgePickup-neckPickup',
    { upper: 'neckPickup' },
  ]);
  const on = ['neckPickupSeries'];
  expect(read(circuit, { on, selector: '5' })).toBeCloseTo(atTen(6400 + 5800, 250e3), 4);
  expect(read(circuit, { on, selector: '1' })).toBeCloseTo(250e3 - STOP, 4);
});

describe("a treble bleed's resistor", () => {
  const lifted = ['hot@to'];
  it('stands beside the piece of track between wiper and lug 3', () => {
    const circuit = changed(one, ['treble-bleed', 'volume', { make: 'parallel' }]);
    const at = (knob: number) =>
      read(circuit, { lifted, knobs: { volume: knob } }, 'volume.3', 'volume.2');
    expect(at(0)).toBeCloseTo(parallel(500e3 - STOP, 100e3), 4);
    expect(at(10)).toBeCloseTo(parallel(STOP, 100e3), 4);
  });
  it.each(['series', 'alone'])(
    'does not show in ohms behind or without its capacitor: %s',
    (make) => {
      const circuit = changed(one, ['treble-bleed', 'volume', { make }]);
      expect(read(circuit, { lifted, knobs: { volume: 0 } }, 'volume.3', 'volume.2')).toBeCloseTo(
        500e3 - STOP,
        4,
      );
    },
  );
});

describe('a bass cut', () => {
  it('in the wire to the jack lets no direct current out', () => {
    expect(read(changed(one, ['bass-cut', 'jack', { carrier: 'fixed' }]))).toBe(Infinity);
    const switched = changed(one, ['bass-cut', 'jack']);
    expect(read(switched, { on: ['bassCutSwitch'] })).toBe(Infinity);
    expect(read(switched)).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
  });
  it('of one pickup leaves the pot alone to be read', () => {
    const circuit = changed(two, ['bass-cut', 'neckPickup']);
    expect(read(circuit, { on: ['neckPickupBassCutSwitch'] })).toBeCloseTo(500e3 - STOP, 4);
    expect(read(circuit, { on: ['neckPickupBassCutSwitch'], selector: 'bridge' })).toBeCloseTo(
      atTen(BRIDGE, 500e3),
      4,
    );
  });
});

describe('a bass knob', () => {
  it('puts its track in the wire to the jack', () => {
    const circuit = changed(one, ['bass-cut-knob', 'jack']);
    const at = (knob: number) => read(circuit, { knobs: { bassKnob: knob } });
    expect(at(10)).toBeCloseTo(atTen(BRIDGE, 500e3) + STOP, 4);
    expect(at(0)).toBeCloseTo(atTen(BRIDGE, 500e3) + 1e6 - STOP, 4);
    // Reverse audio: 15 % of the track are left at half turn.
    expect(at(5)).toBeCloseTo(atTen(BRIDGE, 500e3) + STOP + 0.15 * (1e6 - 2 * STOP), 3);
  });
  it('of one pickup stands between it and its volume', () => {
    const circuit = changed(two, ['bass-cut-knob', 'neckPickup', { track: '500000' }]);
    const at = (knob: number) =>
      read(circuit, { knobs: { neckPickupBassKnob: knob }, selector: 'neck' });
    expect(at(10)).toBeCloseTo(atTen(NECK + STOP, 500e3), 4);
    expect(at(0)).toBeCloseTo(atTen(NECK + 500e3 - STOP, 500e3), 4);
  });
});

it('a kill button shorts the jack while it is pressed', () => {
  const circuit = changed(one, ['kill-button', 'jack']);
  expect(read(circuit, { on: ['killButton'] })).toBe(0);
  expect(read(circuit)).toBeCloseTo(atTen(BRIDGE, 500e3), 4);
});

it('another pot reads its own track', () => {
  const circuit = changed(one, ['pot-value', 'volume', { track: '250000', taper: 'linear' }]);
  expect(read(circuit, { lifted: ['hot@to'] }, 'volume.1', 'volume.3')).toBeCloseTo(250e3, 4);
  expect(
    read(circuit, { lifted: ['hot@to'], knobs: { volume: 5 } }, 'volume.1', 'volume.2'),
  ).toBeCloseTo(125e3, 4);
});

it('independent volumes: one at 0 shorts the jack before, and no longer after', () => {
  const how = { selector: 'both', knobs: { neckVolume: 0 } };
  expect(read(base('two-humbuckers-four-knobs'), how)).toBeLessThan(2 * STOP);
  const circuit = changed('two-humbuckers-four-knobs', ['independent-volumes', 'volumes']);
  // Neck: the whole track to ground; bridge: its track beside its pickup behind the stop.
  expect(read(circuit, how)).toBeCloseTo(
    parallel(500e3 - STOP + parallel(STOP, NECK), STOP + parallel(BRIDGE, 500e3 - STOP)),
    4,
  );
});

it('a tone on the other side of the volume hangs on its wiper', () => {
  const circuit = changed(two, ['tone-side', 'tone']);
  expect(read(circuit, {}, 'toneCap.a', 'volume.2')).toBe(0);
  expect(read(base(two), {}, 'toneCap.a', 'volume.3')).toBe(0);
  expect(read(base(two), {}, 'toneCap.a', 'volume.2')).toBeGreaterThan(0);
});
