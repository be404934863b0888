import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import type { Assessment } from '../../src/diagnosis/assessment.ts';
import type { Ask, Meter, Reading } from '../../src/readings/reading.ts';
import { byEar } from './by-ear.ts';
import type { EarReplay, Replay, Step } from './case.ts';
import { replays } from './replays.ts';

/** A meter of the trade; the cases do not tell theirs. */
const meter: Meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

export interface Outcome {
  readonly replay: Replay;
  /** After how many of the steps. */
  readonly steps: number;
  readonly assessment: Assessment;
  /** Place of the first repair that would have mended it; null where it is not among the suspects. */
  readonly rank: number | null;
}

/** Puts a case to the engine: after all that was told, and before where the replay asks for it. */
function outcomesOf(replay: Replay): readonly Outcome[] {
  return [...(replay.after === undefined ? [] : [replay.after]), replay.steps.length].map(
    (steps) => {
      const circuit = circuitOf(replay);
      const assessment = assess({
        circuit,
        meter,
        access: 'open',
        readings: replay.steps.slice(0, steps).map((step, at) => readingOf(circuit, step, at)),
        refused: [],
        repairs: [],
      });
      return { replay, steps, assessment, rank: rankIn(assessment, replay.resolved) };
    },
  );
}

export interface EarOutcome {
  readonly replay: EarReplay;
  readonly assessment: Assessment;
  readonly rank: number | null;
}

/** What the engine makes of the symptom alone, before any meter and with the guitar shut. Printed values are those of the wiring. */
export const earOutcomes = (): readonly EarOutcome[] =>
  byEar.map((replay) => {
    const circuit = circuitOf({ ...replay, values: {} });
    const assessment = assess({
      circuit,
      meter,
      access: 'closed',
      readings: replay.heard.map((step, at) => readingOf(circuit, step, at)),
      refused: [],
      repairs: [],
    });
    return { replay, assessment, rank: rankIn(assessment, replay.resolved) };
  });

function rankIn({ suspects }: Assessment, resolved: readonly string[]): number | null {
  const place = suspects.findIndex(({ repair }) => resolved.includes(repair));
  return place < 0 ? null : place + 1;
}

function circuitOf({ wiring, values, id }: Pick<Replay, 'wiring' | 'values' | 'id'>): Circuit {
  const start = startingWirings.find((one) => one.id === wiring);
  if (!start) throw new RangeError(`${id}: there is no starting wiring called ${wiring}`);
  const circuit = start.build();
  for (const name of Object.keys(values))
    if (!circuit.parts.some((part) => part.id === name && 'ohms' in part))
      throw new RangeError(`${id}: ${wiring} has no part ${name} with ohms`);
  return {
    ...circuit,
    parts: circuit.parts.map((part) => {
      const nominal = values[part.id];
      return nominal !== undefined && 'ohms' in part
        ? { ...part, ohms: { ...part.ohms, nominal: ohms(nominal) } }
        : part;
    }),
  };
}

function readingOf(circuit: Circuit, step: Step, at: number): Reading {
  const rest = restingSetting(circuit);
  const setting = {
    ...rest,
    knobs: { ...rest.knobs, ...step.knobs },
    positions: step.position === undefined ? rest.positions : { selector: step.position },
    plug: step.plug ?? rest.plug,
    lifted: step.lifted ?? [],
  };
  return {
    id: `r${at + 1}`,
    ask: { ...step.ask, setting } as Ask,
    seen: step.seen,
    at: '2026-01-01T00:00:00Z',
    round: 0,
  };
}

/** Every replay, in the order of the list. Worked out guitar by guitar, as what the engine knows of one is soon used again. */
export function allOutcomes(): ReadonlyMap<string, readonly Outcome[]> {
  const guitar = ({ wiring, values }: Replay) => `${wiring} ${JSON.stringify(values)}`;
  const byGuitar = [...replays].sort((x, y) => guitar(x).localeCompare(guitar(y)));
  const found = new Map(byGuitar.map((replay) => [replay.id, outcomesOf(replay)]));
  return new Map(replays.map(({ id }) => [id, found.get(id) ?? []]));
}
