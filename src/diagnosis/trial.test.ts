import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { withBleed } from '../circuit/catalog/modifications/fitted-bleed.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { restingSetting, withKnob } from '../circuit/setting.ts';
import { farads, ohms } from '../circuit/units.ts';
import { usualLoad } from '../readings/audio.ts';
import type { Meter } from '../readings/reading.ts';
import { readingChanges } from './reading-changes.ts';
import { type Curve, settingFor, trialOf } from './trial.ts';

const meter: Meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const one = startingWirings.find(({ id }) => id === 'one-single-two-knobs')!.build();
const volume = { id: 'volume', title: 'volume' };
const bled = withBleed(one, volume, { make: 'parallel', farads: farads(1e-9), ohms: ohms(150e3) });
const rest = restingSetting(one);
const load = usualLoad;
const at = (hertz: Float64Array, curve: Curve, wanted: number) =>
  curve.decibels[hertz.findIndex((frequency) => frequency >= wanted)]!;

describe('two wirings beside each other', () => {
  it('are the same curve where nothing is changed, with a top where it is highest', () => {
    const { hertz, before, after, family } = trialOf({
      before: { circuit: one, load },
      after: { circuit: one, load },
      setting: rest,
      sweep: null,
    });
    expect(after).toEqual(before);
    expect(family).toEqual([]);
    expect(before.resonance?.decibels).toBe(Math.max(...before.decibels));
    expect(at(hertz, before, 200)).toBe(before.level);
  });

  it('a treble bleed keeps treble at half and changes nothing at full', () => {
    const question = {
      before: { circuit: one, load },
      after: { circuit: bled, load },
      sweep: null,
    };
    const full = trialOf({ ...question, setting: rest });
    full.before.decibels.forEach((decibels, index) => {
      expect(full.after.decibels[index]).toBeCloseTo(decibels, 1);
    });
    const half = trialOf({ ...question, setting: withKnob(rest, 'volume', 5) });
    const balance = (curve: Curve) => at(half.hertz, curve, 4000) - curve.level;
    expect(balance(half.after)).toBeGreaterThan(balance(half.before) + 3);
  });

  it('a sweep is the knob at 0, 2, .. 10, whatever it stands at, and 10 is the knob full up', () => {
    const { family, after } = trialOf({
      before: { circuit: one, load },
      after: { circuit: one, load },
      setting: rest,
      sweep: 'tone',
    });
    expect(family.map(({ knob }) => knob)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(family.at(-1)?.curve).toEqual(after);
    const treble = family.map(({ curve }) => curve.decibels[240]!);
    expect([...treble].sort((x, y) => x - y)).toEqual(treble);
  });

  it('more cable lowers the top', () => {
    const { before, after } = trialOf({
      before: { circuit: one, load },
      after: { circuit: one, load: { ...load, farads: 1.2e-9 } },
      setting: rest,
      sweep: null,
    });
    expect(after.resonance!.hertz).toBeLessThan(0.8 * before.resonance!.hertz);
  });

  it('controls of another guitar stand as at rest where they are not known', () => {
    expect(
      settingFor(one, { positions: { other: 'x' }, knobs: { tone: 3 }, plug: 'in', lifted: [] }),
    ).toEqual({ ...rest, knobs: { ...rest.knobs, tone: 3 } });
  });
});

describe('readings that change', () => {
  const changed = (after: Circuit) => readingChanges({ before: one, after, meter });
  it('are none where nothing, or only a capacitor in circuit, is changed, save its own', () => {
    expect(changed(one)).toEqual([]);
    const other = {
      ...one,
      parts: one.parts.map((part) =>
        part.kind === 'capacitor'
          ? { ...part, farads: { ...part.farads, nominal: farads(33e-9) } }
          : part,
      ),
    };
    const found = changed(other);
    expect(found.map(({ ask }) => ask.kind)).toEqual(['farads']);
    expect([found[0]?.before?.text, found[0]?.after?.text]).toEqual(['47.0 nF', '33.0 nF']);
  });

  it('with a bleed of 150 k: the jack at half, by hand, and the parts that come', () => {
    const found = changed(bled);
    const half = found.find(
      ({ ask }) =>
        ask.kind === 'ohms' && ask.red === 'jack.tip' && ask.setting.knobs['volume'] === 5,
    );
    const pot = one.parts.find((part) => part.id === 'volume' && part.kind === 'pot');
    const coil = one.parts.find((part) => part.kind === 'coil');
    if (pot?.kind !== 'pot' || coil?.kind !== 'coil') throw new Error('another wiring');
    // From the wiper: the lower part beside (the upper part with the bleed beside it, and the coil behind).
    const parallel = (x: number, y: number) => (x * y) / (x + y);
    const swept = pot.ohms.nominal - 20;
    const [lower, upper] = [10 + swept * pot.midShare, 10 + swept * (1 - pot.midShare)];
    const reading = parallel(lower, parallel(upper, 150e3) + coil.ohms.nominal);
    const { low = 0, high = 0 } = half?.after ?? {};
    expect(low).toBeLessThan(reading);
    expect(high).toBeGreaterThan(reading);
    const without = parallel(lower, upper + coil.ohms.nominal);
    expect(half?.before?.low).toBeLessThan(without);
    expect(half?.before?.high).toBeGreaterThan(without);
    expect(
      found
        .filter(({ before }) => before === null)
        .map(({ ask }) => ask.kind)
        .sort(),
    ).toEqual(['farads', 'ohms']);
    expect(
      readingChanges({ before: bled, after: one, meter }).filter(({ after }) => after === null),
    ).toHaveLength(2);
  });
});
