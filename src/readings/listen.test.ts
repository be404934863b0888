import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { Edit } from '../circuit/edit.ts';
import { switchSettings } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';

const three = new Guitar('three-singles-five-position');
const four = new Guitar('two-humbuckers-four-knobs');

function heard(guitar: Guitar, position: string, edits: readonly Edit[] = [], knobs = {}) {
  const chances = guitar.chances(
    { kind: 'listen', setting: { ...guitar.at(position, knobs), plug: 'in' } },
    edits,
  );
  expect(Object.values(chances).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  return Object.entries(chances).sort((x, y) => y[1] - x[1]);
}
const first = (...of: Parameters<typeof heard>) => heard(...of)[0]![0];
const chance = (word: string, ...of: Parameters<typeof heard>) =>
  Object.fromEntries(heard(...of))[word]!;

describe('how it sounds', () => {
  it.each(startingWirings.map(({ id }) => id))('healthy is normal in every position: %s', (id) => {
    const guitar = new Guitar(id);
    for (const setting of switchSettings(guitar.circuit))
      expect(first(guitar, setting.positions['selector'] ?? '')).toBe('normal');
  });

  it.each<[string, string, Guitar, string, readonly Edit[], Record<string, number>]>([
    ['silent', 'a broken wire to the jack', three, '1', [{ op: 'open', site: 'jackHot@to' }], {}],
    [
      'silent',
      'the tip on the sleeve',
      three,
      '1',
      [{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) }],
      {},
    ],
    ['silent', 'volume 0 on a healthy guitar', three, '1', [], { volume: 0 }],
    [
      'dull',
      'a tone capacitor of ten times its value, at tone 0',
      three,
      '5',
      [{ op: 'scale', part: 'toneCap', factor: 10 }],
      { neckTone: 0 },
    ],
    ['crackle', 'a loose joint', three, '1', [{ op: 'intermittent', site: 'jackHot@to' }], {}],
  ])('%s: %s', (word, _why, guitar, position, edits, knobs) => {
    expect(first(guitar, position, edits, knobs)).toBe(word);
  });

  it('one pickup against the other is thin or weak in the position of both, and normal alone', () => {
    const against: readonly Edit[] = [
      { op: 'exchange', lugs: ['middleCoil.start', 'middleCoil.finish'] },
    ];
    expect(['thin', 'weak']).toContain(first(three, '2', against));
    expect(['thin', 'weak']).toContain(first(three, '4', against));
    for (const alone of ['1', '3', '5']) expect(first(three, alone, against)).toBe('normal');
  });

  it('an open coil passes only thin treble: thin, weak or silent, hardly ever normal', () => {
    const open: readonly Edit[] = [{ op: 'open', site: 'bridgeCoil:winding' }];
    expect(['thin', 'weak', 'silent', 'hum']).toContain(first(three, '1', open));
    expect(chance('normal', three, '1', open)).toBeLessThan(0.1);
    expect(first(three, '5', open)).toBe('normal');
  });

  it('a worn track crackles while its knob is turned, hardly where it was left alone or is not heard', () => {
    const worn: readonly Edit[] = [{ op: 'worn', part: 'volume' }];
    expect(first(three, '1', worn, { volume: 0 })).toBe('crackle');
    expect(first(three, '1', worn)).toBe('normal');
    expect(first(three, '1', worn, { neckTone: 0 })).toBe('normal');
    const dead: readonly Edit[] = [...worn, { op: 'open', site: 'jackHot@to' }];
    expect(chance('crackle', three, '1', dead, { volume: 0 })).toBeLessThan(0.1);
  });

  it('a lost string ground raises hum', () => {
    const lost: readonly Edit[] = [{ op: 'open', site: 'stringGround@to' }];
    expect(chance('hum', four, 'neck', lost)).toBeGreaterThan(5 * chance('hum', four, 'neck'));
  });
});
