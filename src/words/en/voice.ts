import { area } from '../area.ts';

const voice = {
  thePhoneDoesNotLetThisApp:
    'The phone does not let this app hear. Allow the microphone for this page in the browser’s settings.',
  noMicrophoneWasFound: 'No microphone was found.',
  anotherAppHoldsTheMicrophone: 'Another app holds the microphone.',
  theMicrophoneWorksOnlyOnA: 'The microphone works only on a secure address (https).',
  theMicrophoneCouldNotBeOpened: 'The microphone could not be opened.',
  asItShouldBe: 'as it should be',
  notAsItShouldBe: 'not as it should be',
  onTheEdge: 'on the edge',
  openTheGuitarTheNextReading: 'Open the guitar. The next reading is inside.',
  questionHealthyExpected: (question: string, expected: string) =>
    `${question} Healthy: ${expected}.`,
  /** Signs and short forms, and how they are said. */
  spelled: [
    [/\bR on\b/g, 'red probe on'],
    [/\bB on\b/g, 'black probe on'],
    [/(\d)\s?kΩ/g, '$1 kilo-ohm'],
    [/(\d)\s?MΩ/g, '$1 megohm'],
    [/(\d)\s?Ω/g, '$1 ohm'],
    [/(\d)\s?nF/g, '$1 nanofarad'],
    [/(\d)\s?pF/g, '$1 picofarad'],
    [/(\d)\s?µF/g, '$1 microfarad'],
    [/(\d)\s?%/g, '$1 percent'],
    [/\+ end\b/g, 'plus end'],
    [/− end\b/g, 'minus end'],
    [/\bopen \(OL\)/g, 'open'],
    [/\bOL\b/g, 'open'],
  ] as readonly (readonly [RegExp, string])[],
  /** What has to stand otherwise before the next reading. */
  first: (moves: readonly string[]) => `First: ${moves.join(', ')}.`,
  moveTo: (control: string, state: string) => `${control} to ${state}`,
  movePlug: { in: 'plug the cable in', out: 'pull the cable out' },
};
export const voiceWords = area('voice', voice);
