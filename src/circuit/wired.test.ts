import { describe, expect, it } from 'vitest';
import { threeSinglesFivePosition } from './catalog/three-singles-five-position.ts';
import type { Edit } from './edit.ts';
import { CircuitError } from './errors.ts';
import { layoutOf, nodeAt, siteAt } from './netlist.ts';
import { restingSetting, withKnob } from './setting.ts';
import { farads, ohms } from './units.ts';
import { wire } from './wired.ts';

const circuit = threeSinglesFivePosition();
const layout = layoutOf(circuit);
const rest = restingSetting(circuit);
const site = (id: string) => siteAt(layout, id).index;
const node = (name: string) => nodeAt(layout, name);
const healthy = () => wire(layout, rest, []);

/** Everything that differs from the healthy guitar, in words that name site and quantity. */
function changes(
  edits: readonly Edit[],
  setting = rest,
): Record<string, readonly [number, number]> {
  const [before, after] = [wire(layout, setting, []), wire(layout, setting, edits)];
  const found: Record<string, readonly [number, number]> = {};
  for (const { id, index } of layout.sites)
    for (const what of ['a', 'b', 'ohms', 'farads', 'henries', 'magnetSign'] as const)
      if (before[what][index] !== after[what][index])
        found[`${id} ${what}`] = [before[what][index]!, after[what][index]!];
  return found;
}
const opened = Number.POSITIVE_INFINITY;

