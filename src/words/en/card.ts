import { area } from '../area.ts';

const card = {
  noReasonWasGiven: 'No reason was given.',
  whatItShouldRead: 'What it should read',
  print: 'Print',
  toTheHunt: 'To the hunt',
  workingItOut: 'Working it out …',
  theCardCouldNotBeMadeSentence: (sentence: string) => `The card could not be made: ${sentence}`,
  tryAgain: 'Try again',
  turningAKnobAtTheJack: 'Turning a knob, at the jack',
  from0To10TheOthersAt: 'From 0 to 10, the others at 10. The ohms glide; this is their highest.',
  pickupsInside: 'Pickups, inside',
  nothingUnsolderedEveryKnob: 'Nothing unsoldered, every knob at 10.',
  potsInside: 'Pots, inside',
  theWiperIsTurnedFrom0To: 'The wiper is turned from 0 to 10.',
  smallPartsInside: 'Capacitors and resistors, inside',
  oneLegUnsoldered: 'Each by itself, one of its legs unsoldered.',
  switchesInside: 'Switches, inside',
  theseBeepAndOnlyThere: 'These beep, and only there.',
  grounds: 'Grounds',
  bOnTheSleeveOfTheJack: 'B on the sleeve of the jack.',
  oddHereStandsWhatIsMeant: (odd: string) => `${odd} Here stands what is meant.`,
  unplugTheGuitarFromTheAmplifier: (sigma: number) =>
    `Unplug the guitar from the amplifier first. Bands hold 19 of 20 healthy guitars (${sigma} standard deviations).`,
  atTheJack: 'At the jack',
  rOnTheTipBOnThe: (rows: string) =>
    `R on the tip, B on the sleeve; a loose plug reaches both. ${rows}`,
  measuredFarFromWhatIsPrinted: (map: string) => `Measured far from what is printed: ${map}.`,
  theSettingsAreManyEachRow:
    'The settings are many: each row is one choice of pickups, from its lowest figure to its highest.',
  theSettingsAreManyEachRow2:
    'The settings are many: each row is one choice of up to two coils, and more coils go by their number.',
  noMoreThanThrownSwitchesAre: (thrown: number) =>
    `No more than ${thrown} switches are away from their first position.`,
  fromTheValuesOfThePartsAnd: 'From the values of the parts, and how far those may be off.',
  doesNotFit: 'Does not fit',
  switches: 'Switches',
  knobsAt10: 'Knobs at 10',
  knobsAt0: 'Knobs at 0',
  mergedFiguresInSettingsSettings: (merged: number, settings: number) =>
    `${merged} figures in ${settings} settings`,
  moreMoreWays: (more: number) => `${more} more ways`,
  findLugAToLugB: (find: string, a: string, b: string) => `${find}, lug ${a} to lug ${b}`,
  healthy: 'Healthy:',
  andItBeeps: ', and it beeps',
  someMetersBeep: 'some meters beep',
  thisJobIsClosedTakeItUp: 'This job is closed. Take it up again to enter a reading.',
  enterWhatItReads: 'Enter what it reads',
  itReadsSomethingElse: 'It reads something else',
  thePickupsAndTheCoilThatIs: 'The pickups, and the coil that is asked for',
  atItsHighest: 'at its highest',
  noCoil: 'no coil',
  heardCoilsTogether: (heard: number) => `${heard} coils together`,
  titleAtWords: (title: string, words: string) => `${title} at ${words}`,
  probes: (red: string, black: string) => `R on ${red}, B on ${black}`,
  turnTheKnob: (red: string, black: string) =>
    `Turn the knob slowly from 0 to 10 and note the highest figure: R on ${red}, B on ${black}`,
  pointToPoint: (red: string, black: string) => `${red} to ${black}`,
  itsLug: { case: 'its case', frame: 'its frame' },
  lug: (lug: string) => `lug ${lug}`,
  narrowerForReadings: (count: number) =>
    `From the values of the parts, and ${count} ${count === 1 ? 'reading that fits' : 'readings that all fit'}: the bands are narrower for it.`,
  doNotFit: (count: number) =>
    `${count === 1 ? 'A reading does' : 'Readings do'} not fit this wiring as intended, so none narrows the bands here. The hunt goes on from ${count === 1 ? 'it' : 'them'}.`,
  orItBeeps: '; some meters beep',
  ways: (ways: readonly string[]) => ways.join(', or '),
};
export const cardWords = area('card', card);
