import { describe, expect, it } from 'vitest';
import type { Reading } from '../readings/reading.ts';
import { type Belief, believe, normalise, posterior } from './belief.ts';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import { PRIOR } from './hypothesis.ts';
import { distinct } from './repeats.ts';

const bench = new Bench('two-pickups-shared-controls');
const of = (readings: readonly Reading[]): Belief =>
  believe(bench.predictor, bench.singles, distinct(readings));
const sum = (belief: Belief) =>
  belief.weighed.reduce((total, { probability }) => total + probability, belief.somethingElse);
const repairOf = (belief: Belief, key: string) =>
  groupsOf(belief.weighed).find(({ repair }) => repair === key)?.probability ?? 0;

function permutations<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]];
  return list.flatMap((one, at) =>
    permutations([...list.slice(0, at), ...list.slice(at + 1)]).map((rest) => [one, ...rest]),
  );
}

describe('belief', () => {
  const open = [{ op: 'open', site: 'bridgeCoil:winding' }] as const;
  const four = [
    bench.true(open, bench.at('bridge')),
    bench.true(open, bench.at('neck')),
    bench.reading(
      {
        kind: 'tap',
        coil: 'neckCoil',
        red: 'jack.tip',
        black: 'jack.sleeve',
        setting: bench.at('neck'),
      },
      { kind: 'tap', swing: 'minus' },
    ),
    bench.reading(
      { kind: 'listen', setting: { ...bench.at('bridge'), plug: 'in' } },
      { kind: 'listen', heard: 'thin' },
    ),
  ];

  it('is the same for all 24 orders of four readings, to 1e-9', () => {
    const byName = ({ weighed, somethingElse }: Belief) =>
      new Map<number, number>([
        ...weighed.map(({ hypothesis, probability }) => [hypothesis.index, probability] as const),
        [-1, somethingElse],
      ]);
    const first = byName(of(four));
    for (const order of permutations(four)) {
      const other = byName(of(order));
      expect(other.size).toBe(first.size);
      for (const [index, probability] of first)
        expect(Math.abs((other.get(index) ?? Number.NaN) - probability)).toBeLessThan(1e-9);
    }
  });

  it('sums to 1 at every step, largest first', () => {
    for (let count = 0; count <= four.length; count += 1) {
      const belief = of(four.slice(0, count));
      expect(sum(belief)).toBeCloseTo(1, 12);
      const list = belief.weighed.map(({ probability }) => probability);
      expect(list).toEqual([...list].sort((x, y) => y - x));
    }
  });

  it('before any reading is the prior without the pairs', () => {
    const belief = of([]);
    const scale = PRIOR.healthy + PRIOR.single + PRIOR.somethingElse;
    expect(belief.somethingElse).toBeCloseTo(PRIOR.somethingElse / scale, 9);
    expect(repairOf(belief, 'healthy')).toBeCloseTo(PRIOR.healthy / scale, 9);
  });

  it('follows a reading to the open coil', () => {
    const belief = of([
      ...four.slice(0, 2),
      bench.true(open, bench.at('bridge', {}, ['bridgeHot@to']), 'bridgeHot@to', 'bridgeBraid@to'),
    ]);
    expect(groupsOf(belief.weighed)[0]?.repair).toBe('coil:bridgeCoil');
  });
});

describe('a repeated reading', () => {
  const one = bench.ohms(7390, bench.at('neck'));

  it('that is equal, or nearly, is one reading, made twice', () => {
    const twice = [{ ...one, times: 2 }];
    expect(distinct([one, { ...one, id: 'again' }])).toEqual(twice);
    expect(distinct([one, bench.ohms(7400, bench.at('neck'))])).toEqual(twice);
    expect(distinct([one, one, one])).toEqual([{ ...one, times: 3 }]);
  });

  it('that fits says hardly more than the first time: it would share a slip', () => {
    const [alone, twice] = [of([one]), of([one, { ...one, id: 'again' }])];
    const healthy = (belief: Belief) => repairOf(belief, 'healthy');
    expect(healthy(twice)).toBeGreaterThanOrEqual(healthy(alone));
    expect(healthy(twice) - healthy(alone)).toBeLessThan(0.01);
  });

  it('that is off is a slip half as likely, by habit alone', () => {
    const open = bench.true(bench.hypothesis('coil-open:neckCoil').edits, bench.at('neck'));
    const [once, twice] = [of([open]), of([open, { ...open, id: 'again' }])].map((belief) =>
      Math.log(repairOf(belief, 'healthy') / repairOf(belief, 'coil:neckCoil')),
    ) as [number, number];
    expect(twice - once).toBeCloseTo(-Math.LN2, 1);
  });

  it('that differs counts, and so does another ask', () => {
    expect(distinct([one, bench.ohms(470e3, bench.at('neck'))])).toHaveLength(2);
    expect(distinct([one, bench.ohms(7390, bench.at('bridge'))])).toHaveLength(2);
    expect(distinct([one, bench.ohms('open', bench.at('neck'))])).toHaveLength(2);
  });

  it('of words counts once where they agree', () => {
    const heard = (word: 'dull' | 'thin') =>
      bench.reading({ kind: 'listen', setting: bench.at('neck') }, { kind: 'listen', heard: word });
    expect(distinct([heard('dull'), heard('dull')])).toHaveLength(1);
    expect(distinct([heard('dull'), heard('thin')])).toHaveLength(2);
  });
});

