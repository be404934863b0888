import { area } from '../area.ts';

const practice = {
  hiddenInThisGuitarSentence: (sentence: string) => `Hidden in this guitar: ${sentence}.`,
  showWhatIsHidden: 'Show what is hidden',
  itIsMendedByThisFault: (fault: string) => `What mends it: ${fault}.`,
  youFoundIt: 'You found it',
  notFoundThisTime: 'Not found this time',
  anotherPracticeGuitar: 'Another practice guitar',
  touchTheProbes: 'Touch the probes',
  turnTheKnob: 'Turn the knob',
  moveTheWire: 'Move the wire',
  pullTheSteelOff: 'Pull the steel off',
  playIt: 'Play it',
  touchTheMetal: 'Touch the metal',
  lookClosely: 'Look closely',
  holdTheCompassOverIt: 'Hold the compass over it',
  itCouldNotBeRead: 'It could not be read.',
  again: 'Again',
  useIt: 'Use it',
  noCapacitor: 'no capacitor',
  howHighestDisplay: (how: string, display: string) => `${how}, highest ${display}`,
  itCouldNotBeStarted: 'It could not be started.',
  practiceGuitar: 'Practice guitar',
  shorted: 'shorted',
};
export const practiceWords = area('practice', practice);
