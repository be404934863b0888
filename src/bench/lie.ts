import type { Circuit } from '../circuit/circuit.ts';
import { isLeftHanded } from '../circuit/left-handed.ts';
import type { Lie } from './drawings/portrait.ts';
import { preferences } from './preferences.ts';

/** How this guitar lies: as the bench is set, and mirrored where its pots say that it is left-handed. */
export function lieOf(circuit: Circuit): Lie {
  const { turned, leftHanded } = preferences.value;
  return { turned, leftHanded: leftHanded || isLeftHanded(circuit) };
}
