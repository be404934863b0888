import type { Circuit } from '../../../circuit/circuit.ts';
import type { Part, PartId } from '../../../circuit/parts/part.ts';
import type { Subject } from '../portrait.ts';
import { subjectOf } from '../subject.ts';

/** Side of a grid cell in layout units; one unit is one drawing unit, about a CSS pixel where the drawing stands at its own size. */
export const GRID = 6;

export type Turn = 0 | 90 | 180 | 270;
/**
 * Where a part stands: the middle of its portrait in layout units, multiples of `GRID` (others are rounded), and how
 * far it is turned, clockwise on the screen.
 */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly turn: Turn;
}
/**
 * Places by part. What is drawn as one thing stands under one name, that of its first part: a pickup under its first
 * coil, a switch on the back of a pot under the pot. `standOf` gives that name.
 */
export type Places = ReadonlyMap<PartId, Place>;

/** One thing with a place of its own. */
export interface Stand {
  /** The part under whose name its place is kept. */
  readonly id: PartId;
  readonly subject: Subject;
  readonly parts: readonly Part[];
}

const known = new WeakMap<Circuit, readonly Stand[]>();

/** Every part of the circuit in exactly one stand; pickups first, then as the parts come. */
export function standsOf(circuit: Circuit): readonly Stand[] {
  const before = known.get(circuit);
  if (before) return before;
  const taken = new Set<PartId>();
  const stands: Stand[] = [];
  const add = (subject: Subject): void => {
    const parts = subject.parts.filter(({ id }) => !taken.has(id));
    const first = parts[0];
    if (!first) return;
    for (const { id } of parts) taken.add(id);
    stands.push({ id: first.id, subject: { ...subject, parts }, parts });
  };
  for (const pickup of circuit.pickups) {
    const first = [...pickup.coils, pickup.plate, pickup.cover].find(
      (id) => id !== undefined && circuit.parts.some((part) => part.id === id),
    );
    if (first) add(subjectOf(circuit, first));
  }
  for (const part of circuit.parts) {
    if (taken.has(part.id)) continue;
    add(subjectOf(circuit, part.id));
    // A second switch on one pot, or whatever else has no room in the common portrait.
    if (!taken.has(part.id)) add({ key: part.id, title: part.title, parts: [part] });
  }
  known.set(circuit, stands);
  return stands;
}

/** The name under which the place of this part is kept. */
export const standOf = (circuit: Circuit, part: PartId): PartId =>
  standsOf(circuit).find(({ parts }) => parts.some(({ id }) => id === part))?.id ?? part;
