import type { flowWords as English } from '../en/flows.ts';

export const flows: ReturnType<typeof English> = {
  noReasonWasGiven: 'Er werd geen reden gegeven.',
  youEnteredShownADeadShort: (shown) =>
    `Je voerde ${shown} in, een volledige kortsluiting. Toont het scherm een nul, of geen getal (OL, een losse 1, leeg)?`,
  youEnteredShownCoilsReadThousands: (shown, better) =>
    `Je voerde ${shown} in. Spoelen meten duizenden ohm, dus zou ${better} passen. Wat toont het scherm?`,
  theGuitar: 'de gitaar',
  potAt0: (pot) => `${pot} op 0`,
};
