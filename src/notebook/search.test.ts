import { expect, it } from 'vitest';
import { isFound } from './search.ts';

it.each([
  ['', ['Café guitar'], true],
  ['  cafe ', ['Café guitar'], true],
  ['GUITAR cafe', ['Café', 'guitar'], true],
  ['ﬁx', ['Fix the jack'], true],
  ['blue cafe', ['Café guitar'], false],
])('%j in %j: %s', (wanted, texts, found) => {
  expect(isFound(wanted, texts)).toBe(found);
});
