import type { voiceWords as English } from '../en/voice.ts';

export const voice: ReturnType<typeof English> = {
  thePhoneDoesNotLetThisApp:
    'De telefoon laat deze app niet luisteren. Sta de microfoon voor deze pagina toe in de instellingen van de browser.',
  noMicrophoneWasFound: 'Er is geen microfoon gevonden.',
  anotherAppHoldsTheMicrophone: 'Een andere app houdt de microfoon vast.',
  theMicrophoneWorksOnlyOnA: 'De microfoon werkt alleen op een beveiligd adres (https).',
  theMicrophoneCouldNotBeOpened: 'De microfoon kon niet geopend worden.',
  asItShouldBe: 'zoals het hoort',
  notAsItShouldBe: 'niet zoals het hoort',
  onTheEdge: 'op het randje',
  openTheGuitarTheNextReading: 'Open de gitaar. De volgende meting is binnenin.',
  questionHealthyExpected: (question, expected) => `${question} Gezond: ${expected}.`,
  spelled: [
    [/\bR op\b/g, 'rode pen op'],
    [/\bB op\b/g, 'zwarte pen op'],
    [/(\d)\s?kΩ/g, '$1 kilo-ohm'],
    [/(\d)\s?MΩ/g, '$1 mega-ohm'],
    [/(\d)\s?Ω/g, '$1 ohm'],
    [/(\d)\s?nF/g, '$1 nanofarad'],
    [/(\d)\s?pF/g, '$1 picofarad'],
    [/(\d)\s?µF/g, '$1 microfarad'],
    [/(\d)\s?%/g, '$1 procent'],
    [/\bopen \(OL\)/g, 'open'],
    [/\bOL\b/g, 'open'],
  ] as readonly (readonly [RegExp, string])[],
  first: (moves) => `Eerst: ${moves.join(', ')}.`,
  moveTo: (control, state) => `${control} naar ${state}`,
  movePlug: { in: 'steek de kabel erin', out: 'trek de kabel eruit' },
};
