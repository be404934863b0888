import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { threeSinglesFivePosition } from '../../circuit/catalog/three-singles-five-position.ts';
import { twoHumbuckersFourKnobs } from '../../circuit/catalog/two-humbuckers-four-knobs.ts';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { kindOf } from '../../circuit/parts/index.ts';
import { restingSetting } from '../../circuit/setting.ts';
import type { Ask } from '../../readings/reading.ts';
import { discIntoDisc, distance } from './geometry.ts';
import { coverOf } from './probe-place.ts';
import { type Panel, sceneOf } from './scene.ts';

const four = twoHumbuckersFourKnobs();
const ohms = (circuit: Circuit, red: string, black: string, more: Partial<Setting> = {}): Ask => ({
  kind: 'ohms',
  red,
  black,
  setting: { ...restingSetting(circuit), ...more },
});
const only = (panels: readonly (readonly Panel[])[]): Panel => {
  expect(panels.flat()).toHaveLength(1);
  return panels[0]![0]!;
};

describe('a pot', () => {
  const panel = only(sceneOf(four, ohms(four, 'neckVolume.3', 'neckVolume.1')));
  const at = (lug: string) => panel.portrait.spots.get(`neckVolume.${lug}`)!.at;

  it('is seen from the back with its lugs down, 3 2 1 from left to right', () => {
    expect(panel.portrait.seen).toBe('seen from the back');
    expect(panel.portrait.count).toBe('lugs down: 3\u00a02\u00a01');
    expect(at('3').x).toBeLessThan(at('2').x);
    expect(at('2').x).toBeLessThan(at('1').x);
    expect(new Set(['1', '2', '3'].map((lug) => at(lug).y)).size).toBe(1);
    expect(at('case').y).toBeLessThan(at('1').y);
  });

  it('has the tips on the asked lugs, and these alone strong', () => {
    expect(panel.probes.red?.tip).toEqual(at('3'));
    expect(panel.probes.black?.tip).toEqual(at('1'));
    expect([...panel.asked].sort()).toEqual(['neckVolume.1', 'neckVolume.3']);
  });
});

describe('a joint', () => {
  it('has the tip on the wire, off its lug', () => {
    const panel = only(sceneOf(four, ohms(four, 'neckHot@to', 'neckVolume.3')));
    const lug = panel.portrait.spots.get('neckVolume.3')!;
    expect(distance(panel.probes.red!.tip, lug.at)).toBeGreaterThan(lug.radius + 8);
    expect(panel.probes.black!.tip).toEqual(lug.at);
  });

  it('stands clear of its lug when lifted, and says so', () => {
    const lifted = { lifted: ['neckHot@to'] };
    const panel = only(sceneOf(four, ohms(four, 'neckHot@to', 'neckVolume.case', lifted)));
    const stub = panel.stubs.stubs.find(({ joint }) => joint === 'neckHot@to')!;
    const lug = panel.portrait.spots.get('neckVolume.3')!;
    for (const corner of stub.path)
      expect(distance(corner, lug.at)).toBeGreaterThan(lug.radius + 12);
    expect(stub.label?.text).toBe('lifted');
    expect(panel.probes.red!.tip).toEqual(stub.onWire);
  });

  it('says its colour, or else where its lead goes', () => {
    const coloured = {
      ...four,
      leads: four.leads.map((lead) =>
        lead.id === 'neckCold' ? { ...lead, colour: 'white' } : lead,
      ),
    };
    const panel = only(sceneOf(coloured, ohms(coloured, 'neckHot@to', 'neckVolume.case')));
    const words = panel.stubs.stubs.flatMap(({ label }) => label?.text ?? []);
    expect(words.sort()).toEqual(['to neck pickup', 'white']);
  });
});

