import { checkCircuit } from '../circuit/check.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { circuitOf, type SeenPickup } from '../circuit/seen-pickup.ts';
import { type Bits, bits, type Probability, probability } from '../circuit/units.ts';
import { believe } from '../diagnosis/belief.ts';
import { askText } from '../readings/index.ts';
import type { Ask, Meter, Reading } from '../readings/reading.ts';
import { asksOf, counted, openAsks } from './asks.ts';
import type { Assignment } from './assignments.ts';
import { type Candidate, candidatesOf } from './candidates.ts';
import { type Contradiction, contradictionIn } from './contradiction.ts';
import { PickupPredictor } from './foretelling.ts';
import type { Role } from './inside.ts';
import { type Likely, likelyFigures } from './likely.ts';
import { type Poles, poleAsks, polesOf } from './poles.ts';
import { type Standing, worthOf } from './question.ts';

/** What was told and read of a pickup on the mat. */
export interface SortEvidence {
  readonly seen: SeenPickup;
  readonly meter: Meter;
  readonly readings: readonly Reading[];
  readonly refused: readonly Ask[];
}

export interface SortedLead {
  readonly lead: string;
  readonly role: Role;
  readonly probability: Probability;
}

export interface SortQuestion {
  readonly ask: Ask;
  readonly askText: string;
  readonly worthBits: Bits;
  /** Figures that may be shown; given for the first question alone. */
  readonly likely: readonly Likely[];
}

export interface Sorting {
  /** The likeliest answer, lead by lead in the order told. */
  readonly leads: readonly SortedLead[];
  /** Chance that the whole answer is right. */
  readonly probability: Probability;
  /** The next likely answers, each with its chance. */
  readonly others: readonly {
    readonly roles: readonly Role[];
    readonly probability: Probability;
  }[];
  /** `settled`: sure enough to join leads by; `stuck`: no reading left would tell more; `outside`: nothing modelled fits. */
  readonly state: 'asking' | 'settled' | 'stuck' | 'outside';
  /** Chance of each trouble, given the likeliest answer. */
  readonly troubles: readonly {
    readonly trouble: NonNullable<Candidate['trouble']>;
    readonly probability: Probability;
  }[];
  /** The lead whose coil end is joined to the plate inside, in the likeliest answer. */
  readonly onPlate: string | null;
  /** Best first; goes on after the answer is settled, for those who want to be surer. */
  readonly next: readonly SortQuestion[];
  readonly contradiction: Contradiction | null;
  readonly poles: Poles;
  /** Poles to ask for, for those who want to know whether the coils cancel hum. */
  readonly poleAsks: readonly SortQuestion[];
}

/**
 * Sure enough to join leads by. Where to stop is a matter of what a mistake costs: leads joined wrong are found out with the strings
 * on, and cost about two hours; one more reading costs twenty seconds (estimates of ours). It is taken while it is the cheaper.
 */
const SECONDS = { wrong: 7200, reading: 20 };
const SETTLED = 1 - SECONDS.reading / SECONDS.wrong;
const OUTSIDE = 0.5;
/** One slip makes everything modelled unlikely for a while: only after so many readings nothing fits. */
const MANY = 10;
/** What is not modelled must be less likely than this; beyond it the answer is the best of those modelled. */
const UNKNOWN = 0.08;
/** Less than this is not worth a reading, bits. */
const LEAST_WORTH = 0.0008;
const OFFERED = 6;
/** Candidates that weigh what to ask: the heaviest, up to this share of the belief. */
const WEIGHING = { share: 0.9995, most: 1200 } as const;

interface Mat {
  readonly key: string;
  readonly predictor: PickupPredictor;
  readonly candidates: readonly Candidate[];
  readonly asks: readonly Ask[];
}
let mat: Mat | undefined;

function matOf(seen: SeenPickup, meter: Meter): Mat {
  const key = JSON.stringify([seen, meter]);
  if (mat?.key === key) return mat;
  const circuit = circuitOf(seen);
  checkCircuit(circuit);
  const layout = layoutOf(circuit);
  mat = {
    key,
    predictor: new PickupPredictor(layout, meter),
    candidates: candidatesOf(seen, layout),
    asks: asksOf(seen),
  };
  return mat;
}

