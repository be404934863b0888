import { probability } from '../circuit/units.ts';
import type { Remedy } from '../faults/fault.ts';
import type { Reading } from '../readings/reading.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import type { ReadingReport, RepairOption, Verdict } from './assessment.ts';
import { type Belief, scoredBy } from './belief.ts';
import { type Group, NAMED } from './groups.ts';
import { HEALTHY, type Hypothesis, sentencesOf } from './hypothesis.ts';
import { logLikelihood } from './likelihood.ts';
import type { Ranked } from './next-reading.ts';
import type { Predictor } from './predictor.ts';
import { ruledOutBy, scoresOf } from './rivals.ts';

/** The best repair must have this much, and be this many times ahead of the next. */
const SURE = 0.95;
const AHEAD = 10;
/** Below this a reading worth asking is still taken, if it is quick beside the repair. */
const CERTAIN = 0.99;
/** Seconds: a wire is taken off to make sure only where the repair would replace a part. */
const QUICK = 60;
/** Above this the readings are outside what is modelled. */
const OUTSIDE = 0.3;
/** Ears or eyes alone, or one odd figure, never put a guitar outside the model. */
const ENOUGH = 4;
/** A reading worth less than this, in bits, teaches nothing. */
const NOTHING_TO_LEARN = 0.004;

/** A reading worth less than this is asked only where nothing better is in reach. */
export const WORTH_ASKING = 0.1;
/** ln of the likelihood below which a figure is explained by nothing but a slip. */
const SLIPPED = -6;
/**
 * A guitar on which nothing was found to be off is not searched to the last joint: from this much on, and with nothing worth asking,
 * the closing check goes through it in better order.
 */
const LIKELY_SOUND = 0.75;
/**
 * What was measured must itself speak for the repair against a guitar as intended, ten to one: what is heard is easily misheard, in several
 * positions alike, and is no ground to take an iron to a guitar.
 */
const MEASURED = Math.log(10);

interface Findings {
  readonly predictor: Predictor;
  readonly belief: Belief;
  readonly groups: readonly Group[];
  readonly ranked: readonly Ranked[];
  readonly readings: readonly Reading[];
  readonly reports: readonly ReadingReport[];
}

/** The verdict, or null while there is something left to learn. */
export function verdictOf(findings: Findings): Verdict | null {
  const { belief, groups, ranked, readings } = findings;
  if (readings.length === 0) return null;
  const [first, second] = groups;
  if (!first) return null;
  const ahead =
    first.probability >= SURE && first.probability >= AHEAD * (second?.probability ?? 0);
  const worth = Math.max(0, ...ranked.map((one) => one.bits));
  const figures = readings.filter((one) => isMeasured(one) && one.seen.kind !== 'look').length;
  if (belief.somethingElse > OUTSIDE && (figures >= ENOUGH || worth <= NOTHING_TO_LEARN))
    return outside(findings);
  const isSound =
    first.repair === HEALTHY &&
    first.probability >= LIKELY_SOUND &&
    worth < WORTH_ASKING &&
    !hasOddFigure(findings);
  if (!ahead && !isSound && worth > NOTHING_TO_LEARN) return null;
  if (first.repair === HEALTHY) return nothingFound(findings, first, ahead);
  const lead = leadOf(first);
  if (ahead && first.probability < CERTAIN && canMakeSure(ranked, lead.fault.remedy)) return null;
  if (ahead && worth > NOTHING_TO_LEARN && measuredFor(findings, lead.hypothesis) < MEASURED)
    return null;
  const { grounds, against } = groundsOf(findings, first);
  const common = {
    probability: probability(first.probability),
    proof: lead.fault.remedy.proof,
    grounds,
    against,
  };
  if (ahead) {
    const likeliest = first.members[0]?.hypothesis;
    const sentence = diagnosisWords().both(likeliest ? sentencesOf(likeliest) : []);
    const also = alsoIn(first);
    return {
      ...common,
      ruledOut: ruledOutBy(findings, first, lead.hypothesis, grounds),
      kind: 'repair',
      sentence: `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.${also}`,
      repairs: [first.repair],
      steps: lead.fault.remedy.steps,
      options: [optionOf(first)],
      sites: lead.fault.sites,
    };
  }
  const together = groups
    .filter((group) => group.repair !== HEALTHY && group.probability > NAMED)
    .slice(0, 5);
  const leads = together.map(leadOf);
  return {
    ...common,
    kind: 'cannot-tell-apart',
    probability: probability(together.reduce((sum, group) => sum + group.probability, 0)),
    sentence: diagnosisWords().noReadingLeftCanTellThese(leads.map(({ fault }) => fault.sentence)),
    repairs: together.map((group) => group.repair),
    options: together.map(optionOf),
    steps: leads.map(({ fault }, at) => `${at + 1}. ${fault.remedy.title}.`),
    split: diagnosisWords().remedyFirstAsTheLikeliest(lead.fault.remedy.title),
    sites: leads.flatMap(({ fault }) => fault.sites),
  };
}

/** Whether a reading would still teach something for less trouble than a wrong repair is. */
const canMakeSure = (ranked: readonly Ranked[], { replaces }: Remedy): boolean =>
  ranked.some(
    ({ bits, seconds }) => bits >= WORTH_ASKING && (replaces === true || seconds <= QUICK),
  );

/** Told by ears, before or beside any meter, it is not. */
const isMeasured = ({ seen }: Reading): boolean =>
  seen.kind !== 'listen' && seen.kind !== 'touch' && seen.kind !== 'hum';

