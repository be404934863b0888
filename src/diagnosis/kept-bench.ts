import { checkCircuit } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import type { Ask, Meter, Reading } from '../readings/reading.ts';
import { type ApartReading, apartReadings } from './apart.ts';
import type { Access, Evidence } from './assessment.ts';
import { beepsBeside } from './beeps.ts';
import { type Belief, believing } from './belief.ts';
import { candidates } from './candidates.ts';
import { crossingsOf } from './crossings.ts';
import { type Hypothesis, huntHypotheses } from './hypothesis.ts';
import { liftsOf } from './lifts.ts';
import { Predictor } from './predictor.ts';
import { type Counted, distinct } from './repeats.ts';
import type { Rests } from './rests.ts';
import { afterRepairs, splitByRepairs } from './rounds.ts';

/** Engine state of one circuit and meter: everything in it can be made again from them. */
export interface Bench {
  readonly key: string;
  readonly circuit: Circuit;
  readonly predictor: Predictor;
  readonly singles: readonly Hypothesis[];
  /** Leads in each other's place; made when they are first wanted. */
  crossings?: readonly Hypothesis[];
  /** Asks by how far the guitar is open: the same objects each time, so that what is known of them is found again. */
  readonly asks: Readonly<Record<Access, readonly Ask[]>>;
  /** Those inside that a beep can answer; made when they are first wanted. */
  beeps?: readonly Ask[];
  /** Those with a wire taken off; made when they are first wanted. */
  lifts?: readonly Ask[];
}
let kept: Bench | undefined;

export function benchOf(circuit: Circuit, meter: Meter, repairs: readonly string[]): Bench {
  const key = JSON.stringify([circuit, meter, repairs]);
  if (kept?.key === key) return kept;
  checkCircuit(circuit);
  const layout = layoutOf(circuit);
  kept = {
    key,
    circuit,
    predictor: new Predictor(layout, meter),
    singles: afterRepairs(huntHypotheses(layout), repairs),
    asks: { closed: candidates(layout, 'closed'), open: candidates(layout, 'open') },
  };
  return kept;
}

export function beepsOf(bench: Bench): readonly Ask[] {
  bench.beeps ??= beepsBeside(bench.predictor.layout, bench.asks.open);
  return bench.beeps;
}

function crossingsAt(bench: Bench, repairs: readonly string[]): readonly Hypothesis[] {
  const { predictor, singles } = bench;
  bench.crossings ??= afterRepairs(crossingsOf(predictor.stated, singles.length), repairs);
  return bench.crossings;
}

export function liftsAt(bench: Bench): readonly Ask[] {
  bench.lifts ??= liftsOf(bench.predictor.layout);
  return bench.lifts;
}

/** What is believed after some evidence, and which readings it rests on. */
export interface Believed {
  readonly apart: readonly ApartReading[];
  /** Of the readings taken out of circuit those that count. */
  readonly free: readonly Reading[];
  readonly counted: readonly Reading[];
  /** Taken before a repair that could have changed them. */
  readonly stale: readonly Reading[];
  /** All that count, each once. */
  readonly readings: readonly Counted[];
  readonly belief: Belief;
}

/** Rests now and then: the pieces can be done at once, or between other work. */
export function* believed(bench: Bench, evidence: Evidence): Rests<Believed> {
  const { predictor, singles, circuit } = bench;
  const { counted, stale } = splitByRepairs(
    predictor,
    singles,
    evidence.readings,
    evidence.repairs,
  );
  const apart = apartReadings(circuit, evidence.meter.room);
  const free = splitByRepairs(
    predictor,
    singles,
    apart.map(({ reading }) => reading),
    evidence.repairs,
  ).counted;
  const readings = distinct([...free, ...counted]);
  const belief = yield* believing(predictor, singles, readings, () =>
    crossingsAt(bench, evidence.repairs),
  );
  return { apart, free, counted, stale, readings, belief };
}
