import { checkSetting } from '../circuit/check.ts';
import { bits, probability, seconds } from '../circuit/units.ts';
import { askText } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { askKey } from './ask-key.ts';
import type {
  Access,
  Assessment,
  Evidence,
  NextReading,
  Standing,
  SuspectedRepair,
} from './assessment.ts';
import type { Belief } from './belief.ts';
import { doubtedFigure } from './doubted.ts';
import { effortOf } from './effort.ts';
import { expectation } from './expect.ts';
import { type Group, groupsOf } from './groups.ts';
import { HEALTHY, type Hypothesis, SOMETHING_ELSE, sentencesOf } from './hypothesis.ts';
import { type Believed, type Bench, beepsOf, believed, benchOf, liftsAt } from './kept-bench.ts';
import { learnedValues } from './learned-values.ts';
import { fewAreLeft } from './lifts.ts';
import { type Ranked, rankReadings } from './next-reading.ts';
import { openAsks } from './open-asks.ts';
import type { Predictor } from './predictor.ts';
import { reportOf } from './report.ts';
import { ended, type Rests } from './rests.ts';
import { byEarEffort, perEffort, type Rule } from './rule.ts';
import { verdictOf, WORTH_ASKING } from './verdict.ts';
import { whyOf } from './why.ts';

/** Of thousands of suspects, heaviest first, most weigh less than this: too little to mark a place on a drawing. */
const TRACE = 1e-7;
/** How many alternatives are offered beside the best reading. */
const OFFERED = 6;

/** An assessment under way: what is believed comes first; what to read next and the verdict take most of the time. */
export interface Begun {
  /** What is believed, in one piece from wherever `rest` has come to: for somebody who waits for it. */
  stand(): Standing;
  /** Works out no more than that, resting now and then. */
  readonly believed: Rests<void>;
  /** Gives the whole of it, resting now and then: a worker can answer something else meanwhile. */
  readonly rest: Rests<Assessment>;
}

/** Everything that follows from the evidence, readings ranked by the product's own rule unless another is given. Throws CircuitError where circuit or settings do not hold together. */
export function assess(evidence: Evidence, rule?: Rule): Assessment {
  return ended(beginToAssess(evidence, rule).rest);
}

export function beginToAssess(evidence: Evidence, rule?: Rule): Begun {
  const finding = standing(evidence);
  let found: Found | undefined;
  const goOn = (): Found | undefined => {
    const { done, value } = found ? { done: true as const, value: found } : finding.next();
    if (done) found = value;
    return found;
  };
  return {
    stand() {
      while (!goOn());
      return (found as Found).told;
    },
    believed: (function* () {
      while (!goOn()) yield;
    })(),
    rest: (function* () {
      while (!goOn()) yield;
      return yield* restOf(evidence, found as Found, rule);
    })(),
  };
}

interface Found extends Believed {
  readonly bench: Bench;
  readonly groups: readonly Group[];
  readonly told: Standing;
}

function* standing(evidence: Evidence): Rests<Found> {
  const bench = benchOf(evidence.circuit, evidence.meter, evidence.repairs);
  const { predictor, circuit } = bench;
  for (const { ask } of evidence.readings) checkSetting(circuit, ask.setting);
  const now = yield* believed(bench, evidence);
  const { apart, free, stale, belief } = now;
  const groups = groupsOf(belief.weighed);
  // What measured as it should says nothing that a person would ask for; what did not is a ground.
  const odd = apart.filter(({ inLine, reading }) => !inLine && free.includes(reading));
  const told: Standing = {
    suspects: suspectsOf(belief, groups),
    readings: [
      ...odd.map(({ part, reading }) => ({
        ...reportOf(reading, circuit, evidence.meter, predictor, false),
        apart: part,
      })),
      ...evidence.readings.map((reading) =>
        reportOf(reading, circuit, evidence.meter, predictor, stale.includes(reading)),
      ),
    ],
    suspicion: suspicionOf(belief),
    liveSuspects: groups.filter((group) => group.probability > 0.01).length,
  };
  return { bench, ...now, groups, told };
}

