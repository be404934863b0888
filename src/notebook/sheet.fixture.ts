import { ohms } from '../circuit/units.ts';
import { circuitFor, moment } from './job.fixture.ts';
import type { PickupSheet, TogetherSheet } from './sheet.ts';

const setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] } as const;

/** A pickup with every kind of reading that it is asked for. */
export function pickupSheet(): PickupSheet {
  const probes = { red: 'lead1End.joint', black: 'lead2End.joint', setting } as const;
  const kinds = [
    { ask: { kind: 'ohms', ...probes }, seen: { kind: 'ohms', ohms: ohms(4210) } },
    { ask: { kind: 'tap', coil: 'a', ...probes }, seen: { kind: 'tap', swing: 'plus' } },
    {
      ask: { kind: 'beep', red: 'lead3End.joint', black: 'plate.metal', setting },
      seen: { kind: 'beep', beeps: true },
    },
    { ask: { kind: 'pole', coil: 'b', setting }, seen: { kind: 'pole', pole: 'south' } },
  ] as const;
  return {
    format: 'lugwise-pickup',
    version: 1,
    id: 'sheet-1',
    title: 'The covered one',
    createdAt: moment(0),
    changedAt: moment(5),
    seen: {
      coils: 2,
      leads: [
        { id: 'lead1', colour: 'green', mark: 'striped', what: 'wire' },
        { id: 'lead2', colour: 'white', what: 'pair' },
        { id: 'lead3', colour: 'braid', what: 'bare' },
      ],
      plate: true,
      cover: false,
    },
    meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
    readings: kinds.map((one, at) => ({ id: `r${at + 1}`, ...one, at: moment(at + 1), round: 0 })),
    refused: [{ kind: 'ohms', ...probes, red: 'lead3End.joint' }],
    refusedAt: [moment(3)],
    cautionsReadAt: moment(0),
  };
}

export function togetherSheet(): TogetherSheet {
  return {
    format: 'lugwise-together',
    version: 1,
    id: 'sheet-2',
    title: 'bridge pickup and neck pickup',
    createdAt: moment(0),
    changedAt: moment(4),
    pickups: [
      { id: 'pickup1', title: 'bridge pickup', coils: 1, at: 'jack' },
      { id: 'pickup2', title: 'neck pickup', coils: 2, at: 'leads' },
    ],
    readings: [
      {
        id: 'r1',
        pickup: 'pickup1',
        coil: 'a',
        seen: { kind: 'tap', swing: 'minus' },
        at: moment(1),
      },
      {
        id: 'r2',
        pickup: 'pickup2',
        coil: 'b',
        seen: { kind: 'pole', pole: 'north' },
        at: moment(2),
      },
    ],
    meant: {
      circuit: circuitFor('two-singles-three-position'),
      places: { pickup1: 'bridgePickup', pickup2: 'neckPickup' },
    },
    cautionsReadAt: moment(0),
  };
}
