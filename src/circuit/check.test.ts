import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { oneHumbuckerOneKnob } from './catalog/one-humbucker-one-knob.ts';
import { checkCircuit, checkSetting } from './check.ts';
import type { Circuit, Lead, Setting } from './circuit.ts';
import { CircuitError } from './errors.ts';
import type { Part } from './parts/part.ts';
import { restingSetting } from './setting.ts';
import { ohms } from './units.ts';

const good = oneHumbuckerOneKnob();
const lead = (more: Partial<Record<keyof Lead, unknown>>): Circuit =>
  ({
    ...good,
    leads: [
      ...good.leads,
      { id: 'extra', kind: 'wire', from: 'jack.tip', to: 'volume.2', ...more },
    ],
  }) as Circuit;
const part = (id: string, more: object): Circuit => ({
  ...good,
  parts: good.parts.map((one) => (one.id === id ? ({ ...one, ...more } as Part) : one)),
});
const value = (nominal: number, tolerance = 0.1, measured?: number) => ({
  ohms: { nominal, tolerance, ...(measured === undefined ? {} : { measured }) },
});

function thrownBy(act: () => void): CircuitError {
  try {
    act();
  } catch (error) {
    expect(error).toBeInstanceOf(CircuitError);
    return error as CircuitError;
  }
  throw new Error('nothing was thrown; expected a CircuitError');
}

describe('checkCircuit', () => {
  it.each(startingWirings.map(({ id, build }) => [id, build] as const))(
    'lets the starting wiring %s through',
    (_id, build) => {
      expect(() => checkCircuit(build())).not.toThrow();
    },
  );

  it.each<[string, Circuit, string, string, string]>([
    [
      'no lists at all',
      {} as Circuit,
      'bad-shape',
      'circuit',
      'the circuit should have lists of parts, leads and pickups',
    ],
    [
      'no parts',
      { ...good, parts: [], leads: [], pickups: [] },
      'empty-circuit',
      'circuit',
      'the circuit has no parts: place at least a pickup and a jack',
    ],
    [
      'a lead to an unknown lug',
      lead({ to: 'volume.4' }),
      'unknown-lug',
      'volume.4',
      'lead extra ends on volume.4, which is no lug of this guitar',
    ],
    [
      'a lead to an unknown part',
      lead({ from: 'tone.2' }),
      'unknown-lug',
      'tone.2',
      'lead extra ends on tone.2, which is no lug of this guitar',
    ],
    [
      'a lead to itself',
      lead({ to: 'jack.tip' }),
      'lead-to-itself',
      'extra',
      'lead extra runs from jack.tip to itself',
    ],
    [
      'an unknown kind of lead',
      lead({ kind: 'rope' }),
      'bad-shape',
      'extra',
      'lead extra: "rope" is no kind of lead',
    ],
    [
      'two leads of one name',
      lead({ id: 'hot' }),
      'duplicate-name',
      'hot',
      'two things are called "hot"',
    ],
    [
      'a lead with the name of a part',
      lead({ id: 'volume' }),
      'duplicate-name',
      'volume',
      'two things are called "volume"',
    ],
    [
      'a name with a dot',
      lead({ id: 'a.b' }),
      'bad-shape',
      'a.b',
      'a lead is called "a.b": a name starts with a letter and has letters, digits, - and _ only',
    ],
    [
      'a part without a title',
      part('volume', { title: '' }),
      'bad-shape',
      'volume',
      'volume: a part needs a title in words',
    ],
    [
      'an unknown kind of part',
      part('volume', { kind: 'valve' }),
      'unknown-part',
      'volume',
      'volume: "valve" is no kind of part',
    ],
    [
      'a negative value',
      part('volume', value(-5)),
      'value-out-of-range',
      'volume',
      'volume: the printed value should be above 0 ohm, got -5',
    ],
    [
      'a value of zero',
      part('volume', value(0)),
      'value-out-of-range',
      'volume',
      'volume: the printed value should be above 0 ohm, got 0',
    ],
    [
      'a value that is no number',
      part('volume', value(Number.NaN)),
      'value-out-of-range',
      'volume',
      'volume: the printed value should be above 0 ohm, got NaN',
    ],
    [
      'a negative measured value',
      part('volume', value(5e5, 0.1, -1)),
      'value-out-of-range',
      'volume',
      'volume: the measured value should be above 0 ohm, got -1',
    ],
    [
      'a tolerance above 100 %',
      part('volume', value(5e5, 20)),
      'value-out-of-range',
      'volume',
      'volume: the tolerance should be above 0 and at most 1 (100 %), got 20',
    ],
    [
      'a share at half turn of a whole track',
      part('volume', { midShare: 1 }),
      'value-out-of-range',
      'volume',
      'volume: the share at half turn should lie between 0 and 1, got 1',
    ],
    [
      'an inductance below 0',
      part('bridgeSlug', { henries: -2 }),
      'value-out-of-range',
      "bridge pickup's slug coil",
      "bridge pickup's slug coil: inductance should be above 0, got -2",
    ],
    [
      'a winding sense of 0',
      part('bridgeSlug', { winding: 0 }),
      'value-out-of-range',
      "bridge pickup's slug coil",
      "bridge pickup's slug coil: winding sense should be 1 or -1, got 0",
    ],
    [
      'a pickup of a coil that is not there',
      { ...good, pickups: [{ id: 'bridgePickup', title: 'bridge pickup', coils: ['gone'] }] },
      'unknown-part',
      'gone',
      'bridge pickup: there is no part called gone',
    ],
    [
      'a pickup of a coil that is a pot',
      { ...good, pickups: [{ id: 'p', title: 'bridge pickup', coils: ['volume'] }] },
      'bad-shape',
      'volume',
      'bridge pickup: volume is a pot, where a coil is expected',
    ],
    [
      'a pickup that names a coil twice',
      {
        ...good,
        pickups: [{ id: 'p', title: 'bridge pickup', coils: ['bridgeSlug', 'bridgeSlug'] }],
      },
      'duplicate-name',
      'bridgeSlug',
      'bridge pickup: bridgeSlug belongs to a pickup already',
    ],
    [
      'a pickup with a plate that is not there',
      {
        ...good,
        pickups: [{ id: 'p', title: 'bridge pickup', coils: ['bridgeSlug'], plate: 'tin' }],
      },
      'unknown-part',
      'tin',
      'bridge pickup: there is no part called tin',
    ],
  ])('names what is wrong with %s', (_what, circuit, code, thing, sentence) => {
    const error = thrownBy(() => checkCircuit(circuit));
    expect({ code: error.code, thing: error.thing, sentence: error.message }).toEqual({
      code,
      thing,
      sentence,
    });
  });

  it('keeps a part that has a value in range', () => {
    expect(() =>
      checkCircuit(part('volume', { ohms: { nominal: ohms(1), tolerance: 1 } })),
    ).not.toThrow();
  });
});

