import { describe, expect, it } from 'vitest';
import { enterFarads, enterOhms } from './expression.ts';

const ohmsOf = async (text: string) => {
  const entry = await enterOhms(text);
  return entry.ok ? entry.ohms : entry.sentence;
};
const faradsOf = async (text: string) => {
  const entry = await enterFarads(text);
  return entry.ok ? entry.farads : entry.sentence;
};

describe('values worked out on entry', () => {
  // The rules of series and parallel resistors; figures worked by hand from 1/R = 1/R1 + 1/R2.
  it.each([
    ['2x220k in series', 440e3],
    ['2 x 220k in parallel', 110e3],
    ['1 Mohm || 500 kohm', 1e6 / 3],
    ['1M ∥ 500k', 1e6 / 3],
    ['5.9 kohm + 30 ohm', 5930],
    ['4k7 + 330R', 5030],
    ['7,42k + 30 ohm', 7450],
    ['220k and 330k in parallel', 132e3],
    ['100k; 100k; 100k in series', 300e3],
    ['10k || 10k || 10k', 1e4 / 3],
    ['(5k + 5k) || 10k', 5e3],
    ['2 * 4.3k', 8600],
    ['500k / 2', 250e3],
    ['5900 + 30', 5930],
    ['10k - 400 ohm', 9600],
    // Ohm's law.
    ['9 V / 0.5 mA', 18e3],
    // The jack at full volume: a pickup of 7.5 k under a pot of 500 k reads 7.39 k.
    ['7.5k || 500k', 7389.162561576],
  ])('%s is %d ohm', async (text, value) => {
    expect(await ohmsOf(text)).toBeCloseTo(value, 6);
  });

  it.each([
    ['22n + 22n', 44e-9],
    ['22n || 22n', 44e-9],
    ['2x 44n in series', 22e-9],
    ['10n and 15n in parallel', 25e-9],
    ['0.022u + 1n', 23e-9],
  ])('%s is %d farad', async (text, value) => {
    expect(((await faradsOf(text)) as number) / value).toBeCloseTo(1, 9);
  });

  it('takes a single value the short way, with its questions', async () => {
    expect(await ohmsOf('7.42k')).toBe(7420);
    expect(await ohmsOf('OL')).toBe('open');
    expect(await enterOhms('1')).toMatchObject({ choices: [{ value: 'open' }, { value: 1 }] });
    expect(await ohmsOf('-5')).toContain('below zero');
    expect(await faradsOf('22n')).toBeCloseTo(22e-9, 15);
  });

  it.each([
    ['5.9k + 30', 'Give every value of the sum its unit: k, M or ohm; p, n or u.'],
    ['5k + 3k || 2k', 'Put brackets around what is in parallel: + and || stand side by side.'],
    ['5k * 2k', 'That does not come out as a resistance. Check the units and the signs.'],
    ['5k - 9k', 'That comes out below zero or without end, which is not a resistance.'],
    ['5k / 0', 'That comes out below zero or without end, which is not a resistance.'],
    ['220k in parallel', 'Only one value in parallel: "220k in parallel".'],
    ['5k + 3 apples', '"apples" is no unit that is known here. Type k, M, ohm, p, n or u.'],
    ['5k + 1m', 'Is the m of "1m" a large M, for a million ohm, or a thousandth?'],
    ['5k + 22 nF', '"5k + 22 nF" could not be worked out. Type one value, or values with + or ||.'],
    [`${'1k + '.repeat(20)}1k`, 'That is longer than 80 characters. Shorten it.'],
    ['0; in parallel', 'A value is missing or is no number.'],
    ['(5k', '"(5k" could not be worked out. Type one value, or values with + or ||.'],
  ])('%s is refused in words', async (text, sentence) => {
    expect(await ohmsOf(text)).toBe(sentence);
  });

  it.each([
    'f(x) = x + 1',
    'f(5)',
    'import({a: 1}) + 1',
    'createUnit("k") + 1',
    'parse("1+1").compile()',
    'a = 5 + 3',
    '[1, 2] + [3]',
    '"text" + "text"',
    'range(1, 1e9) + 1',
    '9^9^9^9 + 1',
    '(100000)! + 1',
    'constructor + 1',
    '1 + 1; 2',
    '(5k).toString()',
  ])('%s runs nothing', async (text) => {
    await enterOhms('1k + 1k');
    const started = process.cpuUsage();
    const entry = await enterOhms(text);
    expect(entry).toMatchObject({ ok: false, choices: [] });
    expect(process.cpuUsage(started).user / 1000).toBeLessThan(500);
  });
});
