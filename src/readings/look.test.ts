import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';
import { askText, seenText } from './index.ts';

const one = new Guitar('one-humbucker-one-knob');
const seen = (at: string, edits: readonly Edit[] = []) => {
  const chances = one.chances({ kind: 'look', at, setting: one.at() }, edits);
  expect(Object.values(chances).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  return chances;
};

describe('looking at a joint', () => {
  it('finds a good one good', () => {
    expect(seen('hot@to')['good']).toBeGreaterThan(0.8);
  });

  it('shows a bad joint more often than a good one, and never surely', () => {
    const bad = seen('hot@to', [{ op: 'open', site: 'hot@to' }]);
    expect(bad['dull']! + bad['loose']!).toBeGreaterThan(0.4);
    expect(bad['good']).toBeGreaterThan(0.2);
  });

  it('shows solder between its lug and the next', () => {
    const edits: readonly Edit[] = [
      { op: 'bridge', a: 'volume.2', b: 'volume.3', ohms: ohms(0.5) },
    ];
    expect(seen('hot@to', edits)['bridged']).toBeGreaterThan(0.5);
    expect(seen('jackGround@to', edits)['bridged']).toBeLessThan(0.02);
  });

  it('shows a lead that sits on another lug, and both of two that were exchanged', () => {
    const astray: readonly Edit[] = [{ op: 'land', joint: 'hot@to', lug: 'volume.2' }];
    expect(seen('hot@to', astray)['elsewhere']).toBeGreaterThan(0.5);
    expect(seen('jackHot@from', astray)).toEqual(seen('jackHot@from'));
    const exchanged: readonly Edit[] = [{ op: 'exchange', lugs: ['volume.2', 'volume.3'] }];
    for (const joint of ['hot@to', 'jackHot@from'])
      expect(seen(joint, exchanged)['elsewhere']).toBeGreaterThan(0.5);
    expect(seenText({ kind: 'look', how: 'elsewhere' })).toBe('the lead sits on another lug');
  });

  it('at one joint says nothing about another', () => {
    expect(seen('jackHot@from', [{ op: 'open', site: 'hot@to' }])).toEqual(seen('jackHot@from'));
  });

  it('is asked and told in words', () => {
    expect(askText(one.layout, { kind: 'look', at: 'hot@to', setting: one.at() })).toBe(
      "Look closely at the joint of the lead of the bridge pickup's slug coil on lug 3 of the volume.",
    );
    expect(seenText({ kind: 'look', how: 'bridged' })).toBe('solder or a strand bridges it');
  });
});

describe('a compass over a coil', () => {
  const pole = (coil: string, edits: readonly Edit[] = []) =>
    one.chances({ kind: 'pole', coil, setting: one.at() }, edits);

  it('shows opposite poles on the two coils of a humbucker', () => {
    expect(pole('bridgeScrew')['north']).toBeCloseTo(pole('bridgeSlug')['south']!, 12);
    expect(pole('bridgeScrew')['north']).toBeGreaterThan(0.9);
  });

  it('turns with the magnet, not with the leads', () => {
    const turned = pole('bridgeSlug', [{ op: 'turn-magnet', coil: 'bridgeSlug' }]);
    expect(turned['north']).toBeGreaterThan(0.9);
    expect(
      pole('bridgeSlug', [{ op: 'exchange', lugs: ['bridgeSlug.start', 'bridgeSlug.finish'] }]),
    ).toEqual(pole('bridgeSlug'));
  });
});
