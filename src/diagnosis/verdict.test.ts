import { describe, expect, it } from 'vitest';
import type { Ask, Reading } from '../readings/reading.ts';
import type { Belief } from './belief.ts';
import { Bench, meter } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import type { Ranked } from './next-reading.ts';
import { reportOf } from './report.ts';
import { verdictOf } from './verdict.ts';

const bench = new Bench('one-humbucker-one-knob');
const coil = bench.hypothesis('coil-open:bridgeSlug');
const wire = bench.hypothesis('open:jackHot@to');
const healthy = bench.singles[0]!;

const ask: Ask = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting: bench.at() };
const worth = (bits: number, seconds: number): readonly Ranked[] => [
  { ask, bits, seconds, rank: bits / (seconds + 30) },
];
const openAtJack = bench.ohms(500e3, bench.at());
const lifted = bench.ohms('open', bench.at(undefined, {}, ['hot@to']), 'hot@to', 'cold@to');

/** A belief of just these shares; what is left is `something else`. */
function verdict(
  shares: readonly (readonly [typeof coil, number])[],
  bits: number,
  readings: readonly Reading[] = [openAtJack, lifted],
  seconds = 10,
) {
  const belief: Belief = {
    // As in every belief, healthy is among the weighed.
    weighed: [
      ...shares.map(([hypothesis, probability]) => ({ hypothesis, probability })),
      ...(shares.some(([hypothesis]) => hypothesis === healthy)
        ? []
        : [{ hypothesis: healthy, probability: 0 }]),
    ],
    somethingElse: 1 - shares.reduce((sum, [, share]) => sum + share, 0),
  };
  const { predictor } = bench;
  return verdictOf({
    predictor,
    belief,
    groups: groupsOf(belief.weighed),
    ranked: worth(bits, seconds),
    readings,
    reports: readings.map((one) => reportOf(one, bench.circuit, meter, predictor, false)),
  });
}