/** Everything that follows from the evidence. Throws CircuitError where the pickup cannot be sorted as told. */
export function sortLeads({ seen, meter, readings: all, refused }: SortEvidence): Sorting {
  const { predictor, candidates, asks } = matOf(seen, meter);
  const readings = counted(all);
  const belief = believe(predictor, candidates, readings);
  const answers = new Map<
    number,
    { number: number; roles: readonly Role[]; probability: number }
  >();
  const standings = belief.weighed.map(({ hypothesis, probability: share }): Standing => {
    const candidate = hypothesis as Candidate;
    const answer = answers.get(candidate.answer);
    if (answer) answer.probability += share;
    else
      answers.set(candidate.answer, {
        number: candidate.answer,
        roles: candidate.roles,
        probability: share,
      });
    return { candidate, probability: share, answer: candidate.answer };
  });
  const ranked = [...answers.values()].sort((x, y) => y.probability - x.probability);
  const best = ranked[0] as (typeof ranked)[number];
  const worths = worthOf(predictor, heaviest(standings), openAsks(asks, all, refused), readings);
  const useful = worths.filter(({ bits: worth }) => worth >= LEAST_WORTH);
  const within = standings.filter(({ answer }) => answer === best.number);
  return {
    leads: seen.leads.map((lead, at) => ({
      lead: lead.id,
      role: best.roles[at] as Role,
      probability: probability(
        ranked.reduce(
          (sum, one) => sum + (one.roles[at] === best.roles[at] ? one.probability : 0),
          0,
        ),
      ),
    })),
    probability: probability(best.probability),
    others: ranked
      .slice(1, 4)
      .map((one) => ({ roles: one.roles, probability: probability(one.probability) })),
    state:
      belief.somethingElse > OUTSIDE && (readings.length >= MANY || useful.length === 0)
        ? 'outside'
        : best.probability >= SETTLED * (1 - belief.somethingElse) && belief.somethingElse < UNKNOWN
          ? 'settled'
          : useful.length > 0
            ? 'asking'
            : 'stuck',
    troubles: troublesOf(within),
    onPlate: leadOnPlate(within[0]?.candidate.assignment),
    next: (useful.length > 0 ? useful : worths)
      .slice(0, OFFERED)
      .map(({ ask, bits: worth }, at) => ({
        ask,
        askText: askText(predictor.layout, ask),
        worthBits: bits(worth),
        likely: at === 0 ? likelyFigures(predictor, standings, ask, readings) : [],
      })),
    contradiction: contradictionIn(predictor, readings, belief.weighed),
    poles: polesOf(all),
    poleAsks: poleAsks(seen, all, refused).map((ask) => ({
      ask,
      askText: askText(predictor.layout, ask),
      worthBits: bits(0),
      likely: [],
    })),
  };
}

function leadOnPlate(assignment: Assignment | undefined): string | null {
  if (!assignment?.onPlate) return null;
  return assignment.placed.find(({ lug }) => lug === assignment.onPlate)?.lead.id ?? null;
}

function heaviest(standings: readonly Standing[]): readonly Standing[] {
  let mass = 0;
  const total = standings.reduce((sum, one) => sum + one.probability, 0);
  const kept: Standing[] = [];
  for (const one of standings) {
    if (mass > WEIGHING.share * total || kept.length >= WEIGHING.most) break;
    mass += one.probability;
    kept.push(one);
  }
  return kept;
}

function troublesOf(within: readonly Standing[]): Sorting['troubles'] {
  const total = within.reduce((sum, one) => sum + one.probability, 0);
  const found = new Map<string, { trouble: NonNullable<Candidate['trouble']>; share: number }>();
  for (const { candidate, probability: share } of within) {
    if (!candidate.trouble) continue;
    const key = JSON.stringify(candidate.trouble);
    const known = found.get(key) ?? { trouble: candidate.trouble, share: 0 };
    known.share += share / total;
    found.set(key, known);
  }
  return [...found.values()]
    .sort((x, y) => y.share - x.share)
    .map(({ trouble, share }) => ({ trouble, probability: probability(share) }));
}
