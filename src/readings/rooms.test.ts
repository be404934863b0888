import { describe, expect, it } from 'vitest';
import { Guitar } from './guitar.fixture.ts';
import { ROOMS } from './hearing.ts';
import type { Ask } from './reading.ts';
import { meanOf } from './rooms.ts';

const guitar = new Guitar('two-singles-three-position');

describe('what is heard in one room or another', () => {
  it('has the mean of its chances in all of them', () => {
    expect(
      meanOf([
        { hum: 0.2, normal: 0.8 },
        { hum: 0.6, normal: 0.4 },
      ]),
    ).toEqual({ hum: expect.closeTo(0.4, 12), normal: expect.closeTo(0.6, 12) });
  });

  const setting = { ...guitar.at('both'), plug: 'in' } as const;
  const open = [{ op: 'open', site: 'stringGround@to' } as const];
  it.each<Ask>([
    { kind: 'listen', setting },
    { kind: 'touch', metal: 'strings.metal', setting },
  ])('is told for each of them: $kind', (ask) => {
    const [one] = guitar.predict(ask, open);
    if (one?.type !== 'choice' || !one.rooms) throw new Error('no rooms');
    expect(one.rooms).toHaveLength(ROOMS.length);
    for (const chances of one.rooms)
      expect(Object.values(chances).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
    expect(one.chances).toEqual(meanOf(one.rooms));
  });

  it('hums more the stronger its fields are', () => {
    const [one] = guitar.predict({ kind: 'listen', setting }, open);
    if (one?.type !== 'choice' || !one.rooms) throw new Error('no rooms');
    expect(one.rooms.at(-1)?.['hum']).toBeGreaterThan(one.rooms[0]?.['hum'] as number);
  });
});
