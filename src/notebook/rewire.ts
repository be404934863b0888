import type { Circuit, Setting } from '../circuit/circuit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { restingSetting } from '../circuit/setting.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import type { Job } from './job.ts';
import { checkAsk } from './restore.ts';
import { JobShapeError } from './shape.ts';

/** Whether the wiring has every lug, part and control that the ask names. */
function fits(circuit: Circuit, ask: Ask): boolean {
  try {
    checkAsk(layoutOf(circuit), ask, '');
    return true;
  } catch (error) {
    if (error instanceof JobShapeError) return false;
    throw error;
  }
}

/**
 * The ask as it stands on another wiring, or null where that lacks what it names. A control that is gone and stood at rest says
 * nothing, and is left out of the setting; one that did not might have changed what was read.
 */
export function refitted(before: Circuit, after: Circuit, ask: Ask): Ask | null {
  const rest = restingSetting(before);
  const kept = <V>(now: Readonly<Record<PartId, V>>, resting: Readonly<Record<PartId, V>>) =>
    Object.fromEntries(
      Object.entries(now).filter(
        ([id, stand]) => after.parts.some((part) => part.id === id) || stand !== resting[id],
      ),
    );
  const stood = (setting: Setting): Setting => ({
    ...setting,
    positions: kept(setting.positions, rest.positions),
    knobs: kept(setting.knobs, rest.knobs),
  });
  const setting = stood(ask.setting);
  const next: Ask =
    ask.kind === 'hum' ? { ...ask, setting, against: stood(ask.against) } : { ...ask, setting };
  return fits(after, next) ? next : null;
}

/**
 * The job with the wiring as it is now known to be intended. Readings stay; those that name what the wiring no longer has are set
 * aside in words, and those set aside before come back where they fit again. `circuit` has passed checkCircuit.
 */
export function rewired(
  job: Job,
  { circuit, places }: Pick<Job, 'circuit' | 'places'>,
  words: (reading: Reading) => string,
  at: string,
): Job {
  const { places: _1, setAside: _2, lastCheck: last, ...rest } = job;
  const before = job.setAside ?? [];
  const back = before.filter(({ reading }) => fits(circuit, reading.ask));
  const now = job.readings.map((reading) => ({
    reading,
    ask: refitted(job.circuit, circuit, reading.ask),
  }));
  const taken = new Set(job.readings.map(({ id }) => id));
  const readings = [
    ...now.flatMap(({ reading, ask }) => (ask ? [{ ...reading, ask }] : [])),
    ...back.map(({ reading }) => ({
      ...reading,
      id: taken.has(reading.id) ? `${reading.id}~back` : reading.id,
      round: Math.min(reading.round, job.repairs.length),
    })),
  ].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  const setAside = [
    ...before.filter((one) => !back.includes(one)),
    ...now.flatMap(({ reading, ask }) =>
      ask ? [] : [{ reading, words: words(reading).slice(0, 600) }],
    ),
  ];
  // What was read in an earlier job stays there in full.
  const compared = last?.readings.flatMap((reading) => {
    const ask = refitted(job.circuit, circuit, reading.ask);
    return ask ? [{ ...reading, ask }] : [];
  });
  const refused = job.refused.map((ask) => refitted(job.circuit, circuit, ask));
  return {
    ...rest,
    circuit,
    ...(places && { places }),
    ...(setAside.length > 0 && { setAside }),
    ...(last && compared && { lastCheck: { ...last, readings: compared } }),
    readings,
    refused: refused.filter((ask) => ask !== null),
    ...(job.refusedAt && {
      refusedAt: job.refusedAt.filter((_, index) => refused[index] !== null),
    }),
    changedAt: at,
  };
}