/** How much likelier all that was measured is with this fault than on a guitar as intended, as a natural logarithm. */
function measuredFor({ predictor, belief, readings }: Findings, fault: Hypothesis): number {
  const measured = readings.filter(isMeasured);
  const score = (hypothesis: Hypothesis) =>
    logLikelihood(scoredBy(predictor, hypothesis, measured), predictor.deviations(hypothesis));
  return score(fault) - score(healthyIn(belief));
}

/** Whether some figure is so far off for a guitar as intended that only a slip explains it. */
function hasOddFigure({ predictor, belief, readings }: Findings): boolean {
  const scores = scoresOf({ predictor, readings }, healthyIn(belief));
  return readings.some(
    ({ seen }, at) =>
      (seen.kind === 'ohms' || seen.kind === 'turn') && (scores[at] as number) < SLIPPED,
  );
}

const healthyIn = ({ weighed }: Belief): Hypothesis =>
  weighed.find(({ hypothesis }) => hypothesis.faults.length === 0)?.hypothesis as Hypothesis;

/** All is as intended, or at least nothing read so far says otherwise: then what these readings could not show is named. */
function nothingFound({ groups, reports }: Findings, first: Group, sure: boolean): Verdict {
  const fresh = reports.filter((report) => !report.stale);
  const off = fresh.filter((report) => report.fits === 'off');
  const hidden = groups.filter((group) => group !== first && group.probability > 0.01).slice(0, 5);
  const words = diagnosisWords();
  const [all, some] =
    off.length === 0
      ? ([words.everythingReadSoFarIsAsIntended, words.nothingReadSoFarIsOffAnd] as const)
      : ([words.allElseIsAsIntended, words.allElseFitsNotRuledOut] as const);
  return {
    kind: sure ? 'healthy' : 'not-ruled-out',
    sentence: sure ? all : some(hidden.map((group) => leadOf(group).fault.sentence)),
    probability: probability(first.probability),
    repairs: [],
    options: hidden.map(optionOf),
    steps: [
      ...(off.length === 0 ? [] : [words.takeWhatWasOffAgain]),
      ...(sure ? [] : [words.letTheClosingCheckProveTheRest]),
      words.ifItStillSoundsWrongLookOutside,
    ],
    proof: words.itPlaysInEveryPosition,
    grounds: fresh.filter((report) => report.fits === 'fits').map((report) => report.id),
    against: off.map((report) => report.id),
    sites: [],
  };
}

function leadOf(group: Group): {
  readonly hypothesis: Hypothesis;
  readonly fault: Hypothesis['faults'][number];
} {
  for (const { hypothesis } of group.members) {
    const fault = hypothesis.faults.find((one) => one.remedy.key === group.repair);
    if (fault) return { hypothesis, fault };
  }
  throw new Error(`group ${group.repair} has no fault with that remedy; expected one`);
}

function optionOf(group: Group): RepairOption {
  const { remedy, sentence } = leadOf(group).fault;
  return {
    repair: group.repair,
    title: remedy.title,
    sentence,
    steps: remedy.steps,
    proof: remedy.proof,
    probability: probability(group.probability),
  };
}

/** Other faults that the same repair mends and that are nearly as likely. */
function alsoIn(group: Group): string {
  const first = group.members[0];
  const others = new Set<string>();
  for (const one of group.members.slice(1)) {
    const fault = one.hypothesis.faults.find((each) => each.remedy.key === group.repair);
    if (
      fault &&
      one.probability > 0.2 * (first?.probability ?? 1) &&
      !first?.hypothesis.faults.includes(fault)
    )
      others.add(fault.sentence);
  }
  return others.size === 0 ? '' : diagnosisWords().orMendedByTheSameAct([...others].slice(0, 2));
}

/** Readings that the leading suspect explains far better than healthy does, and those it explains badly. */
function groundsOf(
  { predictor, readings, belief }: Findings,
  group: Group,
): { readonly grounds: readonly string[]; readonly against: readonly string[] } {
  const lead = leadOf(group).hypothesis;
  const healthy = healthyIn(belief);
  const grounds: string[] = [];
  const against: string[] = [];
  const [mine, theirs] = [lead, healthy].map((one) => scoresOf({ predictor, readings }, one)) as [
    number[],
    number[],
  ];
  readings.forEach(({ id }, at) => {
    const ahead = (mine[at] as number) - (theirs[at] as number);
    if (ahead > 1) grounds.push(id);
    else if (ahead < -1) against.push(id);
  });
  return { grounds, against };
}

function outside({ predictor, belief, readings, groups }: Findings): Verdict {
  const lead = belief.weighed[0]?.hypothesis as Hypothesis;
  const scores = scoresOf({ predictor, readings }, lead);
  const fits = readings.map((reading, at) => ({ reading, gap: scores[at] as number }));
  const worst = fits.reduce((x, y) => (y.gap < x.gap ? y : x));
  return {
    kind: 'outside',
    sentence: diagnosisWords().theseReadingsAreOutsideWhat,
    probability: probability(belief.somethingElse),
    repairs: groups[0] && groups[0].repair !== HEALTHY ? [groups[0].repair] : [],
    options: [],
    steps: [
      diagnosisWords().takeTheReadingNamedBelowAgain,
      diagnosisWords().checkThatTheWiringEntered,
    ],
    proof: diagnosisWords().theReadingRepeatsOrItChanges,
    grounds: [worst.reading.id],
    against: [],
    sites: [],
  };
}
