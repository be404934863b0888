import type { Circuit } from './circuit.ts';
import type { PartId } from './parts/part.ts';

/**
 * Coils that hear one and the same string, a list for each part of the strings that is heard by coils of its own. Most guitars have
 * one list, of all coils. Under a pickup in halves (`stringsEach`) a string is heard by one half, and by all coils of other pickups.
 * @returns at least one list; coils of no pickup are in all of them
 */
export function coilsByString({ parts, pickups }: Circuit): readonly (readonly PartId[])[] {
  const coils = parts.flatMap(({ kind, id }) => (kind === 'coil' ? [id] : []));
  const halved = pickups.filter(({ stringsEach }) => stringsEach);
  const count = Math.max(1, ...halved.map((pickup) => pickup.coils.length));
  return Array.from({ length: count }, (_, at) => {
    const deaf = halved.flatMap((pickup) =>
      pickup.coils.filter((_coil, place) => place !== at % pickup.coils.length),
    );
    return coils.filter((id) => !deaf.includes(id));
  });
}
