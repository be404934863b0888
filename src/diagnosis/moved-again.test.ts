import { describe, expect, it } from 'vitest';
import { EVERYWHERE } from '../circuit/edit.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { assess } from './assess.ts';
import { Bench } from './evidence.fixture.ts';
import { openAsks } from './open-asks.ts';
import { distinct } from './repeats.ts';

const bench = new Bench('one-single-two-knobs');
const ask: Ask = {
  kind: 'flex',
  site: EVERYWHERE,
  red: 'jack.tip',
  black: 'jack.sleeve',
  setting: bench.at(),
};
const moved = (how: 'jumps' | 'steady'): Reading => bench.reading(ask, { kind: 'flex', how });

describe('a wire that held when it was moved', () => {
  it('may be moved twice more, and each time counts', () => {
    const times = [moved('steady'), moved('steady'), moved('steady')];
    expect(distinct(times)).toHaveLength(3);
    expect(openAsks([ask], times.slice(0, 2), [])).toHaveLength(1);
    expect(openAsks([ask], times, [])).toHaveLength(0);
    expect(openAsks([ask], [moved('jumps')], [])).toHaveLength(0);
    expect(openAsks([ask], times.slice(0, 1), [ask])).toHaveLength(0);
  });

  it('makes loose joints less likely with each time', () => {
    const loose = (readings: readonly Reading[]) =>
      assess(bench.evidence(readings))
        .suspects.flatMap(({ faults }) => faults)
        .filter(({ sentence }) => /makes and breaks/.test(sentence))
        .reduce((sum, { probability }) => sum + probability, 0);
    const [never, once, twice] = [
      loose([]),
      loose([moved('steady')]),
      loose([moved('steady'), moved('steady')]),
    ] as const;
    expect(once).toBeLessThan(never);
    expect(twice).toBeLessThan(once);
  });
});

describe('a swing', () => {
  const humbucker = new Bench('one-humbucker-one-knob');
  const coils = humbucker.circuit.parts.flatMap(({ kind, id }) => (kind === 'coil' ? [id] : []));
  const [one, other] = coils.map(
    (coil): Ask => ({
      kind: 'tap',
      coil,
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: humbucker.at(),
    }),
  ) as [Ask, Ask];
  const swung = (ask: Ask, swing: 'plus' | 'minus') =>
    humbucker.reading(ask, { kind: 'tap', swing });

  it('may be made twice more, and each time counts', () => {
    const times = [swung(one, 'plus'), swung(one, 'plus'), swung(one, 'minus')];
    expect(distinct(times)).toHaveLength(3);
    expect(openAsks([one], times.slice(0, 2), [])).toHaveLength(1);
    expect(openAsks([one], times, [])).toHaveLength(0);
    expect(openAsks([one], times.slice(0, 1), [one])).toHaveLength(0);
  });

  it('against the other coil’s is believed more once it was seen again, and hardly once the other way was', () => {
    const turned = (...readings: readonly Reading[]) =>
      assess(humbucker.evidence(readings))
        .suspects.filter(({ repair }) => /^turn:/.test(repair))
        .reduce((sum, { probability }) => sum + probability, 0);
    const opposite = [swung(one, 'minus'), swung(other, 'plus')];
    const once = turned(...opposite);
    expect(turned(...opposite, swung(other, 'plus'))).toBeGreaterThan(once);
    expect(turned(...opposite, swung(other, 'minus'))).toBeLessThan(once / 2);
  });
});

describe('a knob that scratched', () => {
  const turn: Ask = { ...ask, kind: 'turn', pot: 'volume' } as Ask;
  const turned = (how: 'jumps' | 'smooth'): Reading => {
    const expected = bench.predictor.predict(bench.singles[0]!, turn)[1];
    const peak = expected?.type === 'level' ? expected.ohms : 0;
    return bench.reading(turn, { kind: 'turn', how, peak } as Reading['seen']);
  };
  const worn = (...readings: readonly Reading[]) =>
    assess(bench.evidence(readings)).suspects.find(({ repair }) => repair === 'pot:volume')
      ?.probability ?? 0;

  it('may be turned twice more, and each time counts; one that turned smoothly is done', () => {
    const times = [turned('jumps'), turned('jumps'), turned('jumps')];
    expect(distinct(times)).toHaveLength(3);
    expect(openAsks([turn], times.slice(0, 2), [])).toHaveLength(1);
    expect(openAsks([turn], times, [])).toHaveLength(0);
    expect(openAsks([turn], [turned('smooth')], [])).toHaveLength(0);
    expect(distinct([turned('smooth'), turned('smooth')])).toHaveLength(1);
  });

  it('is worn more surely once it scratched again, and hardly once it did not', () => {
    const once = worn(turned('jumps'));
    expect(worn(turned('jumps'), turned('jumps'))).toBeGreaterThan(once + 0.1);
    expect(worn(turned('jumps'), turned('smooth'))).toBeLessThan(once / 2);
  });
});

describe('what the ear tells of a loose joint', () => {
  it('leaves one that no sound goes through as likely as before', () => {
    const strings = bench.circuit.leads.find(({ from, to }) => /strings/.test(from + to))!.id;
    const hot = bench.circuit.leads.find(({ to }) => to === 'jack.tip')!.id;
    const chances = (id: string) =>
      bench.predictor.predict(
        bench.singles.find(({ faults }) =>
          faults.some((fault) => fault.id === `intermittent:${id}`),
        )!,
        { kind: 'listen', setting: { ...bench.at(), plug: 'in' } },
      )[0];
    const crackles = (id: string) => {
      const prediction = chances(id);
      return prediction?.type === 'choice' ? prediction.chances['crackle']! : Number.NaN;
    };
    const ends = (id: string) => [`${id}@from`, `${id}@to`];
    const known = (id: string) =>
      ends(id).find((site) =>
        bench.singles.some(({ faults }) => faults.some((f) => f.id === `intermittent:${site}`)),
      )!;
    expect(crackles(known(strings))).toBeLessThan(0.05);
    expect(crackles(known(hot))).toBeGreaterThan(0.3);
  });
});

describe('a hunt whose ears already point inside', () => {
  it('is not ended before a figure was read', () => {
    const four = new Bench('four-strings-two-singles-four-knobs');
    const heard = (knobs: Record<string, number>, word: 'normal' | 'dull') =>
      four.reading(
        { kind: 'listen', setting: { ...four.at(undefined, knobs), plug: 'in' } },
        { kind: 'listen', heard: word },
      );
    const { verdict, next } = assess(
      four.evidence([
        heard({}, 'dull'),
        heard({ neckVolume: 0 }, 'dull'),
        heard({ neckTone: 0 }, 'dull'),
        heard({ bridgeVolume: 0 }, 'normal'),
        heard({ bridgeTone: 0 }, 'normal'),
      ]),
    );
    expect(verdict).toBeNull();
    const { ask: first } = next[0]!;
    expect(
      'red' in first && [first.red, first.black].some((lug) => !/^(jack|strings)[.]/.test(lug)),
    ).toBe(true);
  });
});