describe('which parts are drawn', () => {
  const keys = (ask: Ask, circuit = four) =>
    sceneOf(circuit, ask)
      .flat()
      .map(({ key }) => key);

  it('both, side by side, when the points are on two parts', () => {
    const rows = sceneOf(four, ohms(four, 'selector.A', 'neckVolume.2'));
    expect(rows.map((row) => row.map(({ key }) => key))).toEqual([['selector', 'neckVolume']]);
  });

  it('one pickup for its two coils and its plate', () => {
    expect(keys(ohms(four, 'neckSlug.start', 'neckScrew.finish'))).toEqual(['neckPickup']);
    expect(keys(ohms(four, 'neckSlug.start', 'neckPlate.metal'))).toEqual(['neckPickup']);
  });

  it('the free plug of the cable when one is in the jack', () => {
    expect(keys(ohms(four, 'jack.tip', 'jack.sleeve', { plug: 'in' }))).toEqual(['plug', 'jack']);
    expect(keys(ohms(four, 'jack.tip', 'jack.sleeve'))).toEqual(['jack']);
    expect(keys(ohms(four, 'jack.tip', 'selector.C', { plug: 'in' }))).toEqual([
      'jack',
      'selector',
    ]);
  });

  it('the coil under the steel, the knob to be turned, the joint to be moved', () => {
    const setting = { ...restingSetting(four), plug: 'in' as const };
    const jack = { red: 'jack.tip', black: 'jack.sleeve', setting };
    const tap = sceneOf(four, { kind: 'tap', coil: 'neckSlug', ...jack }).flat();
    expect(tap.map(({ key }) => key)).toEqual(['neckPickup', 'plug']);
    expect(tap[0]!.marks.map(({ kind }) => kind)).toEqual(['steel']);
    expect(keys({ kind: 'turn', pot: 'neckVolume', ...jack })).toEqual(['plug', 'knob neckVolume']);
    const flex = sceneOf(four, { kind: 'flex', site: 'neckHot@to', ...jack }).flat();
    expect(flex.map(({ key }) => key)).toEqual(['plug', 'neckVolume']);
    expect(flex[1]!.marks.map(({ kind }) => kind)).toEqual(['wiggle']);
  });
});

/** Units between a panel and the end of the picture, and a hair for rounding. */
const BESIDE = 6.01;

/** All pairs of points of one part, and joints against their own lugs. */
function pairs(circuit: Circuit): [string, string][] {
  const found: [string, string][] = [];
  for (const part of circuit.parts) {
    const lugs = kindOf(part)
      .lugs(part)
      .map((lug) => `${part.id}.${lug}`);
    for (const red of lugs) for (const black of lugs) if (red !== black) found.push([red, black]);
  }
  for (const lead of circuit.leads)
    for (const end of ['from', 'to'] as const) found.push([`${lead.id}@${end}`, lead[end]]);
  return found;
}

describe.each(startingWirings.map((wiring) => [wiring.title, wiring.build()] as const))(
  '%s',
  (_, circuit) => {
    it('hides no lug and neither mark under a probe, wherever they are held', () => {
      // Gathered: an assertion each is most of the time of some 100 000.
      const wrong: string[] = [];
      for (const [red, black] of pairs(circuit)) {
        const panels = sceneOf(circuit, ohms(circuit, red, black)).flat();
        const tips = panels
          .flatMap(({ probes }) => [probes.red, probes.black])
          .filter((tip) => tip !== undefined);
        if (tips.length !== 2) wrong.push(`${red} ${black}: ${tips.length} tips`);
        for (const { frame, portrait, probes } of panels) {
          for (const probe of [probes.red, probes.black]) {
            if (!probe) continue;
            const cover = coverOf(probe);
            for (const { at, radius } of cover) {
              if (
                at.x + radius >= frame.w + BESIDE ||
                at.x - radius <= -BESIDE ||
                at.y - radius <= -BESIDE ||
                at.y + radius >= frame.h + BESIDE
              )
                wrong.push(`${red} ${black}: a mark runs out at ${at.x} ${at.y}`);
            }
            for (const spot of portrait.spots.values()) {
              if (distance(spot.at, probe.tip) < 30) continue;
              for (const disc of cover)
                if (discIntoDisc(disc, { at: spot.at, radius: 4 }) > 0)
                  wrong.push(`${red} ${black}: a probe hides ${spot.label}`);
            }
          }
          if (probes.red && probes.black) {
            const [r, b] = [coverOf(probes.red)[2]!, coverOf(probes.black)[2]!];
            if (discIntoDisc(r, b) >= 4) wrong.push(`${red} ${black}: the marks hide each other`);
          }
        }
      }
      expect(wrong).toEqual([]);
      // Seconds of processor time for a guitar with many lugs: a busy machine takes its time.
    }, 120_000);
  },
);

it('draws a blade switch by its own rows', () => {
  const three = threeSinglesFivePosition();
  const { portrait } = only(sceneOf(three, ohms(three, 'selector.A1', 'selector.AC')));
  const at = (lug: string) => portrait.spots.get(`selector.${lug}`)!.at;
  expect(['A1', 'A2', 'A3', 'AC'].map((lug) => at(lug).x)).toEqual(
    ['BC', 'B3', 'B2', 'B1'].map((lug) => at(lug).x),
  );
  expect(at('A1').y).toBeLessThan(at('B1').y);
});
