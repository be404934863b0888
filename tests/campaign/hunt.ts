import { type StartingWiring, startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import type { Access, Assessment, Evidence } from '../../src/diagnosis/assessment.ts';
import { believe } from '../../src/diagnosis/belief.ts';
import { candidates } from '../../src/diagnosis/candidates.ts';
import { effortOf } from '../../src/diagnosis/effort.ts';
import { groupsOf } from '../../src/diagnosis/groups.ts';
import { HEALTHY, SOMETHING_ELSE, singleHypotheses } from '../../src/diagnosis/hypothesis.ts';
import { Predictor } from '../../src/diagnosis/predictor.ts';
import type { Fault } from '../../src/faults/fault.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { halfPlaces, knobPlaces, listeningPlaces, stringTouch } from '../../src/flows/index.ts';
import type { Ask, Reading } from '../../src/readings/reading.ts';
import { soundOf } from '../../src/readings/sound.ts';
import { View } from '../../src/readings/view.ts';
import { Dice, type SimulatedGuitar, simulate } from '../simulated/index.ts';
import { modified } from './modified.ts';
import { type Strange, strangePart } from './outside-model.ts';
import { type RuleName, ruleOf } from './rules.ts';

/** What a simulated guitar has: nothing, one fault (drawn by its prior or evenly), two, or something that is not modelled. */
export type Kind = 'healthy' | 'single-by-prior' | 'single-evenly' | 'double' | 'outside';
/** A rule that chooses each reading, or every reading in one fixed order from the jack inward. */
export type Order = RuleName | 'fixed';

export interface HuntOptions {
  readonly seed: number;
  readonly kind: Kind;
  readonly order: Order;
  readonly access: Access;
  readonly wrongEntries: number;
  /** Share of readings during which fingers touch both probes; none where left out. */
  readonly fingers?: number;
  /** Whether the hunt starts from what the first screen asks; these are not counted as readings. */
  readonly symptoms: boolean;
  /** A starting wiring that was modified at random, by its number, in place of one of those the engine was made with. */
  readonly modified?: number;
}

export interface HuntResult {
  readonly wiring: string;
  readonly kind: Kind;
  readonly order: Order;
  /** Repairs that would mend it, and the faults in words. */
  readonly truth: readonly string[];
  readonly faults: readonly string[];
  readonly verdict: string;
  /** The repair that leads when the hunt ends, and its probability. */
  readonly first: string;
  readonly probability: number;
  readonly right: boolean;
  /** Where it has something that is not modelled: what, and whether this is said: that nothing drawn explains it, or which lead it is. */
  readonly strange?: Strange;
  readonly flagged?: boolean;
  /** Whether any symptom differs from what the wiring as intended sounds like. */
  readonly noticed: boolean;
  readonly readings: number;
  /** Seconds of effort that they are reckoned to take. */
  readonly seconds: number;
  readonly stepMs: readonly number[];
  /** Each reading in words, beside what was expected, and the last standing. */
  readonly story: readonly string[];
}

/** A hunt that has not ended after this many readings is stopped where it stands. */
const LIMIT = 30;

/** One whole hunt on a guitar that a circuit simulator plays. */
export function hunt(options: HuntOptions): HuntResult {
  const dice = new Dice(`hunt ${options.seed} ${options.kind}`);
  const wirings = options.modified === undefined ? inTurn(options.seed) : heldOut(options.modified);
  const strange = options.kind === 'outside' ? firstStrange(wirings, options.seed, dice) : null;
  const wiring = strange?.wiring ?? (wirings[0] as (typeof wirings)[number]);
  const circuit = wiring.build();
  const faults = drawFaults(circuit, options.kind, dice);
  const edits = strange?.edits ?? faults.flatMap((fault) => variantOf(fault, dice));
  const { wrongEntries, fingers = 0 } = options;
  const guitar = simulate(circuit, edits, options.seed, { wrongEntries, fingers });
  const readings = options.symptoms ? symptoms(circuit, guitar) : [];
  const told = readings.length;
  const noticed = readings.some((one) => !isNormal(circuit, one));
  const stepMs: number[] = [];
  let seconds = 0;
  const truth =
    options.kind === 'outside'
      ? [SOMETHING_ELSE]
      : faults.length === 0
        ? [HEALTHY]
        : faults.map((fault) => fault.remedy.key);
  if (options.order === 'fixed') return fixedOrder();
  const rule = ruleOf(options.order, new Dice(`rule ${options.seed} ${options.order}`));
  let assessment = step();
  while (!assessment.verdict && readings.length - told < LIMIT) {
    const [next] = assessment.next;
    if (!next) break;
    const { ask } = next;
    seconds += next.effortSeconds;
    readings.push(reading(ask, guitar, readings.length));
    assessment = step();
  }
  const first = assessment.suspects[0];
  const flagged =
    strange !== null &&
    (assessment.verdict?.kind === 'outside' ||
      (first?.repair.startsWith('stray:') ?? false) ||
      namesLead(first?.repair, strange.edits));
  return {
    wiring: wiring.id,
    kind: options.kind,
    order: options.order,
    truth,
    faults: strange
      ? strange.edits.map((edit) => JSON.stringify(edit))
      : faults.map(({ id }) => id),
    verdict: assessment.verdict?.kind ?? 'unfinished',
    first: first?.repair ?? '',
    probability: first?.probability ?? 0,
    right: first !== undefined && (truth.includes(first.repair) || flagged),
    ...(strange ? { strange: strange.what, flagged } : {}),
    noticed,
    readings: readings.length - told,
    seconds,
    stepMs,
    story: [
      ...assessment.readings.map(
        (one) =>
          `${one.askText} ${JSON.stringify(one.ask.setting.positions)} ${JSON.stringify(one.ask.setting.knobs)}: ${one.measuredText}, expected ${one.expected.text}, ${one.fits}`,
      ),
      ...assessment.suspects
        .slice(0, 4)
        .map(
          (one) => `${one.probability.toFixed(3)} ${one.repair}: ${one.faults[0]?.sentence ?? ''}`,
        ),
    ],
  };

  /** The same belief, fed with every ohms reading from the jack inward until one repair has 95 %. */
  function fixedOrder(): HuntResult {
    const layout = layoutOf(circuit);
    const predictor = new Predictor(layout, guitar.meter);
    const singles = singleHypotheses(layout);
    const order = candidates(layout, options.access).filter(({ kind }) => kind === 'ohms');
    let [first] = groupsOf(believe(predictor, singles, readings).weighed);
    while ((first?.probability ?? 0) < 0.95 && readings.length - told < LIMIT) {
      const ask = order[readings.length - told] as Ask;
      seconds += effortOf(layout, ask, readings.at(-1)?.ask ?? null);
      readings.push(reading(ask, guitar, readings.length));
      [first] = groupsOf(believe(predictor, singles, readings).weighed);
    }
    const { repair = '', probability = 0 } = first ?? {};
    return {
      wiring: wiring.id,
      kind: options.kind,
      order: 'fixed',
      truth,
      faults: faults.map((fault) => fault.id),
      verdict: probability < 0.95 ? 'unfinished' : repair === 'healthy' ? 'healthy' : 'repair',
      first: repair,
      probability,
      right: truth.includes(repair),
      noticed,
      readings: readings.length - told,
      seconds,
      stepMs: [],
      story: [],
    };
  }

  function step(): Assessment {
    const evidence: Evidence = {
      circuit,
      meter: guitar.meter,
      access: options.access,
      readings,
      refused: [],
      repairs: [],
    };
    const start = performance.now();
    const found = assess(evidence, rule);
    stepMs.push(performance.now() - start);
    return found;
  }
}

function reading(ask: Ask, guitar: SimulatedGuitar, at: number): Reading {
  return { id: `r${at}`, ask, seen: guitar.answer(ask), at: '2026-01-01T00:00:00Z', round: 0 };
}

type Wiring = Pick<StartingWiring, 'id' | 'build'>;

function inTurn(seed: number): readonly Wiring[] {
  const from = seed % startingWirings.length;
  return [...startingWirings.slice(from), ...startingWirings.slice(0, from)];
}

/** Wirings that nobody drew, this one first; the others stand by where it has no room for something strange. */
const heldOut = (number: number): readonly Wiring[] =>
  Array.from({ length: 20 }, (_, at): Wiring => {
    const { wiring, circuit } = modified(number + at * 1e6);
    return { id: wiring, build: () => circuit };
  });

/** What is told before the meter comes out: each position of the selector, each knob turned down, volumes with a bleed at half, a hand on the strings. */
function symptoms(circuit: Circuit, guitar: SimulatedGuitar): Reading[] {
  const touch = stringTouch(circuit);
  const asks: readonly Ask[] = [
    ...[...listeningPlaces(circuit), ...knobPlaces(circuit), ...halfPlaces(circuit)].map(
      ({ ask }) => ask,
    ),
    ...(touch ? [touch] : []),
  ];
  return asks.map((ask, at) => reading(ask, guitar, at));
}

/** Normal, or silent where a knob at 0 is meant to silence it; hum that goes down under a hand. */
function isNormal(circuit: Circuit, { ask, seen }: Reading): boolean {
  if (seen.kind === 'touch') return seen.hum === 'down';
  if (seen.kind !== 'listen' || seen.heard === 'normal') return true;
  const sound = soundOf(new View(layoutOf(circuit), ask.setting, []), null);
  return seen.heard === 'silent' && sound.level < 1e-4;
}

function drawFaults(circuit: Circuit, kind: Kind, dice: Dice): readonly Fault[] {
  const all = faultsOf(circuit);
  const byPrior = (): Fault => {
    let left = dice.throw();
    for (const fault of all) {
      left -= fault.weight;
      if (left <= 0) return fault;
    }
    return all.at(-1) as Fault;
  };
  switch (kind) {
    case 'healthy':
    case 'outside':
      return [];
    case 'single-by-prior':
      return [byPrior()];
    case 'single-evenly':
      return [dice.pick(all)];
    case 'double': {
      const first = byPrior();
      for (;;) {
        const second = byPrior();
        if (second.remedy.key !== first.remedy.key) return [first, second];
      }
    }
  }
}

/** The first of the wirings that has room for something that is not modelled, with it; each kind in turn. */
function firstStrange(wirings: readonly Wiring[], seed: number, dice: Dice) {
  const what = (['path', 'lead', 'leads', 'path and lead'] as const)[seed % 4] as Strange;
  for (const wiring of wirings) {
    const edits = strangePart(wiring.build(), what, dice);
    if (edits) return { wiring, edits, what };
  }
  throw new Error('no wiring has room for something that is not modelled');
}

/** Whether the act that is named begins at a lead which sits in a wrong place: remake that lead, or move that very end of it. */
const namesLead = (repair: string | undefined, edits: readonly Edit[]): boolean =>
  edits.some(
    (edit) =>
      edit.op === 'land' &&
      (repair === `remake:${edit.joint.split('@')[0]}` || repair === `place:${edit.joint}`),
  );

/** One of the fault's sizes; a size known only roughly is drawn anew, so that it is not one of the engine's own steps. */
function variantOf(fault: Fault, dice: Dice) {
  let left = dice.throw() * fault.variants.reduce((sum, variant) => sum + variant.share, 0);
  const variant =
    fault.variants.find((one) => {
      left -= one.share;
      return left <= 0;
    }) ?? fault.variants.at(-1);
  return (variant?.edits ?? []).map((edit) => {
    if (edit.op !== 'resist' && !(edit.op === 'bridge' && edit.ohms > 2)) return edit;
    return { ...edit, ohms: (edit.ohms * 10 ** dice.between(-0.25, 0.25)) as typeof edit.ohms };
  });
}
