import { type Change, compose } from '../../circuit/catalog/modifications/compose.ts';
import { modifications } from '../../circuit/catalog/modifications/index.ts';
import { leftHandedPots } from '../../circuit/catalog/modifications/left-handed-pots.ts';
import type { Chosen } from '../../circuit/catalog/modifications/modification.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Access } from '../../diagnosis/assessment.ts';
import { list, object, oneOf, record, text } from '../../notebook/shape.ts';
import { type ValueRow, valueRows } from '../entry/value-text.ts';

/** A guitar as it is told on the screen where a job begins: plain data, kept until the job does. */
export interface ToldJob {
  /** Id of the starting wiring. */
  readonly wiring: string;
  readonly title: string;
  readonly access: Access;
  readonly changes: readonly {
    readonly modification: string;
    readonly place: string;
    readonly chosen: Chosen;
  }[];
  /** Null while nobody has touched one. */
  readonly rows: readonly ValueRow[] | null;
}

const word = (longest: number) => text(() => '', longest);
const flag = oneOf(true, false);
const row = object({
  part: word(80),
  title: word(200),
  unit: oneOf('ohm', 'farad'),
  nominal: word(80),
  tolerance: word(20),
  measured: word(80),
  'measuredAt?': word(80),
  odd: flag,
});
export const rowsShape = list(row, 200);
export const toldJobShape = object({
  wiring: word(80),
  title: word(80),
  access: oneOf('open', 'closed'),
  changes: list(
    object({ modification: word(80), place: word(200), chosen: record(word(80), word(80), 20) }),
    200,
  ),
  rows: (value, place) => value === null || rowsShape(value, place),
});

/** Every pot of the other hand; nothing on a guitar without pots. */
export const mirroredBy = (base: Circuit): readonly Change[] =>
  leftHandedPots
    .applies(base)
    .map((place) => ({ modification: leftHandedPots, place, chosen: {} }));

export const toldChanges = (changes: readonly Change[]): ToldJob['changes'] =>
  changes.map(({ modification, place, chosen }) => ({
    modification: modification.id,
    place: place.id,
    chosen,
  }));

/** Changes as they were told; one that this wiring or this app does not know is left out. */
export const changesOn = (base: Circuit, told: ToldJob['changes']): readonly Change[] =>
  told.flatMap(({ modification: id, place: at, chosen }) => {
    const modification = modifications.find((one) => one.id === id);
    const place = modification?.applies(base).find((one) => one.id === at);
    return modification && place ? [{ modification, place, chosen }] : [];
  });

/** What was told, with the wiring that follows from it. */
export interface ToldWiring {
  readonly base: Circuit | undefined;
  readonly changes: readonly Change[];
  readonly circuit: Circuit | undefined;
}

export function wiringOf(base: Circuit | undefined, told: ToldJob['changes']): ToldWiring {
  if (!base) return { base, changes: [], circuit: undefined };
  const changes = changesOn(base, told);
  return { base, changes, circuit: compose(base, changes).circuit };
}

/** Values as they were typed; null where they are of other parts. */
export function rowsOn(circuit: Circuit | undefined, told: ToldJob['rows']): ToldJob['rows'] {
  if (!told || !circuit) return null;
  const fits = valueRows(circuit);
  const same = fits.length === told.length && fits.every(({ part }, at) => part === told[at]?.part);
  // A title is in the language of the day.
  return same ? told.map((row, at) => ({ ...row, title: fits[at]?.title ?? row.title })) : null;
}
