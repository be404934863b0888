import { describe, expect, it } from 'vitest';
import { checkCircuit, checkSetting } from '../../check.ts';
import { switchSettings } from '../../setting.ts';
import { startingWirings } from '../index.ts';
import { modifications } from './index.ts';

const bases = startingWirings.map(({ id, build }) => [id, build()] as const);

/** Where each can go on four of the wirings, and what stands in the way, written by hand. */
const places: Record<string, Record<string, readonly string[]>> = {
  'two-humbuckers-four-knobs': {
    'pot-value': ['neckVolume', 'neckTone', 'bridgeVolume', 'bridgeTone'],
    'no-load-tone': ['neckTone', 'bridgeTone'],
    'tone-side': ['neckTone', 'bridgeTone'],
    'independent-volumes': ['volumes'],
    'treble-bleed': ['neckVolume', 'bridgeVolume'],
    'bass-cut': ['jack', 'neckPickup', 'bridgePickup'],
    'bass-cut-knob': ['jack', 'neckPickup', 'bridgePickup'],
    'add-in': ['neckPickup', 'bridgePickup'],
    blend: ['neckPickup', 'bridgePickup'],
    'master-volume': ['jack'],
    'master-tone': ['jack'],
    'straight-to-jack': ['neckPickup', 'bridgePickup'],
    'phase-of-pickup': ['neckPickup', 'bridgePickup'],
    'series-parallel': ['neckPickup', 'bridgePickup'],
    'coil-split': ['neckPickup', 'bridgePickup'],
    'partial-split': ['neckPickup', 'bridgePickup'],
    'swept-split': ['neckPickup', 'bridgePickup'],
    'split-both': ['neckPickup-bridgePickup'],
    'phase-of-coil': ['neckScrew', 'neckSlug', 'bridgeScrew', 'bridgeSlug'],
    'kill-button': ['jack'],
    'left-handed-pots': ['pots'],
  },
  'two-singles-three-position': {
    'pot-value': ['volume', 'tone'],
    'no-load-tone': ['tone'],
    'own-ground': ['bridgePickup'],
    'tone-side': ['tone'],
    'treble-bleed': ['volume'],
    'bass-cut': ['jack', 'bridgePickup', 'neckPickup'],
    'bass-cut-knob': ['jack', 'bridgePickup', 'neckPickup'],
    'add-in': ['bridgePickup', 'neckPickup'],
    blend: ['bridgePickup', 'neckPickup'],
    'straight-to-jack': ['bridgePickup', 'neckPickup'],
    'pickups-in-series': ['bridgePickup-neckPickup'],
    'phase-of-pickup': ['bridgePickup', 'neckPickup'],
    'kill-button': ['jack'],
    'left-handed-pots': ['pots'],
  },
  'one-three-conductor-humbucker': {
    'pot-value': ['volume', 'tone'],
    'no-load-tone': ['tone'],
    'tone-side': ['tone'],
    'treble-bleed': ['volume'],
    'bass-cut': ['jack', 'bridgePickup'],
    'bass-cut-knob': ['jack', 'bridgePickup'],
    'straight-to-jack': ['bridgePickup'],
    'series-parallel': ['bridgePickup'],
    'coil-split': ['bridgePickup'],
    'partial-split': ['bridgePickup'],
    'swept-split': ['bridgePickup'],
    'phase-of-coil': ['bridgeScrew', 'bridgeSlug'],
    'kill-button': ['jack'],
    'left-handed-pots': ['pots'],
  },
  'four-strings-two-singles': {
    'pot-value': ['neckVolume', 'bridgeVolume', 'tone'],
    'no-load-tone': ['tone'],
    'independent-volumes': ['volumes'],
    'treble-bleed': ['neckVolume', 'bridgeVolume'],
    'bass-cut': ['jack', 'neckPickup', 'bridgePickup'],
    'bass-cut-knob': ['jack', 'neckPickup', 'bridgePickup'],
    'master-volume': ['jack'],
    'straight-to-jack': ['neckPickup', 'bridgePickup'],
    'pickups-in-series': ['neckPickup-bridgePickup'],
    'phase-of-pickup': ['neckPickup', 'bridgePickup'],
    'kill-button': ['jack'],
    'left-handed-pots': ['pots'],
  },
};

