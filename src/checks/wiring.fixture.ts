import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { twoPickupsSharedControls } from '../circuit/catalog/two-pickups-shared-controls.ts';
import type { Circuit, LugRef } from '../circuit/circuit.ts';
import { type Act, afterAct } from '../circuit/editing/act.ts';
import type { Part, Switch } from '../circuit/parts/part.ts';
import { wiringWarnings } from './wiring-warnings.ts';

/** Two pickups, a 3-position toggle, one volume, one tone: a wiring in which nothing stands out. */
export const twoPickups: Circuit = twoPickupsSharedControls();
export const oneHumbucker: Circuit = oneHumbuckerOneKnob();

export const acted = (circuit: Circuit, ...acts: readonly Act[]): Circuit =>
  acts.reduce(afterAct, circuit);

/** A part with nothing on it yet, and leads from lug to lug. */
export const wiredUp = (
  circuit: Circuit,
  parts: readonly Part[],
  ...ends: readonly (readonly [LugRef, LugRef])[]
): Circuit =>
  acted(
    circuit,
    { do: 'add', parts, leads: [] },
    ...ends.map(([from, to], at): Act => ({ do: 'join', lead: `drawn${at + 1}`, from, to })),
  );

export const twoLugs = (
  id: string,
  title: string,
  style: Switch['style'],
  ...joined: readonly boolean[]
): Switch => ({
  kind: 'switch',
  id,
  title,
  style,
  rows: [['1', '2']],
  positions: joined.map((on, at) => ({
    name: `${at + 1}`,
    title: `${at + 1}`,
    joins: on ? [['1', '2']] : [],
  })),
  frame: false,
});

/** Sentences of one kind with the lugs they point at. */
export const told = (
  circuit: Circuit,
  kind: ReturnType<typeof wiringWarnings>[number]['kind'],
): readonly string[] =>
  wiringWarnings(circuit)
    .filter((warning) => warning.kind === kind)
    .map(({ sentence, lugs }) => `${lugs.join(' ')}: ${sentence}`);
