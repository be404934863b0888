import type { Circuit } from './circuit.ts';

/** A left-handed guitar by its pots: every one counts the other way. One alone is a pot that somebody turned round. */
export function isLeftHanded({ parts }: Pick<Circuit, 'parts'>): boolean {
  const pots = parts.filter((part) => part.kind === 'pot');
  return pots.length > 0 && pots.every(({ leftHanded }) => leftHanded === true);
}
