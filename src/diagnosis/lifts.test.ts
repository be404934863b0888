import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { checkSetting } from '../circuit/check.ts';
import { type Layout, layoutOf, nodeAt } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { ohms } from '../circuit/units.ts';
import type { Reading } from '../readings/reading.ts';
import { View } from '../readings/view.ts';
import { askKey } from './ask-key.ts';
import { assess } from './assess.ts';
import type { NextReading } from './assessment.ts';
import { Bench } from './evidence.fixture.ts';
import { liftsOf } from './lifts.ts';

describe.each(startingWirings.map(({ id, build }) => [id, layoutOf(build())] as const))(
  'the wires taken off in %s',
  (_id, layout: Layout) => {
    it('stand on points that are there and in reach, each offered once', () => {
      const asks = liftsOf(layout);
      expect(asks.length).toBeGreaterThan(0);
      expect(new Set(asks.map(askKey)).size).toBe(asks.length);
      for (const ask of asks) {
        checkSetting(layout.circuit, ask.setting);
        expect(ask.setting.lifted).toHaveLength(1);
        if (ask.kind !== 'ohms') throw new Error('A wire taken off is read in ohms.');
        expect(ask.red).not.toBe(ask.black);
        for (const node of [ask.red, ask.black])
          expect(['outside', 'cavity']).toContain(reachOf(layout, node));
      }
    });
  },
);

describe('solder at one end of a wire or at the other', () => {
  const bench = new Bench('one-wide-single-two-knobs');
  const { layout } = bench.predictor;
  const atJack = { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) } as const;
  const atPot = { op: 'bridge', a: 'volume.1', b: 'volume.2', ohms: ohms(0.5) } as const;
  const read = (ask: ReturnType<typeof liftsOf>[number], edit: typeof atJack | typeof atPot) =>
    ask.kind === 'ohms'
      ? new View(layout, ask.setting, [edit]).dc.resistance(
          nodeAt(layout, ask.red),
          nodeAt(layout, ask.black),
        )
      : Number.NaN;

  it('reads apart with the wire off, by a whole pickup and more', () => {
    const apart = liftsOf(layout).some((ask) => {
      const [one, other] = [read(ask, atJack), read(ask, atPot)];
      return Math.max(one, other) > 1000 * Math.min(one, other);
    });
    expect(apart).toBe(true);
  });

  it('is found at the pot by a hunt on which no eye sees it', () => {
    const readings: Reading[] = [];
    let found = assess(bench.evidence(readings));
    while (!found.verdict && readings.length < 20) {
      const { ask } = found.next[0] as NextReading;
      readings.push(
        ask.kind === 'look'
          ? bench.reading(ask, { kind: 'look', how: 'good' })
          : bench.answer([atPot], ask),
      );
      found = assess(bench.evidence(readings));
    }
    expect(found.verdict).toMatchObject({ kind: 'repair', repairs: ['clear:volume.1~volume.2'] });
    expect(readings.some(({ ask }) => ask.setting.lifted.length > 0)).toBe(true);
  });
});

// Two resistances beside each other read as one (textbook): a coil with turns shorted, or a sound one beside a path that nobody drew.
describe('a path beside a coil', () => {
  const bench = new Bench('two-humbuckers-shared-controls');
  const { layout } = bench.predictor;
  it('is told from shorted turns by the coil with its lead off', () => {
    const coil = layout.parts.get('bridgeSlug');
    if (coil?.kind !== 'coil') throw new Error('no coil');
    const shorted = { op: 'scale', part: 'bridgeSlug', factor: 0.6 } as const;
    const beside = ohms((coil.ohms.nominal * 0.6) / 0.4);
    const path = { op: 'bridge', a: 'selector.B', b: 'bridgeLink.joint', ohms: beside } as const;
    const read = (
      setting: ReturnType<Bench['at']>,
      red: string,
      edit: typeof shorted | typeof path,
    ) =>
      new View(layout, setting, [edit]).dc.resistance(
        nodeAt(layout, red),
        nodeAt(layout, 'jack.sleeve'),
      );
    const rest = bench.at('bridge');
    expect(read(rest, 'selector.B', shorted)).toBeCloseTo(read(rest, 'selector.B', path), 3);
    const ratios = liftsOf(layout).map((ask) => {
      if (ask.kind !== 'ohms') return 1;
      const [one, other] = [shorted, path].map((edit) => read(ask.setting, ask.red, edit));
      return one === other ? 1 : Math.abs(Math.log((one as number) / (other as number)));
    });
    expect(Math.max(...ratios)).toBeGreaterThan(0.15);
  });
});