describe('a healthy pot two deviations off', () => {
  // 500 k of +-20 %: 400 k. Read four times in four ways, each a figure that a pot of 400 k gives (series and parallel laws).
  const track = 400e3;
  // The tone capacitor is off as well: one that is shorted would put the tone pot beside the volume.
  const lifted = ['neckHot@to', 'selectorOut@to', 'jackHot@from', 'capHotLeg@to'];
  const readings = [
    bench.ohms(track, bench.at('neck', {}, lifted), 'volume.1', 'volume.3'),
    bench.ohms(track - 10, bench.at('neck', {}, lifted), 'volume.1', 'volume.2'),
    bench.ohms((track * 0.15) / 1, bench.at('neck', { volume: 5 }, lifted), 'volume.1', 'volume.2'),
    bench.ohms(track * 0.85, bench.at('neck', { volume: 5 }, lifted), 'volume.2', 'volume.3'),
  ];

  it('is no false alarm after four readings', () => {
    const belief = of(readings);
    expect(repairOf(belief, 'pot:volume')).toBeLessThan(0.2);
    expect(repairOf(belief, 'pot:volume')).toBeLessThan(repairOf(belief, 'healthy'));
    expect(belief.somethingElse).toBeLessThan(0.1);
  });

  it('is judged by four readings hardly worse than by one', () => {
    const odds = (belief: Belief) => repairOf(belief, 'pot:volume') / repairOf(belief, 'healthy');
    // Taken as independent the odds would rise by a factor of hundreds.
    expect(odds(of(readings)) / odds(of(readings.slice(0, 1)))).toBeLessThan(3);
  });

  it('while half of a pot is an alarm', () => {
    const half = [
      bench.ohms(250e3, bench.at('neck', {}, lifted), 'volume.1', 'volume.3'),
      bench.ohms(250e3, bench.at('neck', {}, lifted), 'volume.1', 'volume.2'),
    ];
    expect(repairOf(of(half), 'pot:volume')).toBeGreaterThan(0.7);
  });
});

describe('two faults at once', () => {
  it('are a suspect where neither explains both readings', () => {
    const edits = [
      { op: 'open', site: 'bridgeCoil:winding' },
      { op: 'open', site: 'stringGround@to' },
    ] as const;
    const belief = of([
      bench.true(edits, bench.at('neck')),
      bench.true(edits, bench.at('bridge')),
      bench.true(edits, bench.at('bridge', {}, ['bridgeHot@to']), 'bridgeHot@to', 'bridgeBraid@to'),
      bench.true(edits, bench.at('neck'), 'strings.metal', 'jack.sleeve'),
      bench.true(edits, bench.at('neck'), 'strings.metal', 'tone.case'),
    ]);
    const pairs = belief.weighed.filter(({ hypothesis }) => hypothesis.faults.length === 2);
    expect(pairs.reduce((total, { probability }) => total + probability, 0)).toBeGreaterThan(0.7);
    const lead = belief.weighed[0]!.hypothesis.faults.map(({ remedy }) => remedy.key).sort();
    expect(lead).toEqual(['coil:bridgeCoil', 'remake:stringGround']);
  });

  it('are weighed once as a pair, in one group', () => {
    const belief = of([
      bench.ohms(470e3, bench.at('bridge')),
      bench.ohms('open', bench.at('neck')),
    ]);
    const groups = groupsOf(belief.weighed);
    const members = groups.flatMap((group) => group.members);
    expect(members).toHaveLength(belief.weighed.length);
    expect(new Set(members.map(({ hypothesis }) => hypothesis.index)).size).toBe(members.length);
    expect(
      groups.reduce((total, { probability }) => total + probability, belief.somethingElse),
    ).toBeCloseTo(1, 12);
    for (const { repair, members: list } of groups)
      for (const { hypothesis } of list)
        expect(
          hypothesis.faults.length === 0
            ? ['healthy']
            : hypothesis.faults.map(({ remedy }) => remedy.key),
        ).toContain(repair);
  });
});

describe("Bayes' rule", () => {
  it('is the textbook one: 1 % ill, test 99 % and 5 % false alarms leave 1 in 6', () => {
    expect(posterior([0.01, 0.99], [0.99, 0.05])[0]).toBeCloseTo(1 / 6, 12);
  });
  it('holds far below what a double can hold', () => {
    expect(normalise([-2000, -2000 + Math.log(3)])[1]).toBeCloseTo(0.75, 12);
  });
});
