import { describe, expect, it } from 'vitest';
import { tongueFor } from './tongue.ts';

describe('the language', () => {
  it.each([
    ['phone', ['nl-BE', 'en-US'], { language: 'nl', locale: 'nl-BE' }],
    ['phone', ['fr-FR', 'en-GB', 'nl'], { language: 'en', locale: 'en-GB' }],
    ['phone', ['fr-FR'], { language: 'en', locale: 'en' }],
    ['nl', ['en-US'], { language: 'nl', locale: 'nl' }],
    ['en', ['nl-NL'], { language: 'en', locale: 'en' }],
  ] as const)('chosen as %s on a phone of %j', (chosen, tags, expected) => {
    expect(tongueFor(chosen, tags)).toEqual(expected);
  });
});
