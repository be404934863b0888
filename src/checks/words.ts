import type { LugRef } from '../circuit/circuit.ts';
import { lugTitle } from '../circuit/names.ts';
import { checkWords } from '../words/en/checks.ts';
import { commonWords } from '../words/en/common.ts';
import type { Network, Stand } from './network.ts';

export const lugWords = ({ layout }: Network, lug: LugRef): string => lugTitle(layout, lug);

/** "with the selector at bridge and the mini toggle at down"; empty for no switch. */
export function standWords({ switches }: Network, stand: Stand, which: readonly number[]): string {
  const told = which.flatMap((at) => {
    const part = switches[at];
    const position = part?.positions[stand[at] ?? 0];
    return part && position ? [checkWords().thePartAtPosition(part.title, position.title)] : [];
  });
  return told.length === 0 ? '' : checkWords().withList(commonWords().and(told));
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
