import { beforeEach, describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { restingSetting } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { assess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { likelyAnswers } from '../diagnosis/foresee.ts';
import type { Seen } from '../readings/reading.ts';
import { lookAhead } from './look-ahead.ts';

const circuit = startingWirings.find(({ id }) => id === 'one-humbucker-one-knob')!.build();
const evidence: Evidence = {
  circuit,
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
  access: 'open',
  readings: [],
  refused: [],
  repairs: [],
};

describe('answers that may come', () => {
  it('begin with what an intended wiring shows, and are such as a person enters', () => {
    const atJack = {
      kind: 'ohms',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: restingSetting(circuit),
    } as const;
    const [first, ...rest] = likelyAnswers(evidence, atJack, 4);
    // A coil of 8.6 kohm beside a pot of 500 kohm: their product over their sum.
    expect(first).toMatchObject({
      kind: 'ohms',
      ohms: expect.closeTo((8600 * 500e3) / 508.6e3, -3),
    });
    expect(rest).toContainEqual({ kind: 'ohms', ohms: 'open' });
    expect(new Set([first, ...rest].map((seen) => JSON.stringify(seen))).size).toBe(4);
  });

  it('are taken by the engine for every kind it asks', () => {
    const kinds = new Set<string>();
    let readings: Evidence['readings'] = [];
    for (let at = 0; at < 8; at += 1) {
      const [next] = assess({ ...evidence, readings }).next;
      if (!next) break;
      kinds.add(next.ask.kind);
      const [seen] = likelyAnswers({ ...evidence, readings }, next.ask, 1) as [Seen];
      expect(seen.kind).toBe(next.ask.kind);
      readings = [...readings, { id: `r${at}`, ask: next.ask, seen, at: '', round: 0 }];
    }
    expect(kinds.size).toBeGreaterThan(1);
  });
});

describe('looking ahead', () => {
  let waiting: (() => void)[] = [];
  const later = (act: () => void) => void waiting.push(act);
  const run = () => {
    for (const act of waiting.splice(0)) act();
  };
  beforeEach(() => {
    waiting = [];
  });

  it('hands on each likely answer, one piece of work at a time', () => {
    const assessment = assess(evidence);
    const kept: Evidence[] = [];
    lookAhead(evidence, assessment, (one) => kept.push(one), later);
    let pieces = 0;
    while (waiting.length > 0) {
      expect(waiting).toHaveLength(1);
      run();
      pieces += 1;
    }
    expect(pieces).toBeGreaterThan(3);
    expect(pieces).toBeLessThan(9);
    expect(kept.length).toBeGreaterThan(2);
    expect(kept.every(({ readings }) => readings.length === 1)).toBe(true);
  });

  it('ends when it is told', () => {
    const end = lookAhead(evidence, assess(evidence), () => {}, later);
    run();
    end();
    run();
    expect(waiting).toEqual([]);
  });

  it('does nothing where nothing is asked', () => {
    const spy = vi.fn();
    lookAhead(evidence, { next: [] } as unknown as Assessment, spy, spy);
    expect(spy).not.toHaveBeenCalled();
  });
});
