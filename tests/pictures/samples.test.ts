import { describe, expect, it } from 'vitest';
import { coverOf } from '../../src/bench/drawings/probe-place.ts';
import { sceneOf } from '../../src/bench/drawings/scene.ts';
import { everyPart } from './every-part.ts';
import { samples, wirings } from './samples.ts';

/** Units between a panel and the end of the picture, and a hair for rounding. */
const BESIDE = 6.01;

describe('the samples that are looked at as pictures', () => {
  it('hold every kind of ask and every kind of part', () => {
    const kinds = new Set(samples.map(({ ask }) => ask.kind));
    expect([...kinds].sort()).toEqual(
      [
        'beep',
        'farads',
        'flex',
        'hum',
        'listen',
        'look',
        'ohms',
        'pole',
        'tap',
        'touch',
        'turn',
      ].sort(),
    );
    const parts = new Set(wirings.flatMap(({ parts }) => parts.map(({ kind }) => kind)));
    expect([...parts].sort()).toEqual(
      ['capacitor', 'coil', 'jack', 'metal', 'pot', 'resistor', 'splice', 'switch'].sort(),
    );
    const styles = everyPart().parts.flatMap((part) =>
      part.kind === 'switch' ? [part.style] : [],
    );
    expect(new Set(styles)).toEqual(
      new Set(['push-pull', 'mini-toggle', 'slide', 'rotary', 'blade', 'button']),
    );
  });

  it.each(samples.map((sample) => [sample.name, sample] as const))(
    'stay inside their frames: %s',
    (_, { circuit, ask }) => {
      const panels = sceneOf(circuit, ask).flat();
      expect(panels.length).toBeGreaterThan(0);
      for (const { frame, portrait, probes } of panels) {
        for (const { at } of portrait.spots.values()) {
          expect(at.x).toBeGreaterThan(0);
          expect(at.x).toBeLessThan(frame.w);
          expect(at.y).toBeGreaterThan(0);
          expect(at.y).toBeLessThan(frame.h);
        }
        for (const probe of [probes.red, probes.black])
          for (const { at, radius } of probe ? coverOf(probe) : []) {
            expect(at.x + radius).toBeLessThan(frame.w + BESIDE);
            expect(at.x - radius).toBeGreaterThan(-BESIDE);
          }
      }
    },
  );
});
