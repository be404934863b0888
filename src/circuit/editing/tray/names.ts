import { Draft } from '../../catalog/modifications/draft.ts';
import type { Circuit } from '../../circuit.ts';

/** The title itself where nothing is called so, else with the lowest number that makes it the only one. */
export function freeTitle(circuit: Circuit, title: string): string {
  const taken = new Set(
    [...circuit.parts, ...circuit.pickups].map((thing) => thing.title.toLowerCase()),
  );
  let free = title;
  for (let number = 2; taken.has(free.toLowerCase()); number += 1) free = `${title} ${number}`;
  return free;
}

/** The name itself where it is free, else with the lowest number that makes it so. */
export const freeName = (circuit: Circuit, name: string): string => new Draft(circuit).fresh(name);

/** A title as a name: "bridge pickup" becomes `bridgePickup`. Falls back where no letters of the Latin alphabet are in it. */
export function nameFrom(title: string, otherwise: string): string {
  const words = title
    .replace(/[^A-Za-z0-9 ]/g, '')
    .trim()
    .split(/\s+/);
  const name = words
    .map((word, at) =>
      at === 0 ? word.toLowerCase() : word.charAt(0).toUpperCase() + word.slice(1),
    )
    .join('');
  return /^[A-Za-z]/.test(name) ? name.slice(0, 30) : otherwise;
}