describe('wire', () => {
  it('without edits has joints, wires and closed contacts of 0 ohm, and open contacts apart', () => {
    const wired = healthy();
    expect(wired.ohms[site('bridgeHot@to')]).toBe(0);
    expect(wired.ohms[site('bridgeHot')]).toBe(0);
    expect(wired.ohms[site('selector:A1-AC')]).toBe(0);
    expect(wired.ohms[site('selector:A2-AC')]).toBe(opened);
    expect(wired.ohms[site('bridgeCoil:winding')]).toBe(6300);
    expect(wired.ohms[site('toneCap:body')]).toBe(opened);
    expect(wired.farads[site('toneCap:body')]).toBeCloseTo(22e-9, 15);
  });

  it('open: nothing passes', () => {
    expect(changes([{ op: 'open', site: 'jackHot@to' }])).toEqual({
      'jackHot@to ohms': [0, opened],
    });
  });

  it('open: a winding loses its inductance but keeps its own capacitance', () => {
    expect(changes([{ op: 'open', site: 'neckCoil:winding' }])).toEqual({
      'neckCoil:winding ohms': [5700, opened],
      'neckCoil:winding henries': [2.5, 0],
    });
  });

  it('open: a capacitor loses its capacitance', () => {
    const found = changes([{ op: 'open', site: 'toneCap:body' }]);
    expect(Object.keys(found)).toEqual(['toneCap:body farads']);
    expect(found['toneCap:body farads']![1]).toBe(0);
  });

  it('resist: adds to what is there, and twice adds twice', () => {
    const half: Edit = { op: 'resist', site: 'bridgeHot@to', ohms: ohms(150) };
    expect(changes([half, half])).toEqual({ 'bridgeHot@to ohms': [0, 300] });
    expect(changes([{ op: 'resist', site: 'bridgeCoil:winding', ohms: ohms(700) }])).toEqual({
      'bridgeCoil:winding ohms': [6300, 7000],
    });
  });

  it('bridge: comes after the sites of the layout, in the order given', () => {
    const wired = wire(layout, rest, [
      { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) },
      { op: 'bridge', a: 'selector.A1', b: 'selector.A2', ohms: ohms(47) },
    ]);
    const at = layout.sites.length;
    expect([...wired.a.slice(at)]).toEqual([node('jack.tip'), node('selector.A1')]);
    expect([...wired.b.slice(at)]).toEqual([node('jack.sleeve'), node('selector.A2')]);
    expect([...wired.ohms.slice(at)]).toEqual([0.5, 47]);
    expect(changes([{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(1) }])).toEqual({});
  });

  it('land: moves one end of one lead', () => {
    expect(changes([{ op: 'land', joint: 'bridgeHot@to', lug: 'selector.A2' }])).toEqual({
      'bridgeHot@to a': [node('selector.A1'), node('selector.A2')],
    });
  });

  it('exchange: moves every joint of both lugs, and nothing else', () => {
    const found = changes([{ op: 'exchange', lugs: ['volume.2', 'volume.3'] }]);
    expect(found).toEqual({
      'selectorOut@to a': [node('volume.3'), node('volume.2')],
      'jackHot@from a': [node('volume.2'), node('volume.3')],
    });
  });

  it('exchange: twice is nothing', () => {
    const swap: Edit = { op: 'exchange', lugs: ['jack.tip', 'jack.sleeve'] };
    expect(changes([swap, swap])).toEqual({});
  });

  it('scale: a coil takes its inductance along, not its capacitance', () => {
    expect(changes([{ op: 'scale', part: 'middleCoil', factor: 0.5 }])).toEqual({
      'middleCoil:winding ohms': [5900, 2950],
      'middleCoil:winding henries': [2.5, 1.25],
    });
  });

  it('scale: both pieces of a track, their ends as they are', () => {
    const half = withKnob(rest, 'volume', 5);
    const wired = wire(layout, half, [{ op: 'scale', part: 'volume', factor: 2 }]);
    // 15 % of the track less its two ends of 10 ohm, of 500 k instead of 250 k.
    expect(wired.ohms[site('volume:lower')]).toBeCloseTo(10 + 0.15 * (500e3 - 20), 6);
    expect(wired.ohms[site('volume:upper')]).toBeCloseTo(10 + 0.85 * (500e3 - 20), 6);
    expect(wired.ohms[site('volume:wiper')]).toBe(0);
  });

  it('scale: a capacitor', () => {
    const wired = wire(layout, rest, [{ op: 'scale', part: 'toneCap', factor: 10 }]);
    expect(wired.farads[site('toneCap:body')]).toBeCloseTo(farads(220e-9), 15);
  });

  it('scale: leaves a resistance that stands in series with the part, in either order', () => {
    const scaled: Edit = { op: 'scale', part: 'bridgeCoil', factor: 0.5 };
    const series: Edit = { op: 'resist', site: 'bridgeCoil:winding', ohms: ohms(1000) };
    for (const edits of [
      [scaled, series],
      [series, scaled],
    ])
      expect(wire(layout, rest, edits).ohms[site('bridgeCoil:winding')]).toBe(4150);
  });

  it('stick: the lever no longer matters', () => {
    const five = { ...rest, positions: { selector: '5' } };
    expect([
      ...wire(layout, five, [{ op: 'stick', part: 'selector', position: '1' }]).ohms,
    ]).toEqual([...healthy().ohms]);
    expect([...wire(layout, five, []).ohms]).not.toEqual([...healthy().ohms]);
  });

  it('turn-magnet: only the sign, and twice is nothing', () => {
    const turn: Edit = { op: 'turn-magnet', coil: 'neckCoil' };
    expect(changes([turn])).toEqual({ 'neckCoil:winding magnetSign': [1, -1] });
    expect(changes([turn, turn])).toEqual({});
  });

  it('intermittent and worn change nothing at rest', () => {
    expect(
      changes([
        { op: 'intermittent', site: 'jackHot@to' },
        { op: 'worn', part: 'volume' },
      ]),
    ).toEqual({});
  });

  it('a lifted joint is open, and one guitar does not change the next', () => {
    const lifted = { ...rest, lifted: ['bridgeHot@to'] };
    expect(wire(layout, lifted, []).ohms[site('bridgeHot@to')]).toBe(opened);
    wire(layout, rest, [{ op: 'open', site: 'bridgeHot@to' }]);
    expect(healthy().ohms[site('bridgeHot@to')]).toBe(0);
  });

  it.each<[string, Edit, string]>([
    [
      'a site that is not there',
      { op: 'open', site: 'bridgeHot@end' },
      'there is no joint, lead or part site called bridgeHot@end in this guitar',
    ],
    [
      'a lug that is not there',
      { op: 'land', joint: 'bridgeHot@to', lug: 'selector.Z' },
      'there is no lug or lead end called selector.Z in this guitar',
    ],
    [
      'a negative resistance',
      { op: 'resist', site: 'bridgeHot@to', ohms: ohms(-3) },
      'bridgeHot@to: expected a value of 0 or more, got -3',
    ],
    [
      'a bridge that is no number',
      { op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(Number.NaN) },
      'jack.tip to jack.sleeve: expected a value of 0 or more, got NaN',
    ],
    [
      'an endless factor',
      { op: 'scale', part: 'volume', factor: Number.POSITIVE_INFINITY },
      'volume: expected a value of 0 or more, got Infinity',
    ],
  ])('turns %s away', (_what, edit, sentence) => {
    expect(() => wire(layout, rest, [edit])).toThrow(CircuitError);
    expect(() => wire(layout, rest, [edit])).toThrow(sentence);
  });
});
