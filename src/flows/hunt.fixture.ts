import { createActor, fromPromise, SimulatedClock } from 'xstate';
import { startingWirings } from '../circuit/catalog/index.ts';
import { bits, ohms, probability, seconds } from '../circuit/units.ts';
import type {
  Assessment,
  Evidence,
  NextReading,
  Standing,
  Verdict,
} from '../diagnosis/assessment.ts';
import type { Ask, Seen } from '../readings/reading.ts';
import type { HuntEvent } from './conversation.ts';
import { huntMachine } from './hunt.ts';
import { listeningPlaces } from './symptom.ts';
import type { Work } from './work.ts';

export const circuit = startingWirings[0]!.build();
const setting = listeningPlaces(circuit)[0]!.ask.setting;
export const closedWork: Work = {
  circuit,
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(2e6) },
  access: 'closed',
  readings: [],
  refused: [],
  repairs: [],
  changedAt: '2030-01-01T00:00:00.000Z',
};
export const ready: Work = { ...closedWork, cautionsReadAt: '2030-01-01T00:00:01.000Z' };

export const atJack: Ask = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting };
export const inside: Ask = {
  kind: 'ohms',
  red: 'bridgeVolume.3',
  black: 'bridgeVolume.case',
  setting,
};
export const listening = listeningPlaces(circuit)[2]!.ask;

export const next = (ask: Ask, worth = 1): NextReading => ({
  ask,
  askText: 'R on the tip, B on the sleeve',
  expected: { text: '7.4 kΩ', low: ohms(6500), high: ohms(8200) },
  why: 'It tells a dead coil from a dead joint.',
  worthBits: bits(worth),
  effortSeconds: seconds(20),
});

export const verdict: Verdict = {
  kind: 'repair',
  sentence: 'The coil of the bridge pickup is open.',
  probability: probability(0.97),
  repairs: ['coil'],
  steps: ['Reheat the coil ends.'],
  options: [],
  proof: 'It reads 7 kΩ again.',
  grounds: [],
  against: [],
  sites: ['bridgeSlug:winding'],
};

export const assessment = (more: Partial<Assessment>): Assessment => ({
  suspects: [
    { repair: 'coil', title: 'Mend the coil', probability: probability(0.6), faults: [] },
    { repair: 'pot', title: 'Change the pot', probability: probability(0.4), faults: [] },
  ],
  readings: [],
  next: [],
  verdict: null,
  suspicion: {},
  learned: [],
  recheck: [],
  liveSuspects: 2,
  ...more,
});

interface Ports {
  /** What `assess` says of it, unless it says something else. */
  readonly stand?: (evidence: Evidence) => Promise<Standing>;
  readonly assess?: (evidence: Evidence) => Promise<Assessment>;
  /** Gives the work as the disk then has it, where that is more than was sent. */
  readonly save?: (work: Work) => Promise<unknown>;
  readonly expect?: () => Promise<{ text: string }>;
}

/** The machine with stub ports; `run` sends events one after the other and lets every promise settle. */
export function hunt(work: Work, ports: Ports = {}) {
  const saved: Work[] = [];
  const save = ports.save ?? (async () => undefined);
  const assess = ports.assess ?? (async () => assessment({ next: [next(atJack)] }));
  const actor = createActor(
    huntMachine().provide({
      actors: {
        stand: fromPromise(({ input }) =>
          (ports.stand ?? ports.assess ?? (async () => assessment({})))(input),
        ),
        assess: fromPromise(({ input }) => assess(input)),
        assessMeanwhile: fromPromise(({ input }) => assess(input)),
        save: fromPromise(async ({ input }) => {
          const onDisk = ((await save(input)) ?? input) as Work;
          saved.push(onDisk);
          return onDisk;
        }),
        expect: fromPromise(ports.expect ?? (async () => ({ text: '7.4 kΩ' }))),
      },
    }),
    { input: { work }, clock: new SimulatedClock() },
  ).start();
  return {
    saved,
    get state() {
      return actor.getSnapshot().value;
    },
    get context() {
      return actor.getSnapshot().context;
    },
    async run(...events: HuntEvent[]) {
      await settle();
      for (const event of events) {
        actor.send(event);
        await settle();
      }
      return this;
    },
  };
}

export const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
let clock = 0;
export const now = () => {
  clock += 1;
  return `2030-01-02T00:00:00.${String(clock).padStart(3, '0')}Z`;
};
export const seven: Seen = { kind: 'ohms', ohms: ohms(7000) };
export const enter = (seen: Seen = seven): HuntEvent => ({ type: 'ENTER', seen, at: now() });