describe('checkSetting', () => {
  const wiring = startingWirings.find(({ id }) => id === 'three-singles-five-position')!.build();
  const rest = restingSetting(wiring);
  it.each<[string, Partial<Setting>, string, string, string]>([
    [
      'an unknown position',
      { positions: { selector: '6' } },
      'unknown-position',
      'selector 6',
      'selector has no position "6"',
    ],
    [
      'an unknown switch',
      { positions: { lever: '1' } },
      'unknown-part',
      'lever',
      'the setting names a switch "lever" that this guitar does not have',
    ],
    [
      'a pot named as a switch',
      { positions: { volume: '1' } },
      'unknown-part',
      'volume',
      'the setting names a switch "volume" that this guitar does not have',
    ],
    [
      'an unknown knob',
      { knobs: { presence: 5 } },
      'unknown-part',
      'presence',
      'the setting names a knob "presence" that this guitar does not have',
    ],
    [
      'a knob past its end',
      { knobs: { volume: 11 } },
      'value-out-of-range',
      'volume',
      'volume: a knob stands between 0 and 10, got 11',
    ],
    [
      'a knob that is no number',
      { knobs: { volume: Number.NaN } },
      'value-out-of-range',
      'volume',
      'volume: a knob stands between 0 and 10, got NaN',
    ],
    [
      'a joint that is not there',
      { lifted: ['bridgeHot@middle'] },
      'unknown-lead',
      'bridgeHot@middle',
      'the setting lifts bridgeHot@middle, which is no joint of this guitar',
    ],
  ])('names %s', (_what, more, code, thing, sentence) => {
    const error = thrownBy(() => checkSetting(wiring, { ...rest, ...more }));
    expect({ code: error.code, thing: error.thing, sentence: error.message }).toEqual({
      code,
      thing,
      sentence,
    });
  });

  it('lets the resting setting and a lifted joint through', () => {
    expect(() => checkSetting(wiring, { ...rest, lifted: ['bridgeHot@to'] })).not.toThrow();
  });
});
