import { describe, expect, it } from 'vitest';
import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { assess } from './assess.ts';
import { Bench } from './evidence.fixture.ts';

const bench = new Bench('one-humbucker-one-knob');
/** Four figures of which none goes with another, whatever is wrong: as entered by somebody with other lugs or another guitar in hand. */
const strange: readonly Reading[] = [
  bench.ohms(44, bench.at()),
  bench.ohms(31e3, bench.at(), 'volume.3', 'jack.sleeve'),
  bench.ohms(900, bench.at(), 'volume.2', 'jack.tip'),
  bench.ohms(2.2e6, bench.at(), 'volume.1', 'jack.sleeve'),
];
const said = (readings: readonly Reading[], refused: readonly Ask[] = []) =>
  assess(bench.evidence(readings, { refused }));
const again = (ask: Ask, like: readonly Reading[]): Reading => {
  const first = like.find((one) => askKey(one.ask) === askKey(ask)) as Reading;
  return bench.reading(ask, first.seen);
};

describe('readings that nothing drawn explains', () => {
  const first = said(strange);
  const key = ({ ask }: { readonly ask: Ask }) => askKey(ask);

  it('are doubted first: the figure that fits worst is asked for again, and why', () => {
    expect(first.suspects[0]?.repair).toBe('something else');
    expect(first.verdict).toBeNull();
    expect(strange.map(key)).toContain(key(first.next[0]!));
    expect(first.next[0]?.why).toMatch(/^Once more/);
    expect(first.next[0]?.effortSeconds).toBeGreaterThan(0);
    expect(new Set(first.next.map(key)).size).toBe(first.next.length);
  });

  it('are said to be outside once two came again', () => {
    const once = [...strange, again(first.next[0]!.ask, strange)];
    const second = said(once);
    expect(second.verdict).toBeNull();
    expect(key(second.next[0]!)).not.toBe(key(first.next[0]!));
    const twice = said([...once, again(second.next[0]!.ask, strange)]);
    expect(twice.verdict?.kind).toBe('outside');
  });

  it('are said to be outside at once where what fits badly cannot be reached again', () => {
    expect(
      said(
        strange,
        strange.map(({ ask }) => ask),
      ).verdict?.kind,
    ).toBe('outside');
  });

  it('are explained, once what was entered wrong is read as it is', () => {
    const entries = [
      bench.ohms(120, bench.at()),
      bench.true([], bench.at(), 'volume.3', 'jack.sleeve'),
      bench.ohms(900, bench.at(), 'volume.2', 'jack.tip'),
      bench.true([], bench.at(), 'volume.1', 'jack.sleeve'),
    ];
    const unexplained = (readings: readonly Reading[]) =>
      said(readings).suspects.find(({ repair }) => repair === 'something else')?.probability ?? 0;
    const sound = entries.map(({ ask }) => bench.answer([], ask));
    expect(unexplained([...entries, ...sound])).toBeLessThan(unexplained(entries) / 3);
  });
});
