import { describe, expect, it } from 'vitest';
import { CircuitError } from '../circuit/errors.ts';
import { ohms } from '../circuit/units.ts';
import type { Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { assess } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { Bench } from './evidence.fixture.ts';

const one = new Bench('one-humbucker-one-knob');
const two = new Bench('two-pickups-shared-controls');
const total = ({ suspects }: Assessment) =>
  suspects.reduce((sum, { probability }) => sum + probability, 0);

describe('assess', () => {
  const start = assess(one.evidence([]));

  it('starts at the jack, however far the guitar is open, without a verdict', () => {
    expect(start.verdict).toBeNull();
    for (const { ask } of start.next)
      if ('red' in ask)
        for (const node of [ask.red, ask.black]) expect(node).toMatch(/^(jack|strings)[.]/);
    expect(start.next.length).toBeGreaterThan(0);
  });

  it('offers the best reading first, each with what it shows, why and what it costs', () => {
    const rates = start.next.map(
      ({ worthBits, effortSeconds }) => worthBits / (effortSeconds + 30),
    );
    rates.slice(1).forEach((rate, at) => {
      expect(rate).toBeLessThanOrEqual(rates[at]! + 1e-12);
    });
    for (const next of start.next) {
      expect(next.askText).toMatch(/[.?]$/);
      expect(next.why).toMatch(/[.]$/);
      expect(next.expected.text).not.toBe('');
    }
  });

  it('knows healthy and something else among its suspects, and sums to 1', () => {
    expect(total(start)).toBeCloseTo(1, 9);
    const keys = start.suspects.map(({ repair }) => repair);
    expect(keys).toContain('healthy');
    expect(keys).toContain('something else');
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('sums to 1 within each repair as well, and largest first', () => {
    const found = assess(one.evidence([one.ohms(4200, one.at())]));
    expect(total(found)).toBeCloseTo(1, 9);
    const list = found.suspects.map(({ probability }) => probability);
    expect(list).toEqual([...list].sort((x, y) => y - x));
    for (const { faults, probability, repair } of found.suspects)
      if (faults.length > 0)
        expect(
          faults.reduce((sum, fault) => sum + fault.probability, 0),
          repair,
        ).toBeCloseTo(probability, 9);
  });

  it('gives the same answer to the same evidence, also after another guitar', () => {
    const evidence = one.evidence([one.ohms(4200, one.at())]);
    // Guitars that predict the same to seven places share one prediction: which of them is solved first shows below that.
    const figures = ({ suspects, next }: Assessment) => [
      ...suspects.map(({ repair, probability }) => [repair, probability.toFixed(6)]),
      ...next.map(({ ask, worthBits }) => [askKey(ask), worthBits.toFixed(6)]),
    ];
    const first = figures(assess(evidence));
    assess(two.evidence([]));
    expect(figures(assess(evidence))).toEqual(first);
  });

  it('asks nothing that was refused or answered', () => {
    const refused = start.next.map(({ ask }) => ask);
    const keys = assess(one.evidence([], { refused })).next.map(({ ask }) => askKey(ask));
    expect(keys.length).toBeGreaterThan(0);
    for (const ask of refused) expect(keys).not.toContain(askKey(ask));
  });

  it('turns a bad circuit away by name', () => {
    const [lead] = one.circuit.leads;
    const circuit = {
      ...one.circuit,
      leads: [...one.circuit.leads, { ...lead!, id: 'stray', to: 'moon.1' }],
    };
    expect(() => assess({ ...one.evidence([]), circuit })).toThrow(CircuitError);
    expect(() => assess({ ...one.evidence([]), circuit })).toThrow(
      'lead stray ends on moon.1, which is no lug of this guitar',
    );
  });

  // A position that the switch lacks is taken as "no contact closed" instead of being named.
  it('turns a setting away that the guitar does not have', () => {
    const nowhere = { ...two.at(), positions: { selector: 'middle' } };
    expect(() => assess(two.evidence([two.ohms(7000, nowhere)]))).toThrow(CircuitError);
  });
});

describe('a hunt to its end, on figures of a guitar with one fault', () => {
  it.each([
    ['coil:bridgeSlug', [{ op: 'open', site: 'bridgeSlug:winding' }]],
    ['remake:jackHot', [{ op: 'open', site: 'jackHot@to' }]],
    [
      'clear:jack.tip~jack.sleeve',
      [{ op: 'bridge', a: 'jack.tip', b: 'jack.sleeve', ohms: ohms(0.5) }],
    ],
  ] as const)('names %s', (repair, edits) => {
    const readings: Reading[] = [];
    let found = assess(one.evidence([]));
    while (!found.verdict && found.next[0] && readings.length < 12) {
      readings.push(one.answer(edits, found.next[0].ask));
      found = assess(one.evidence(readings));
    }
    expect(found.suspects[0]?.repair).toBe(repair);
    expect(found.verdict).toMatchObject({ kind: 'repair', repairs: [repair] });
    expect(found.verdict!.grounds.length).toBeGreaterThan(0);
  });
});

describe('what the readings teach of the parts', () => {
  it('is shown for a part that was read alone, with its spread', () => {
    const lifted = one.at(undefined, {}, ['hot@to']);
    const found = assess(one.evidence([one.ohms(467e3, lifted, 'volume.1', 'volume.3')]));
    const volume = found.learned.find(({ part }) => part === 'volume');
    expect(volume).toMatchObject({ title: 'volume', nominal: 500e3 });
    expect(Math.abs(volume!.estimate / 467e3 - 1)).toBeLessThan(0.01);
    expect(volume!.spread).toBeLessThan(0.03);
  });

  it('is nothing before the first reading', () => {
    expect(assess(one.evidence([])).learned).toEqual([]);
  });
});