describe('a verdict', () => {
  it('is none before the first reading', () => {
    expect(verdict([[coil, 0.99]], 0, [])).toBeNull();
  });

  it('names the repair where one is sure and far ahead, though a little more could be learned', () => {
    const found = verdict(
      [
        [coil, 0.97],
        [wire, 0.02],
      ],
      0.09,
    );
    expect(found).toMatchObject({
      kind: 'repair',
      repairs: ['coil:bridgeSlug'],
      probability: 0.97,
      against: [],
      sites: coil.faults[0]!.sites,
    });
    expect(found!.sentence).toBe("The bridge pickup's slug coil is open inside.");
    expect(found!.grounds).toEqual([openAtJack.id, lifted.id]);
    expect(found!.steps).toEqual(coil.faults[0]!.remedy.steps);
    expect(found!.proof).toBe(coil.faults[0]!.remedy.proof);
  });

  it('makes sure first where a reading is worth its trouble: a long one only before a part is replaced', () => {
    const shares = (lead: typeof coil, share: number) => [[lead, share] as const];
    const cutOff = [bench.ohms('open', bench.at())];
    expect(verdict(shares(coil, 0.97), 0.2)).toBeNull();
    expect(verdict(shares(coil, 0.97), 0.2, undefined, 120)).toBeNull();
    expect(verdict(shares(wire, 0.97), 0.2, cutOff)).toBeNull();
    expect(verdict(shares(wire, 0.97), 0.2, cutOff, 120)?.kind).toBe('repair');
    expect(verdict(shares(coil, 0.995), 0.2)?.kind).toBe('repair');
  });

  it('is not given on what was heard alone while there is anything to measure that tells more', () => {
    const plugged = { ...bench.at(), plug: 'in' as const };
    const heard = bench.reading(
      { kind: 'listen', setting: plugged },
      { kind: 'listen', heard: 'thin' },
    );
    const elsewhere = bench.true(coil.edits, bench.at(), 'volume.1', 'jack.sleeve');
    const sure = [[coil, 0.999] as const];
    expect(verdict(sure, 0.02, [heard, elsewhere])).toBeNull();
    expect(verdict(sure, 0.02, [heard, openAtJack])?.kind).toBe('repair');
    expect(verdict(sure, 0, [heard, elsewhere])?.kind).toBe('repair');
  });

  it('is given on swings that are against each other, of which one alone says nothing', () => {
    const turned = bench.hypothesis('coil-reversed:bridgeSlug');
    const [screw, slug] = ['bridgeScrew', 'bridgeSlug'].map((coil) =>
      bench.reading(
        { kind: 'tap', coil, red: 'jack.tip', black: 'jack.sleeve', setting: bench.at() },
        { kind: 'tap', swing: coil === 'bridgeSlug' ? 'plus' : 'minus' },
      ),
    ) as [Reading, Reading];
    const sure = [[turned, 0.995] as const];
    expect(verdict(sure, 0.02, [screw])).toBeNull();
    expect(verdict(sure, 0.02, [screw, slug])?.kind).toBe('repair');
  });

  it('does not call a guitar likely sound on which a figure is off, and says what is off', () => {
    const likely = [[healthy, 0.8] as const, [wire, 0.1] as const];
    const fits = bench.true([], bench.at());
    expect(verdict(likely, 0.05, [fits])).toMatchObject({ kind: 'not-ruled-out', against: [] });
    expect(verdict(likely, 0.05, [openAtJack])).toBeNull();
    const last = verdict(likely, 0, [openAtJack]);
    expect(last).toMatchObject({ kind: 'not-ruled-out', against: [openAtJack.id] });
    expect(last?.sentence).toMatch(/^What was off is likeliest a slip/);
  });

  it('tells under each reading what it rules out that would explain the rest as well', () => {
    const wiper = bench.hypothesis('wiper:volume');
    const dead = bench.ohms('open', bench.at());
    const whole = bench.true(wiper.edits, bench.at(), 'jack.tip', 'volume.2');
    const shares = [[wiper, 0.99] as const, [wire, 0.001] as const, [coil, 0.001] as const];
    // The coil is no rival: with it open the jack still reads the volume pot.
    expect(verdict(shares, 0, [dead, whole])!.ruledOut).toEqual([
      { reading: whole.id, titles: [wire.faults[0]!.remedy.title] },
    ]);
    expect(verdict(shares, 0, [dead])!.ruledOut).toEqual([]);
  });

  it('waits below 95 % while a reading is worth taking', () => {
    expect(
      verdict(
        [
          [coil, 0.94],
          [wire, 0.05],
        ],
        0.2,
      ),
    ).toBeNull();
  });

  it('says what cannot be told apart once nothing is left to learn', () => {
    const found = verdict(
      [
        [coil, 0.6],
        [wire, 0.35],
      ],
      0,
    );
    expect(found).toMatchObject({
      kind: 'cannot-tell-apart',
      repairs: ['coil:bridgeSlug', 'remake:jackHot'],
      probability: expect.closeTo(0.95, 12),
    });
    expect(found!.sentence).toMatch(/^No reading left can tell these apart: .*; or .*[.]$/);
    expect(found!.split).toMatch(/first, as the likeliest/);
  });

  it('is healthy where nothing else is left, on the grounds of what fits', () => {
    const fits = bench.true([], bench.at());
    expect(verdict([[healthy, 0.98]], 0.1, [fits])).toMatchObject({
      kind: 'healthy',
      repairs: [],
      grounds: [fits.id],
      against: [],
    });
  });

  // With nothing left to ask, healthy is said at any probability, and that no modelled fault is left.
  it('does not say that no fault is left where faults have most of the belief', () => {
    const found = verdict(
      [
        [healthy, 0.4],
        [coil, 0.3],
        [wire, 0.28],
      ],
      0,
      [bench.true([], bench.at())],
    );
    expect(found?.kind).not.toBe('outside');
    expect(found?.sentence ?? '').not.toMatch(/no modelled fault is left/);
  });

  it('lists a reading that speaks against healthy', () => {
    expect(verdict([[healthy, 0.98]], 0, [openAtJack])).toMatchObject({
      kind: 'healthy',
      against: [openAtJack.id],
    });
  });

  it('is outside the model where nothing modelled explains four figures, and names the one that fits worst', () => {
    const odd = bench.ohms(37, bench.at(), 'volume.1', 'volume.3');
    const readings = [
      bench.true([], bench.at()),
      bench.true([], bench.at(undefined, { volume: 0 })),
      odd,
      bench.true([], bench.at(), 'strings.metal', 'jack.sleeve'),
    ];
    expect(verdict([[healthy, 0.5]], 1, readings)).toMatchObject({
      kind: 'outside',
      grounds: [odd.id],
      probability: 0.5,
    });
  });

  it('is not outside for joints that were looked at: eyes are no figures', () => {
    const looks = ['cold@to', 'hot@to', 'jackHot@to'].map((at) =>
      bench.reading({ kind: 'look', at, setting: bench.at() }, { kind: 'look', how: 'good' }),
    );
    expect(verdict([[healthy, 0.5]], 1, [openAtJack, ...looks])).toBeNull();
  });

  it('is not outside on one odd figure while more can be learned', () => {
    expect(verdict([[healthy, 0.5]], 1, [openAtJack])).toBeNull();
  });
});

describe('a report', () => {
  const fits = (reading: Reading) =>
    reportOf(reading, bench.circuit, meter, bench.predictor, false).fits;
  it('says whether a figure is what the intended wiring shows', () => {
    expect(fits(bench.ohms(8460, bench.at()))).toBe('fits');
    expect(fits(bench.ohms(8000, bench.at()))).toBe('fits');
    expect(fits(bench.ohms(500e3, bench.at()))).toBe('off');
    expect(fits(bench.ohms('open', bench.at()))).toBe('off');
    expect(fits(bench.ohms(6800, bench.at()))).toBe('doubtful');
  });

  it('shows expected beside measured', () => {
    const report = reportOf(
      bench.ohms(500e3, bench.at()),
      bench.circuit,
      meter,
      bench.predictor,
      true,
    );
    expect(report).toMatchObject({ measuredText: '500 kΩ', stale: true });
    expect(report.expected.text).toBe('about 8.46 kΩ');
    expect(report.expected.low).toBeLessThan(8460);
    expect(report.expected.high).toBeGreaterThan(8460);
  });
});
