import { area } from '../area.ts';

const readings = {
  listenForTheBeepProbes: (probes: string) => `Listen for the beep: ${probes}.`,
  youEnteredWasAHealthyGuitar: (was: string, expected: string, is: string) =>
    `You entered ${was}. A healthy guitar shows ${expected} here, so ${is} would be closer. Which does the display show?`,
  youEnteredWasFewThingsInA: (was: string, is: string) =>
    `You entered ${was}. Few things in a guitar read that; coils and pots read thousands of ohms. Does the display show ${is}?`,
  youEntered0WhichIsA:
    'You entered 0 Ω, which is a dead short. Does the display show a zero, or no number (OL, a lone 1, blank)?',
  thatIsTooLongForAValue: 'That is too long for a value. Type the one number.',
  typeTheCapacitanceWithIts: 'Type the capacitance with its unit, as in 22n or 0.022u.',
  entryOnACapacitanceRangeMeans: (entry: string) =>
    `"${entry}" on a capacitance range means more than it can measure, as with a shorted part. Is that what you see?`,
  overRangeShorted: 'Over range: shorted',
  entryIsNotACapacitanceType: (entry: string) =>
    `"${entry}" is not a capacitance. Type it as in 22n, 1n5 or 0.022u.`,
  entryIsBelowZeroWhichNoCapacitance: (entry: string) =>
    `"${entry}" is below zero, which no capacitance is.`,
  zeroCapacitanceDoesTheMeter: 'Zero capacitance: does the meter find no capacitor at all?',
  yesOpen: 'Yes: open',
  suffixIsNotAUnitOfCapacitance: (suffix: string) =>
    `"${suffix}" is not a unit of capacitance. Type p, n or u, as in 470p, 22n or 0.022u.`,
  entryIsMoreThanAnyCapacitor: (entry: string) =>
    `"${entry}" is more than any capacitor of a guitar. Check the unit.`,
  doesTheCommaOfEntryStandFor: (entry: string) =>
    `Does the comma of "${entry}" stand for a decimal point?`,
  entryOfWhatChooseTheUnit: (entry: string) => `"${entry}" of what? Choose the unit.`,
  thatIsTooLongForAReading: 'That is too long for a reading. Type the one number.',
  typeWhatTheDisplayShowsIf: 'Type what the display shows. If it shows no number, press OL.',
  entryIsNotAReadingTypeA: (entry: string) =>
    `"${entry}" is not a reading. Type a number, with k or M if the display shows one, or OL.`,
  entryIsBelowZeroWhichNoResistance: (entry: string) =>
    `"${entry}" is below zero, which no resistance is. Check that the meter is set to ohms and that the guitar is unplugged.`,
  isTheMOfEntryALarge: (entry: string) =>
    `Is the m of "${entry}" a large M, for a million ohm, or a thousandth?`,
  milliMilliohm: (milli: string) => `${milli} (milliohm)`,
  suffixIsNotAUnitOfResistance: (suffix: string) =>
    `"${suffix}" is not a unit of resistance. Type k for thousands of ohms, M for millions, or nothing for ohm.`,
  entryIsMoreThanAnyHandMeter: (entry: string) =>
    `"${entry}" is more than any hand meter shows. If it shows no number, press OL.`,
  yesValue: (value: string) => `Yes: ${value}`,
  noLarge: (large: string) => `No: ${large}`,
  whatDoesTheDisplayShowFor: (entry: string) =>
    `What does the display show for "${entry}": a zero, or no number at all?`,
  olALone1OrNoNumber: 'OL, a lone 1, or no number',
  n0AZero: '0 Ω, a zero',
  isItALone1AtThe: 'Is it a lone 1 at the left edge of the display, or one ohm?',
  aLone1OverRange: 'A lone 1: over range',
  textIsMoreThanAnyResistor: (text: string) => `"${text}" is more than any resistor of a guitar.`,
  textIsNoCapacitanceOfAGuitars: (text: string) =>
    `"${text}" is no capacitance of a guitar's part.`,
  textCouldNotBeWorkedOutType: (text: string) =>
    `"${text}" could not be worked out. Type one value, or values with + or ||.`,
  trimIsNoPartAtAll: (trim: string) => `"${trim}" is no part at all.`,
  aValueIsMissingOrIsNo: 'A value is missing or is no number.',
  putBracketsAroundWhatIsIn:
    'Put brackets around what is in parallel: + and || stand side by side.',
  giveEveryValueOfTheSumIts: 'Give every value of the sum its unit: k, M or ohm; p, n or u.',
  aResistance: 'a resistance',
  aCapacitance: 'a capacitance',
  giveTheValuesTheirUnitPN: 'Give the values their unit: p, n or u.',
  thatDoesNotComeOutAsName: (name: string) =>
    `That does not come out as ${name}. Check the units and the signs.`,
  thatComesOutBelowZeroOrWithout: (name: string) =>
    `That comes out below zero or without end, which is not ${name}.`,
  liftOneLegOfThePartAnd: (part: string) =>
    `Lift one leg of the ${part} and read its capacitance, R and B on its two legs.`,
  everyWireInTheCavityInTurn: 'every wire in the cavity in turn',
  everyWireAtThePart: (part: string) => `every wire at the ${part}`,
  theWireAtTitle: (title: string) => `the wire at ${title}`,
  holdTheProbesStillProbesWiggle: (probes: string, moved: string) =>
    `Hold the probes still: ${probes}. Wiggle ${moved} with a dry stick, and watch whether the figure jumps.`,
  plugInAtLowVolumeSetThe:
    'Plug in at low volume, set the controls as shown and play. How does it sound?',
  lookCloselyAtWhat: (what: string) => `Look closely at ${what}.`,
  readTheOhmsProbes: (probes: string) => `Read the ohms: ${probes}.`,
  thisGuitarHasNoOutputJack:
    'this guitar has no output jack: add one to say where the sound comes out',
  holdACompassOverThePartWhich: (part: string) =>
    `Hold a compass over the ${part}. Which pole is its top?`,
  setTheMeterToDCMillivolts: (probes: string, part: string) =>
    `Set the meter to DC millivolts: ${probes}. Lay steel on the ${part}, then pull it off and watch which way the figure swings.`,
  plugInAtLowVolumeAndTouch: (lug: string) =>
    `Plug in at low volume and touch ${lug}. Does the hum get softer, stay the same, or get louder?`,
  turnThePartSlowlyFrom0To: (part: string, probes: string) =>
    `Turn the ${part} slowly from 0 to 10 and watch the ohms: ${probes}. Note the highest figure.`,
  openOL: 'open (OL)',
  rOnPointBOnPoint2: (point: string, point2: string) => `R on ${point}, B on ${point2}`,
  beeps: 'beeps',
  silent: 'silent',
  turn: { smooth: 'smooth', jumps: 'jumps', stuck: 'stuck' },
  highest: (how: string, peak: string) => `${how}, highest ${peak}`,
  flex: { steady: 'steady', jumps: 'jumps about' },
  swing: { plus: 'swings to plus', nothing: 'no swing', minus: 'swings to minus' },
  farads: { open: 'open', short: 'short' },
  heard: {
    normal: 'normal',
    silent: 'silent',
    weak: 'weak',
    thin: 'thin',
    dull: 'dull',
    hum: 'hum',
    crackle: 'crackle',
  },
  hum: { up: 'hum gets louder', down: 'hum gets softer', same: 'hum stays the same' },
  humSame: 'as loud',
  humLouder: (decibels: string) => `${decibels} dB louder`,
  humSofter: (decibels: string) => `${decibels} dB softer`,
  measureTheHumAgainst: (here: string, there: string) =>
    `A hand on the strings, measure the hum: ${here}, against ${there}.`,
  knobStands: (pot: string, figure: number) => `${pot} at ${figure}`,
  look: {
    good: 'looks good',
    dull: 'dull or grainy joint',
    loose: 'loose',
    burnt: 'burnt',
    bridged: 'solder or a strand bridges it',
    elsewhere: 'the lead sits on another lug',
  },
  pole: { north: 'north pole', south: 'south pole', none: 'no pole to be seen' },
  /** On the screen; `openOL` is the same in a sentence. */
  olOpen: 'OL (open)',
  amount: (figure: string, unit: string) => `${figure} ${unit}`,
  onlyOneValueInSeries: (text: string) => `Only one value in series: "${text}".`,
  onlyOneValueInParallel: (text: string) => `Only one value in parallel: "${text}".`,
  thatIsLongerThan: (longest: number) => `That is longer than ${longest} characters. Shorten it.`,
  onlySignsAre: (what: string) => `"${what}" could not be worked out: only + - * / and || are.`,
  typeValuesWith: (what: string) => `"${what}" could not be worked out. Type values with + or ||.`,
  noUnitThatIsKnown: (name: string) =>
    `"${name}" is no unit that is known here. Type k, M, ohm, p, n or u.`,
  trackEnds: (pot: string) => `track ends of the ${pot}`,
  temperature: 'temperature',
  meterScale: "the meter's scale",
  probeLeads: 'probe leads',
  /** More words for "more than I can measure", and for what may be that or a zero; in lower case, without spaces. */
  openWords: [] as readonly string[],
  zeroOrOpenWords: [] as readonly string[],
  /** A sum as it is typed, with English words for what joins its values. */
  sumInEnglish: (text: string) => text,
};
export const readingWords = area('readings', readings);
