import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { UNHURRIED, underFire } from './under-fire.ts';

let door: typeof import('../../src/bench/route.ts');
beforeAll(async () => {
  vi.stubGlobal('window', { location: { hash: '' }, addEventListener: () => {} });
  door = await import('../../src/bench/route.ts');
});

const screens =
  'home new new-check check import leads draw bench notebook guitar pickup together job'.split(' ');
const views = 'hunt drawing card record values closing proof trial new-job beside sort job'.split(
  ' ',
);
const words = fc.oneof(
  fc.constantFrom(...screens, ...views, '%', '%E0%A4%A', '__proto__', 'constructor', '..', ''),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.string({ unit: fc.constantFrom(...'%0aAfF#/?&;<>"\''.split('')), maxLength: 12 }),
);
const links = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc
    .tuple(fc.constantFrom(...screens), fc.array(words, { maxLength: 4 }))
    .map(([screen, rest]) => `#/${[screen, ...rest].join('/')}`),
);

describe('a link', UNHURRIED, () => {
  it('may be anything: it names a screen, and the address of that screen names it again', async () => {
    const met = new Set<string>();
    await underFire(
      'shared links',
      links,
      (link) => {
        const route = door.parseRoute(link);
        met.add(route.at);
        expect(door.parseRoute(door.hrefOf(route))).toEqual(route);
      },
      { few: 1000 },
    );
    expect(met).toEqual(new Set(screens));
  });
});
