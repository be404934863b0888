import { describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { restingSetting } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { assess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { likelyAnswers } from '../diagnosis/foresee.ts';
import type { Seen, SeenOf } from '../readings/reading.ts';
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

  it.each(['open', 'closed'] as const)(
    'are taken by the engine for every kind it asks of a guitar that is %s',
    (access) => {
      const kinds = new Set<string>();
      let readings: Evidence['readings'] = [];
      for (let at = 0; at < 8; at += 1) {
        const [next] = assess({ ...evidence, access, readings }).next;
        if (!next) break;
        kinds.add(next.ask.kind);
        const [seen] = likelyAnswers({ ...evidence, access, readings }, next.ask, 1) as [Seen];
        expect(seen.kind).toBe(next.ask.kind);
        readings = [...readings, { id: `r${at}`, ask: next.ask, seen, at: '', round: 0 }];
      }
      expect(kinds.size).toBeGreaterThan(1);
    },
  );

  it('are every word that can be chosen for a sound, what strikes the ear of a good guitar first', () => {
    const heard = likelyAnswers(
      evidence,
      { kind: 'listen', setting: { ...restingSetting(circuit), plug: 'in' } },
      8,
    );
    expect(heard[0]).toEqual({ kind: 'listen', heard: 'normal' });
    expect(heard.map((seen) => (seen as SeenOf<'listen'>).heard).sort()).toEqual(
      ['crackle', 'dull', 'hum', 'normal', 'silent', 'thin', 'weak'].sort(),
    );
  });
});

describe('looking ahead', () => {
  it('works out what is believed after each likely answer, then the rest of each, and can be left between any two', () => {
    const asked: { readonly what: string; readonly one: Evidence }[] = [];
    const noting = (what: string) =>
      function* (one: Evidence) {
        asked.push({ what, one });
        yield;
      };
    const looking = { believe: noting('believe'), answer: noting('answer') };
    const work = lookAhead(evidence, assess(evidence), looking);
    const before: number[] = [];
    while (!work.next().done) before.push(asked.length);
    // Rests before each and within it.
    expect(before).toEqual([...asked.keys()].flatMap((at) => [at, at + 1]));
    const count = asked.length / 2;
    expect(count).toBeGreaterThan(2);
    expect(asked.map(({ what }) => what)).toEqual([
      ...Array(count).fill('believe'),
      ...Array(count).fill('answer'),
    ]);
    const [first, second] = [asked.slice(0, count), asked.slice(count)];
    expect(first.map(({ one }) => one)).toEqual(second.map(({ one }) => one));
    expect(asked.every(({ one }) => one.readings.length === 1)).toBe(true);
  });

  it('does nothing where nothing is asked', () => {
    const spy = vi.fn();
    const looking = { believe: spy, answer: spy };
    const work = lookAhead(evidence, { next: [] } as unknown as Assessment, looking);
    expect(work.next().done).toBe(true);
    expect(spy).not.toHaveBeenCalled();
  });
});