it.each(Object.entries(places))('goes where it can on %s', (id, expected) => {
  const [, base] = bases.find(([one]) => one === id)!;
  const found = modifications.flatMap((one) => {
    const at = one.applies(base).map((place) => place.id);
    return at.length > 0 ? [[one.id, at] as const] : [];
  });
  expect(Object.fromEntries(found)).toEqual(expected);
});

it.each([
  [
    'one-three-conductor-humbucker',
    'series-parallel',
    'The coils of the bridge pickup are joined inside it: they can only be in series.',
  ],
  [
    'one-three-conductor-humbucker',
    'phase-of-coil',
    "The bridge pickup's screw coil is joined to its neighbour inside the pickup: its two ends cannot be exchanged.",
  ],
  [
    'two-singles-three-position',
    'phase-of-pickup',
    'The cold lead of the bridge pickup also grounds the base plate of the bridge pickup: give that metal a ground wire of its own first, or it becomes hot.',
  ],
  [
    'four-strings-two-singles',
    'independent-volumes',
    'A pickup comes to the wiper of the neck volume already.',
  ],
])('says why not, and refuses: %s, %s', (id, what, sentence) => {
  const [, base] = bases.find(([one]) => one === id)!;
  const modification = modifications.find((one) => one.id === what)!;
  const place = modification.applies(base)[0]!;
  expect(modification.conflict(base, place)).toBe(sentence);
  expect(() => modification.apply(base, place, {})).toThrow(sentence);
});

it('refuses a place that is not there', () => {
  const [, base] = bases[0]!;
  for (const one of modifications)
    expect(() => one.apply(base, { id: 'gone', title: 'gone' }, {})).toThrow(
      `${one.title}: this guitar has no place "gone" for it`,
    );
});

describe.each(bases)('every modification of %s', (_id, base) => {
  const each = modifications.flatMap((one) =>
    one
      .applies(base)
      .filter((place) => one.conflict(base, place) === null)
      .map((place) => [one, place] as const),
  );

  it('makes a circuit that passes the door, and leaves the one it was given', () => {
    const before = structuredClone(base);
    for (const [one, place] of each) {
      const after = one.apply(base, place, {});
      expect(() => checkCircuit(after)).not.toThrow();
      for (const setting of switchSettings(after)) checkSetting(after, setting);
      expect(after).not.toEqual(base);
      expect(structuredClone(after)).toEqual(after);
    }
    expect(base).toEqual(before);
  });

  it('keeps the name of every part and lead, and at rest every switch as it was', () => {
    const kept = (things: readonly { id: string }[]) => things.map(({ id }) => id);
    for (const [one, place] of each) {
      const after = one.apply(base, place, {});
      expect(kept(after.parts).slice(0, base.parts.length)).toEqual(kept(base.parts));
      expect(kept(after.leads).slice(0, base.leads.length)).toEqual(kept(base.leads));
      for (const part of after.parts.slice(base.parts.length))
        if (part.kind === 'switch') expect(part.positions[0]?.name).toBe('off');
    }
  });

  it('has a sentence for what it does, words for the title, and options with titles', () => {
    for (const [one, place] of each) {
      expect(one.does).toMatch(/^[A-Z].*\.$/);
      expect(one.named(place, {})).toMatch(/^[a-z].*[^.]$/);
      for (const { options } of one.choices(base, place)) {
        expect(new Set(options.map(({ id }) => id)).size).toBe(options.length);
        for (const option of options)
          expect(option.title.replace(/ nF/g, '')).not.toMatch(/[a-z][A-Z]|undefined/);
      }
    }
  });

  it('takes every option', () => {
    for (const [one, place] of each)
      for (const choice of one.choices(base, place))
        for (const option of choice.options)
          expect(() =>
            checkCircuit(one.apply(base, place, { [choice.id]: option.id })),
          ).not.toThrow();
  });
});
