import { area } from '../area.ts';

const flows = {
  noReasonWasGiven: 'No reason was given.',
  youEnteredShownADeadShort: (shown: string) =>
    `You entered ${shown}, a dead short. Does the display show a zero, or no number (OL, a lone 1, blank)?`,
  youEnteredShownCoilsReadThousands: (shown: string, better: string) =>
    `You entered ${shown}. Coils read thousands of ohms, so ${better} would fit. Which does the display show?`,
  theGuitar: 'the guitar',
  potAt0: (pot: string) => `${pot} at 0`,
};
export const flowWords = area('flows', flows);
