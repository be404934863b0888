import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { ohms } from '../circuit/units.ts';
import type { Ask, Reading, Seen } from '../readings/reading.ts';
import { answerOf, readingsOf } from './answers.fixture.ts';
import { closingOf } from './check.ts';
import type { ClosingEvidence } from './closing.ts';
import { closingBench, planOf } from './plan.ts';

const circuit = oneHumbuckerOneKnob();
const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const bench = closingBench(circuit, meter);
const plan = planOf(bench, 'open');
const close = (readings: readonly Reading[], more: Partial<ClosingEvidence> = {}) =>
  closingOf({ circuit, meter, stage: 'open', readings, refused: [], repairs: [], ...more });
const healthy = (ask: Ask) => ({ ask, seen: answerOf(bench, ask) });
const all = plan.items.flatMap(({ ask, times }) =>
  Array.from({ length: times }, () => healthy(ask)),
);
const figure = plan.items.find(
  ({ ask, key }) =>
    ask.kind === 'ohms' &&
    bench.columns.get('open')!.some((c) => c.key === key && c.figure && c.figure.mean > 7),
)!;
const times = (seen: Seen, factor: number): Seen =>
  seen.kind === 'ohms' && seen.ohms !== 'open'
    ? { kind: 'ohms', ohms: ohms(seen.ohms * factor) }
    : seen;
const markOf = (readings: readonly Reading[], key: string) =>
  close(readings).items.find(
    ({ ask }) =>
      JSON.stringify(ask) === JSON.stringify(plan.items.find((one) => one.key === key)?.ask),
  )?.mark;

describe('a closing check', () => {
  it('passes when every line reads as a healthy guitar, in any order, and learns nothing odd', () => {
    expect(close([]).state).toBe('checking');
    expect(close(readingsOf(all)).state).toBe('passed');
    expect(close(readingsOf(all.toReversed())).state).toBe('passed');
    expect(close(readingsOf(all.slice(1))).state).toBe('checking');
  });

  it('says at the start what all of it takes, and less with each line', () => {
    const [start, later, end] = [
      close([]),
      close(readingsOf(all.slice(0, 4))),
      close(readingsOf(all)),
    ];
    expect(start.left).toBe(start.effort);
    expect(start.first.effort).toBeLessThan(start.effort);
    expect(later.left).toBeLessThan(start.left);
    expect(end.left).toBe(0);
  });

  it('asks an odd figure once more, forgives a slip, and fails what is odd twice', () => {
    const right = healthy(figure.ask);
    const wrong = { ask: figure.ask, seen: times(right.seen, 10) };
    expect(markOf(readingsOf([wrong]), figure.key)).toBe('again');
    expect(markOf(readingsOf([wrong, right]), figure.key)).toBe('fits');
    expect(markOf(readingsOf([wrong, wrong]), figure.key)).toBe('failed');
    expect(close(readingsOf([wrong, wrong])).state).toBe('failed');
  });

  it('takes an over-range sign for a figure as off, whatever the tolerances', () => {
    const open = { ask: figure.ask, seen: { kind: 'ohms', ohms: 'open' } as const };
    expect(markOf(readingsOf([open, open]), figure.key)).toBe('failed');
  });

  it('asks an odd word again until fitting ones lead or it stays odd', () => {
    const flex = plan.items.find(({ ask }) => ask.kind === 'flex')!;
    const steady = healthy(flex.ask);
    const jumps = { ask: flex.ask, seen: { kind: 'flex', how: 'jumps' } as const };
    const list = (...answers: (typeof steady)[]) => markOf(readingsOf(answers), flex.key);
    expect(list(jumps)).toBe('again');
    expect(list(jumps, steady)).toBe('again');
    expect(list(jumps, ...Array.from({ length: flex.times + 1 }, () => steady))).toBe('fits');
    expect(list(jumps, jumps, jumps, jumps)).toBe('failed');
  });

  it('does not pass over a reading of a hunt, or a jump seen by the way, that does not fit', () => {
    const besides: Ask = {
      kind: 'flex',
      site: 'hot',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: figure.ask.setting,
    };
    expect(plan.items.some(({ ask }) => JSON.stringify(ask) === JSON.stringify(besides))).toBe(
      false,
    );
    const jump = { ask: besides, seen: { kind: 'flex', how: 'jumps' } as const };
    const once = close(readingsOf([...all, jump]));
    expect(once.state).toBe('checking');
    expect(once.items.at(-1)).toMatchObject({ ask: besides, mark: 'again' });
    expect(close(readingsOf([...all, jump, jump, jump, jump])).state).toBe('failed');
    expect(close(readingsOf([...all, jump, healthy(besides), healthy(besides)])).state).toBe(
      'passed',
    );
  });

  it('of a check that is ended early tells what was read, and what was not looked for', () => {
    const head = plan.items
      .slice(0, plan.first.items)
      .flatMap(({ ask, times: count }) => Array.from({ length: count }, () => healthy(ask)));
    const [whole, short, nothing] = [
      close(readingsOf(all), { ended: true }),
      close(readingsOf(head), { ended: true }),
      close([], { ended: true }),
    ];
    const places = (closing: typeof whole) =>
      closing.cannotSee.reduce((sum, one) => sum + one.places.length, 0);
    expect(short.first).toMatchObject({ passed: true });
    expect(short.state).toBe('checking');
    expect(nothing.first.passed).toBe(false);
    expect(nothing.ruledOut).toEqual([]);
    expect(short.ruledOut.length).toBeGreaterThan(0);
    expect(places(whole)).toBeLessThan(places(short));
    expect(places(short)).toBeLessThan(places(nothing));
    // Before the end it says what the whole list will be worth.
    expect(close(readingsOf(head)).cannotSee).toEqual(whole.cannotSee);
  });

  it('shows most of what goes wrong in its first lines, in a small part of the time', () => {
    const { first, effort } = close([]);
    expect(first.share).toBeGreaterThanOrEqual(0.8);
    expect(first.effort).toBeLessThan(0.5 * effort);
  });

  it('names pairs of faults that hide each other', () => {
    const pairs = close([]).cannotSee.find(({ title }) => /hide each other/.test(title));
    expect(pairs?.places.join('\n')).toMatch(
      /magnet of .* is the other way up.* leads of .* are the wrong way round/,
    );
  });

  it('compares with the check before: a coil that is 3 % up is 8 degrees warmer (IEC 60028: 0.393 % a kelvin)', () => {
    const jack: Ask = {
      kind: 'ohms',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: figure.ask.setting,
    };
    const before = readingsOf([healthy(jack)]);
    const warm = readingsOf([{ ask: jack, seen: times(answerOf(bench, jack), 1.03) }]);
    const [change, ...more] = close(warm, { before }).changes;
    expect(more).toEqual([]);
    expect(change?.share).toBeCloseTo(0.03, 6);
    // The pot beside the coil takes a little of it: ln(1.03) / (0.00393 x share of the coil).
    expect(change?.warmer).toBeGreaterThan(7.4);
    expect(change?.warmer).toBeLessThan(8.6);
    expect(close(before, { before }).changes).toEqual([]);
    const burnt = readingsOf([{ ask: jack, seen: times(answerOf(bench, jack), 1.2) }]);
    expect(close(burnt, { before }).changes[0]).not.toHaveProperty('warmer');
  });
});