function* restOf(
  evidence: Evidence,
  { bench, counted, stale, readings, belief, groups, told }: Found,
  rule?: Rule,
): Rests<Assessment> {
  const { predictor, circuit } = bench;
  const lead = belief.weighed[0]?.hypothesis;
  const rechecks = recheckAsks(evidence, stale, predictor);
  const rankedWith = (access: Access) => {
    const byEar = evidence.byEar === true && access === 'open';
    const offered = [
      ...bench.asks[access],
      ...(byEar ? beepsOf(bench) : []),
      ...(access === 'open' && fewAreLeft(groups) ? liftsAt(bench) : []),
    ];
    return rankReadings(
      predictor,
      groups,
      openAsks(offered, counted, evidence.refused),
      readings,
      rule ?? (byEar ? byEarEffort : perEffort),
    );
  };
  const atJack = startsAtJack(counted) ? yield* rankedWith('closed') : [];
  const ranked = atJack.some(({ bits: worth }) => worth > WORTH_ASKING)
    ? atJack
    : yield* rankedWith(evidence.access);
  const reports = told.readings;
  const last = readings.at(-1)?.ask ?? null;
  const found =
    rechecks.length > 0
      ? null
      : verdictOf({ predictor, belief, groups, ranked, readings, reports });
  const doubted =
    found?.kind === 'outside' ? doubtedFigure(predictor, belief, readings, evidence.refused) : null;
  const verdict = doubted ? null : found;
  const asked = new Set(counted.map(({ ask }) => askKey(ask)));
  const asNext = (one: Ranked): NextReading => ({
    ask: one.ask,
    askText: askText(predictor.layout, one.ask),
    expected: expectation(circuit, evidence.meter, one.ask),
    why: (asked.has(askKey(one.ask)) && onceMore(one.ask)) || whyOf(predictor, groups, one.ask),
    worthBits: bits(one.bits),
    effortSeconds: seconds(one.seconds),
  });
  const recheck = rechecks.map((ask) => asNext({ ask, bits: 0, seconds: 0, rank: 0 }));
  const first = doubted
    ? [{ ask: doubted, bits: 0, seconds: effortOf(predictor.layout, doubted, last), rank: 0 }]
    : [];
  const others = ranked.filter(({ ask }) => !doubted || askKey(ask) !== askKey(doubted));
  return {
    ...told,
    next:
      verdict || rechecks.length > 0
        ? recheck
        : [...first, ...others].slice(0, OFFERED).map(asNext),
    verdict,
    learned: lead ? learnedValues(predictor, lead, readings) : [],
    recheck,
  };
}

/** Why what was done already is asked once more; empty for what is not. */
function onceMore({ kind }: Ask): string {
  if (kind === 'flex') return diagnosisWords().onceMoreALooseJointMayHold;
  if (kind === 'turn') return diagnosisWords().onceMoreAWornTrackJumpsAgain;
  if (kind === 'ohms') return diagnosisWords().onceMoreMuchHangsOnThisFigure;
  return kind === 'tap' ? diagnosisWords().onceMoreASwingIsEasilyMisjudged : '';
}

/** The first figure is taken at the jack where that tells anything, however far the guitar is open: it costs least and parts most. */
const startsAtJack = (readings: readonly Reading[]): boolean =>
  !readings.some(({ seen }) => seen.kind === 'ohms' || seen.kind === 'turn');

/** After a repair: the asks of earlier rounds that did not fit and were not repeated since. */
function recheckAsks(evidence: Evidence, stale: readonly Reading[], predictor: Predictor) {
  const round = evidence.repairs.length;
  const fresh = new Set(
    evidence.readings
      .filter((reading) => reading.round === round)
      .map(
        (reading) => askText(predictor.layout, reading.ask) + JSON.stringify(reading.ask.setting),
      ),
  );
  const refused = new Set(
    evidence.refused.map((ask) => askText(predictor.layout, ask) + JSON.stringify(ask.setting)),
  );
  const keyed = new Map(
    stale.map(
      (reading) =>
        [
          askText(predictor.layout, reading.ask) + JSON.stringify(reading.ask.setting),
          reading,
        ] as const,
    ),
  );
  return [...keyed]
    .filter(
      ([key, reading]) =>
        !fresh.has(key) &&
        !refused.has(key) &&
        reportOf(reading, evidence.circuit, evidence.meter, predictor, false).fits === 'off',
    )
    .map(([, reading]) => reading.ask);
}

function suspectsOf(belief: Belief, groups: readonly Group[]): readonly SuspectedRepair[] {
  const list = groups.map((group): SuspectedRepair => {
    // Thousands of suspects, of which most share a fault in other sizes: each fault is described once.
    const byFault = new Map<string, { hypothesis: Hypothesis; weight: number }>();
    for (const { hypothesis, probability: weight } of group.members) {
      const id = hypothesis.faults.map((fault) => fault.id).join(' + ');
      const known = byFault.get(id);
      if (known) known.weight += weight;
      else byFault.set(id, { hypothesis, weight });
    }
    return {
      repair: group.repair,
      title: titleOf(group),
      probability: probability(group.probability),
      faults: [...byFault]
        .filter(([id]) => id !== '')
        .map(([id, { hypothesis, weight }]) => ({
          id,
          sentence: diagnosisWords().both(sentencesOf(hypothesis)),
          sites: hypothesis.faults.flatMap((fault) => fault.sites),
          probability: probability(weight),
        }))
        .sort((x, y) => y.probability - x.probability),
    };
  });
  list.push({
    repair: SOMETHING_ELSE,
    title: diagnosisWords().somethingElse,
    probability: probability(belief.somethingElse),
    faults: [],
  });
  return list.sort((x, y) => y.probability - x.probability);
}

function titleOf(group: Group): string {
  if (group.repair === HEALTHY) return diagnosisWords().nothingItIsWiredAsIntended;
  for (const { hypothesis } of group.members)
    for (const fault of hypothesis.faults)
      if (fault.remedy.key === group.repair) return fault.remedy.title;
  return group.repair;
}

function suspicionOf(belief: Belief): Readonly<Record<string, number>> {
  const found: Record<string, number> = {};
  for (const { hypothesis, probability: weight } of belief.weighed) {
    if (weight < TRACE) break;
    for (const site of new Set(hypothesis.faults.flatMap((fault) => fault.sites)))
      found[site] = (found[site] ?? 0) + weight;
  }
  return Object.fromEntries(Object.entries(found).filter(([, share]) => share > 0.001));
}
