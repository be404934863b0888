import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { leftHandedPots } from '../../circuit/catalog/modifications/left-handed-pots.ts';
import { twoHumbuckersFourKnobs } from '../../circuit/catalog/two-humbuckers-four-knobs.ts';
import { restingSetting } from '../../circuit/setting.ts';
import type { Ask } from '../../readings/reading.ts';
import { findAll, shown } from './markup.ts';
import type { Lie } from './portrait.ts';
import { ProbeDrawing } from './probe-drawing.tsx';
import { sceneOf } from './scene.ts';

const circuit = twoHumbuckersFourKnobs();
const setting = restingSetting(circuit);
const turned: Lie = { turned: true, leftHanded: false };
const leftHanded: Lie = { turned: false, leftHanded: true };
const pot: Ask = { kind: 'ohms', red: 'neckVolume.3', black: 'neckVolume.1', setting };
const words = (ask: Ask, lie?: Lie) =>
  findAll(
    shown(<ProbeDrawing circuit={circuit} ask={ask} {...(lie && { lie })} />),
    ({ tag }) => tag === 'text',
  )
    .map(({ text }) => text)
    .join(' ');

describe('a guitar that lies the other way', () => {
  it('has every lug of every wiring where half a turn brings it', () => {
    for (const { build } of startingWirings) {
      const guitar = build();
      const here = restingSetting(guitar);
      for (const { from, to } of guitar.leads) {
        const ask: Ask = { kind: 'ohms', red: from, black: to, setting: here };
        const usual = sceneOf(guitar, ask).flat();
        const other = sceneOf(guitar, ask, turned).flat();
        for (const panel of usual) {
          const twin = other.find(({ key }) => key === panel.key);
          for (const [ref, { at }] of panel.portrait.spots) {
            const there = twin?.portrait.spots.get(ref)?.at;
            expect(there?.x, ref).toBeCloseTo(panel.frame.w - at.x, 9);
            expect(there?.y, ref).toBeCloseTo(panel.frame.h - at.y, 9);
          }
        }
      }
    }
  });

  it('shows a pot from the back with its lugs up, counted 1 2 3 from the left', () => {
    const [panel] = sceneOf(circuit, pot, turned).flat();
    const at = (lug: string) => panel!.portrait.spots.get(`neckVolume.${lug}`)!.at;
    expect(at('1').x).toBeLessThan(at('2').x);
    expect(at('2').x).toBeLessThan(at('3').x);
    expect(at('1').y).toBeLessThan(at('case').y);
    expect(words(pot, turned)).toContain('lugs up: 1\u00a02\u00a03');
    expect(words(pot)).toContain('lugs down: 3\u00a02\u00a01');
  });

  it('keeps every word within the picture', () => {
    for (const part of circuit.parts) {
      const ask: Ask = { kind: 'look', at: part.id, setting };
      for (const panel of sceneOf(circuit, ask, turned).flat())
        for (const { labelAt, label } of panel.portrait.spots.values()) {
          expect(labelAt.y, label).toBeGreaterThan(8);
          expect(labelAt.y, label).toBeLessThanOrEqual(panel.frame.h + 2);
        }
    }
  });
});

describe('a left-handed guitar', () => {
  const two: Ask = { kind: 'ohms', red: 'neckVolume.3', black: 'bridgeVolume.3', setting };
  const keys = (lie?: Lie) => sceneOf(circuit, two, lie).map((row) => row.map(({ key }) => key));

  it('has its parts in mirrored places', () => {
    expect(keys()[0]).toHaveLength(2);
    expect(keys(leftHanded)[0]).toEqual([...keys()[0]!].reverse());
    expect(keys({ turned: true, leftHanded: true })).toEqual(keys());
  });

  it('has its pots counted 3 2 1 from the back where 10 is fully counter-clockwise, too, and the hot lead on the other end', () => {
    const [every] = leftHandedPots.applies(circuit);
    const mirrored = leftHandedPots.apply(circuit, every!, {});
    for (const lie of [leftHanded, { turned: true, leftHanded: true }]) {
      const [panel] = sceneOf(mirrored, pot, lie).flat();
      const at = (lug: string) => panel!.portrait.spots.get(`neckVolume.${lug}`)!.at;
      const sign = lie.turned ? -1 : 1;
      expect(sign * (at('2').x - at('3').x)).toBeGreaterThan(0);
      expect(sign * (at('1').x - at('2').x)).toBeGreaterThan(0);
    }
    expect(words({ ...pot, setting: restingSetting(mirrored) }, leftHanded)).toContain(
      'lugs down: 3\u00a02\u00a01',
    );
    const ends = (guitar: typeof circuit, lug: string) =>
      guitar.leads.filter(({ from, to }) => [from, to].includes(lug)).map(({ id }) => id);
    expect(ends(mirrored, 'neckVolume.1')).toEqual(ends(circuit, 'neckVolume.3'));
    expect(ends(mirrored, 'neckVolume.3')).toEqual(ends(circuit, 'neckVolume.1'));
  });

  it('has the same pots: their lugs are counted as on any guitar', () => {
    expect(words(pot, leftHanded)).toBe(words(pot));
  });
});
