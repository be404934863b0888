import { area } from '../area.ts';

const diagnosis = {
  somethingElse: 'Something Lugwise does not know of',
  nothingItIsWiredAsIntended: 'Nothing: it is wired as intended',
  coilByItsLeads: (coil: string, plus: string, minus: string) =>
    `${coil}, ${plus} to ${minus} lead`,
  potTrack: (pot: string) => `${pot}, track`,
  potWiper: (pot: string) => `${pot}, wiper`,
  betweenOhmsAndOhms2: (ohms: string, ohms2: string) => `between ${ohms} and ${ohms2}`,
  aSwingTheSameWayForEvery: 'a swing, the same way for every coil that is in phase',
  aPoleOppositeForCoilsThat: 'a pole, opposite for coils that cancel hum',
  noChange: 'no change',
  changesSmoothly: 'changes smoothly',
  remedyFirstAsTheLikeliest: (remedy: string) =>
    `${remedy} first, as the likeliest, and take the readings that were off again: if they stay off, go on with the next.`,
  everythingReadSoFarIsAsIntended: 'Everything read so far is as intended.',
  allElseIsAsIntended:
    'What was off is likeliest a slip of ear or hand; all else read so far is as intended.',
  takeWhatWasOffAgain: 'Take again what was off. If it is off once more, go on from there.',
  letTheClosingCheckProveTheRest:
    'Let the closing check prove the rest, or go on with a reading of your own.',
  ifItStillSoundsWrongLookOutside:
    'If it still sounds wrong, look outside the wiring: cable, amplifier, strings.',
  itPlaysInEveryPosition: 'It plays in every position.',
  theseReadingsAreOutsideWhat:
    'These readings are like nothing Lugwise knows of: no single fault, and no two together, explain them well.',
  takeTheReadingNamedBelowAgain:
    'Take the reading named below again, with the controls as shown and the probes on bare metal.',
  checkThatTheWiringEntered:
    'Check that the wiring entered is the wiring meant: an unexpected reading is often a wiring that was described wrongly.',
  theReadingRepeatsOrItChanges: 'The reading repeats, or it changes and the hunt goes on.',
  itChecksOnceMoreThatAllIs: 'It checks once more that all is as intended.',
  onceMoreALooseJointMayHold: 'Once more: a loose joint may hold once or twice.',
  onceMoreAWornTrackJumpsAgain:
    'Once more: a worn track jumps again, a probe that slipped does not.',
  onceMoreMuchHangsOnThisFigure:
    'Once more: much hangs on this figure. Look at the lugs and the controls, and read it afresh.',
  onceMoreASwingIsEasilyMisjudged: 'Once more: which way a figure swings is easily misjudged.',
  ohmsCannotShowWhichWayRound: 'Ohms cannot show which way round a coil is; the swing can.',
  itTellsATurnedMagnetFromExchanged: 'It tells a turned magnet from exchanged leads.',
  itWouldShowWhetherSentence: (sentence: string) => `It would show whether ${sentence}.`,
  firstIfSentenceOtherIfSentence2: (
    first: string,
    sentence: string,
    other: string,
    sentence2: string,
  ) => `${first} if ${sentence}; ${other} if ${sentence2}.`,
  aboutOhms: (ohms: string) => `about ${ohms}`,
  highestAboutOhms: (ohms: string) => `highest about ${ohms}`,
  below1Ohm: 'below 1 Ω',
  jumps: 'jumps',
  /** A figure, or open. */
  orOpen: (figure: string, open: string) => `${figure}, or ${open}`,
  noReadingLeftCanTellThese: (sentences: readonly string[]) =>
    `No reading left can tell these apart: ${sentences.join('; or ')}.`,
  nothingReadSoFarIsOffAnd: (sentences: readonly string[]) =>
    `Nothing read so far is off, and no one reading would tell much more. Not ruled out: ${sentences.join('; ')}.`,
  allElseFitsNotRuledOut: (sentences: readonly string[]) =>
    `What was off is likeliest a slip of ear or hand; all else fits, and no one reading would tell much more. Not ruled out: ${sentences.join('; ')}.`,
  orMendedByTheSameAct: (sentences: readonly string[]) =>
    ` Or, mended by the same act: ${sentences.join('; or ')}.`,
  /** Faults that are there at once. */
  both: (sentences: readonly string[]) => sentences.join(', and '),
  theGuitar: 'the guitar',
  /** What `aboutOhms` says, back from a longer text. */
  readAbout: (text: string): string | undefined => /about (.+)$/.exec(text)?.[1],
  /** What `betweenOhmsAndOhms2` says, back from a longer text. */
  readBetween: (text: string): readonly string[] | undefined =>
    /between (.+) and (.+)$/.exec(text)?.slice(1),
  startsBetween: (text: string): boolean => text.startsWith('between'),
  /** Whether the words have the band in them. */
  saysBand: (text: string): boolean => /\b(between|below)\b/.test(text),
  saysOpen: (text: string): boolean => text.includes('open'),
};
export const diagnosisWords = area('diagnosis', diagnosis);
