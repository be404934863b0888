import { expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { leftHandedPots } from './catalog/modifications/left-handed-pots.ts';
import { isLeftHanded } from './left-handed.ts';

it('is a guitar whose every pot counts the other way', () => {
  for (const { build } of startingWirings) {
    const usual = build();
    const [place] = leftHandedPots.applies(usual);
    expect(isLeftHanded(usual), usual.title).toBe(false);
    if (!place) continue;
    const mirrored = leftHandedPots.apply(usual, place, {});
    expect(isLeftHanded(mirrored), usual.title).toBe(true);
    const [one] = mirrored.parts.filter(({ kind }) => kind === 'pot');
    const more = usual.parts.filter(({ kind }) => kind === 'pot').length > 1;
    const parts = usual.parts.map((part) => (part.id === one?.id ? one : part));
    expect(isLeftHanded({ parts }), usual.title).toBe(!more);
  }
});

it('is no guitar without pots', () => {
  expect(isLeftHanded({ parts: [] })).toBe(false);
});
