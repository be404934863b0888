import { startingWirings } from '../circuit/catalog/index.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { restingSetting } from '../circuit/setting.ts';
import { farads, ohms } from '../circuit/units.ts';
import type { Ask, Reading, Seen } from '../readings/reading.ts';
import type { Job } from './job.ts';

/** Invented jobs for the tests of this folder: one reading of every kind, on a wiring of the catalogue. */

export const moment = (minute: number): string =>
  new Date(Date.UTC(2026, 2, 1, 18, minute)).toISOString();

export function circuitFor(wiring: string): Circuit {
  const found = startingWirings.find(({ id }) => id === wiring);
  if (!found) throw new Error(`no starting wiring is called ${wiring}`);
  return found.build();
}

const WIRING = 'one-humbucker-one-knob';

/** Every kind of ask with an answer to it. */
export function everyKind(circuit: Circuit): readonly { ask: Ask; seen: Seen }[] {
  const setting = restingSetting(circuit);
  const lead = circuit.leads[0]!;
  const probes = { setting, red: 'jack.tip', black: 'jack.sleeve' };
  const id = (kind: string) => circuit.parts.find((part) => part.kind === kind)!.id;
  const lifted = { ...setting, lifted: [`${lead.id}@to`] };
  return [
    { ask: { kind: 'ohms', ...probes }, seen: { kind: 'ohms', ohms: ohms(430e3) } },
    { ask: { kind: 'ohms', ...probes, setting: lifted }, seen: { kind: 'ohms', ohms: 'open' } },
    { ask: { kind: 'beep', ...probes }, seen: { kind: 'beep', beeps: false } },
    {
      ask: { kind: 'turn', ...probes, pot: id('pot') },
      seen: { kind: 'turn', how: 'smooth', peak: ohms(127e3) },
    },
    {
      ask: { kind: 'flex', ...probes, site: `${lead.id}@from`, red: `${lead.id}@to` },
      seen: { kind: 'flex', how: 'jumps' },
    },
    { ask: { kind: 'tap', ...probes, coil: id('coil') }, seen: { kind: 'tap', swing: 'minus' } },
    ...(circuit.parts.some((part) => part.kind === 'capacitor')
      ? [
          {
            ask: { kind: 'farads', ...probes, part: id('capacitor') },
            seen: { kind: 'farads', farads: farads(22e-9) },
          } as const,
        ]
      : []),
    {
      ask: { kind: 'listen', setting: { ...setting, plug: 'in' } },
      seen: { kind: 'listen', heard: 'thin' },
    },
    { ask: { kind: 'touch', setting, metal: 'strings.metal' }, seen: { kind: 'touch', hum: 'up' } },
    { ask: { kind: 'look', setting, at: `${lead.id}@to` }, seen: { kind: 'look', how: 'dull' } },
    { ask: { kind: 'look', setting, at: id('pot') }, seen: { kind: 'look', how: 'burnt' } },
    { ask: { kind: 'pole', setting, coil: id('coil') }, seen: { kind: 'pole', pole: 'north' } },
  ];
}

/** A job with every kind of reading, a refusal and a repair. */
export function fullJob(wiring = WIRING): Job {
  const circuit = circuitFor(wiring);
  const kinds = everyKind(circuit);
  const readings = kinds.map(
    ({ ask, seen }, index): Reading => ({
      id: `r${index + 1}`,
      ask,
      seen,
      at: moment(index + 1),
      round: index > 5 ? 1 : 0,
    }),
  );
  return {
    ...emptyJob(wiring),
    places: { jack: { x: 12, y: -6, turn: 180 } },
    readings,
    setAside: [
      {
        reading: {
          id: 'r0',
          ask: { kind: 'look', setting: restingSetting(circuit), at: 'gone' },
          seen: { kind: 'look', how: 'dull' },
          at: moment(1),
          round: 0,
        },
        words: 'the old capacitor: dull',
      },
    ],
    refused: [kinds[0]!.ask],
    refusedAt: [moment(2)],
    repairs: [{ repair: 'remake hot@to', title: 'Remake the hot lead', at: moment(7) }],
    cautionsReadAt: moment(0),
    changedAt: moment(30),
    lastCheck: {
      check: { stage: 'open', startedAt: moment(0), endedAt: moment(0), celsius: 20 },
      readings: readings.slice(0, 1).map((reading) => ({ ...reading, round: 0 })),
    },
  };
}

export function emptyJob(wiring = WIRING): Job {
  return {
    format: 'lugwise-job',
    version: 2,
    id: 'job-1',
    title: 'The blue one',
    guitar: { id: 'job-1', title: 'The blue one' },
    createdAt: moment(0),
    changedAt: moment(0),
    circuit: circuitFor(wiring),
    meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
    access: 'open',
    readings: [],
    refused: [],
    repairs: [],
  };
}
