import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { twoSinglesThreePosition } from '../circuit/catalog/two-singles-three-position.ts';
import { reachOf } from '../circuit/reach.ts';
import { ohms } from '../circuit/units.ts';
import type { Ask } from '../readings/reading.ts';
import { inOrder, secondsOf } from './order.ts';
import { closingBench, planOf } from './plan.ts';
import { apartBy, columnsOf, isMoving } from './table.ts';
import { Together, wordsShow } from './together.ts';

const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

/** The list's own columns, to look at what it shows without the way it was chosen. */
function shownBy(circuit: Parameters<typeof closingBench>[0], stage: 'closed' | 'open' | 'mat') {
  const bench = closingBench(circuit, meter);
  const plan = planOf(bench, stage);
  const { predictor, healthy } = bench;
  const columns = columnsOf(
    predictor,
    healthy,
    plan.items.map(({ ask }) => ask),
  );
  const figures = columns.filter(({ ask }) => ask.kind === 'ohms' || ask.kind === 'turn');
  const together = (without?: number) =>
    new Together(
      figures.filter((one) => one !== columns[without ?? -1]),
      predictor.deviations(healthy),
    );
  const times = (without?: number) =>
    new Map(
      columns.map((column, at) => [
        column,
        (plan.items[at]?.times ?? 0) - (at === without ? 1 : 0),
      ]),
    );
  const claims = plan.showable.ladders.flatMap(({ ladder, hidden }) => ladder.slice(hidden));
  const parted = claims.map((fault) => ({
    fault,
    apart: apartBy(predictor, healthy, fault, columns),
    moving: isMoving(fault),
  }));
  return { bench, plan, together, times, parted };
}

describe('the list of a closing check', () => {
  it.each(['closed', 'open', 'mat'] as const)(
    'shows every size of every fault it claims: %s',
    (stage) => {
      const { together, times, parted } = shownBy(twoSinglesThreePosition(), stage);
      const all = together();
      const unseen = parted.filter((one) => !all.shows(one) && !wordsShow(one, times()));
      expect(unseen.map(({ fault }) => fault.faults[0]?.sentence)).toEqual([]);
      expect(parted.length).toBeGreaterThan(100);
    },
  );

  it('has nothing needless in it but the last pass', () => {
    const { bench, plan, together, times, parted } = shownBy(oneHumbuckerOneKnob(), 'open');
    expect(bench.singles.length).toBeGreaterThan(100);
    plan.items.forEach(({ ask }, at) => {
      if (ask.kind === 'listen' || ask.kind === 'touch') return;
      const fewer = plan.items[at]!.times > 1 ? together() : together(at);
      const lost = parted.filter((one) => !fewer.shows(one) && !wordsShow(one, times(at)));
      expect(lost.length, `${ask.kind} ${at}`).toBeGreaterThan(0);
    });
  });

  it('is no shorter than the bound it states', () => {
    for (const circuit of [oneHumbuckerOneKnob(), twoSinglesThreePosition()])
      for (const stage of ['closed', 'open', 'mat'] as const) {
        const { readings, atLeast, items } = planOf(closingBench(circuit, meter), stage);
        expect(readings).toBe(items.reduce((sum, { times }) => sum + times, 0));
        expect(atLeast).toBeGreaterThan(1);
        expect(readings).toBeGreaterThanOrEqual(atLeast);
      }
  });

  it('stays at the jack on a closed guitar, plugs in on no mat, and unsolders nothing', () => {
    const bench = closingBench(twoSinglesThreePosition(), meter);
    for (const { ask } of planOf(bench, 'closed').items)
      if ('red' in ask)
        for (const node of [ask.red, ask.black])
          expect(reachOf(bench.layout, node)).toBe('outside');
    for (const { ask } of planOf(bench, 'mat').items)
      expect(['listen', 'touch']).not.toContain(ask.kind);
    for (const stage of ['closed', 'open', 'mat'] as const)
      for (const { ask } of planOf(bench, stage).items) expect(ask.setting.lifted).toEqual([]);
  });

  it('without a reading that cannot be taken keeps the rest and finds another way where there is one', () => {
    const bench = closingBench(oneHumbuckerOneKnob(), meter);
    const plan = planOf(bench, 'open');
    const gone = plan.items.find(({ ask }) => ask.kind === 'ohms')!;
    const other = planOf(bench, 'open', [gone.ask]);
    const keys = other.items.map(({ key }) => key);
    expect(keys).not.toContain(gone.key);
    for (const { key } of plan.items) if (key !== gone.key) expect(keys).toContain(key);
  });
});

describe('the order of the list', () => {
  const bench = closingBench(twoSinglesThreePosition(), meter);
  const byName = <T extends { readonly key: string }>(list: readonly T[]) =>
    list.toSorted((x, y) => (x.key < y.key ? -1 : 1));
  const effort = (list: readonly { readonly ask: Ask }[]) =>
    secondsOf(
      bench.layout,
      list.map(({ ask }) => ask),
    );

  it('is the same readings, with ohms before taps before the amplifier, and less to move', () => {
    const shuffled = byName(planOf(bench, 'open').items);
    const ordered = inOrder(bench.layout, shuffled);
    expect(byName(ordered)).toEqual(shuffled);
    expect(effort(ordered)).toBeLessThan(effort(shuffled));
    const kinds = ordered.map(({ ask }) => ask.kind);
    expect(kinds.lastIndexOf('flex')).toBeLessThan(kinds.indexOf('tap'));
    expect(kinds.lastIndexOf('tap')).toBeLessThan(kinds.indexOf('listen'));
  });

  it('is within a tenth of the best of all orders of seven readings', () => {
    const items = planOf(bench, 'open').items.filter(({ ask }) => ask.kind === 'ohms');
    for (const from of [0, 4, 8]) {
      const few = items.slice(from, from + 7);
      const best = Math.min(...orders(few).map(effort));
      expect(effort(inOrder(bench.layout, few))).toBeLessThanOrEqual(1.1 * best);
    }
  });
});

function orders<T>(list: readonly T[]): T[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((one, at) => orders(list.toSpliced(at, 1)).map((rest) => [one, ...rest]));
}
