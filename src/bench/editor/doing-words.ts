import type { LugRef } from '../../circuit/circuit.ts';
import { editorWords } from '../../words/en/editor.ts';
import type { Hand } from './hand.ts';

/** What the next tap does. */
export function doingWords(
  hand: Hand,
  parts: number,
  lug: (lug: LugRef) => string,
  part: (id: string) => string,
): string {
  switch (hand.is) {
    case 'lead':
      return editorWords().fromLugTapTheLugItGoes(lug(hand.from));
    case 'end':
      return editorWords().tapTheLugThatTheLooseEnd;
    case 'part':
      return editorWords().tapWhereThePartShouldStand(part(hand.part));
    case 'free':
      return parts === 0
        ? editorWords().addTheFirstPartAPickupSay
        : editorWords().tapALugToStartALead;
  }
}
