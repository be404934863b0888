import type { diagnosisWords as English } from '../en/diagnosis.ts';
import { naam } from './nouns.ts';

export const diagnosis: ReturnType<typeof English> = {
  somethingElse: 'Iets wat Lugwise niet kent',
  nothingItIsWiredAsIntended: 'Niets: de bedrading is zoals bedoeld',
  coilByItsLeads: (coil: string, plus: string, minus: string) =>
    `${coil}, draad ${plus} naar draad ${minus}`,
  potTrack: (pot) => `${naam(pot)}, baan`,
  potWiper: (pot) => `${naam(pot)}, loper`,
  betweenOhmsAndOhms2: (ohms, ohms2) => `tussen ${ohms} en ${ohms2}`,
  aSwingTheSameWayForEvery: 'een uitslag, dezelfde kant op voor elke spoel die in fase is',
  aPoleOppositeForCoilsThat: 'een pool, tegengesteld voor spoelen die brom opheffen',
  noChange: 'geen verandering',
  changesSmoothly: 'verandert vloeiend',
  remedyFirstAsTheLikeliest: (remedy) =>
    `${remedy} eerst, als het waarschijnlijkst, en doe de afwijkende metingen opnieuw: blijven ze afwijken, ga dan door met de volgende.`,
  everythingReadSoFarIsAsIntended: 'Alles wat tot nu toe gemeten is, is zoals bedoeld.',
  allElseIsAsIntended:
    'Wat afweek is waarschijnlijk een vergissing van oor of hand; al het andere dat gemeten is, is zoals bedoeld.',
  takeWhatWasOffAgain: 'Doe nog eens wat afweek. Wijkt het weer af, ga dan vandaar verder.',
  letTheClosingCheckProveTheRest:
    'Laat de eindcontrole de rest bewijzen, of ga door met een eigen meting.',
  ifItStillSoundsWrongLookOutside:
    'Klinkt het nog steeds verkeerd, zoek dan buiten de bedrading: kabel, versterker, snaren.',
  itPlaysInEveryPosition: 'Hij speelt in elke stand.',
  theseReadingsAreOutsideWhat:
    'Deze metingen lijken op niets wat Lugwise kent: geen enkele fout en geen twee samen verklaren ze goed.',
  takeTheReadingNamedBelowAgain:
    'Doe de meting hieronder opnieuw, met de knoppen zoals getoond en de meetpennen op blank metaal.',
  checkThatTheWiringEntered:
    'Kijk of de ingevoerde bedrading de bedoelde is: een onverwachte meting is vaak een verkeerd beschreven bedrading.',
  theReadingRepeatsOrItChanges:
    'De meting herhaalt zich, of ze verandert en de zoektocht gaat door.',
  itChecksOnceMoreThatAllIs: 'Het controleert nog eens of alles is zoals bedoeld.',
  onceMoreALooseJointMayHold: 'Nog eens: een losse soldering houdt het soms een keer of twee.',
  onceMoreAWornTrackJumpsAgain:
    'Nog eens: een versleten baan springt weer, een meetpen die uitgleed niet.',
  onceMoreMuchHangsOnThisFigure:
    'Nog eens: van dit getal hangt veel af. Kijk naar de lippen en de standen, en lees opnieuw af.',
  onceMoreASwingIsEasilyMisjudged:
    'Nog eens: welke kant een cijfer op zwaait, is snel verkeerd gezien.',
  ohmsCannotShowWhichWayRound: 'Ohms laten niet zien hoe een spoel is aangesloten; de uitslag wel.',
  itTellsATurnedMagnetFromExchanged:
    'Het onderscheidt een gedraaide magneet van verwisselde draden.',
  itWouldShowWhetherSentence: (sentence) => `Het zou laten zien of dit zo is: ${sentence}.`,
  firstIfSentenceOtherIfSentence2: (first, sentence, other, sentence2) =>
    `${first} bij: ${sentence}; ${other} bij: ${sentence2}.`,
  aboutOhms: (ohms) => `ongeveer ${ohms}`,
  highestAboutOhms: (ohms) => `hoogste ongeveer ${ohms}`,
  below1Ohm: 'onder 1 Ω',
  jumps: 'springt',
  orOpen: (figure, open) => `${figure}, of ${open}`,
  noReadingLeftCanTellThese: (sentences: readonly string[]) =>
    `Geen meting die over is kan deze uit elkaar houden: ${sentences.join('; of ')}.`,
  nothingReadSoFarIsOffAnd: (sentences: readonly string[]) =>
    `Niets van wat gemeten is wijkt af, en geen enkele meting zou nog veel meer zeggen. Niet uitgesloten: ${sentences.join('; ')}.`,
  allElseFitsNotRuledOut: (sentences: readonly string[]) =>
    `Wat afweek is waarschijnlijk een vergissing van oor of hand; al het andere klopt, en geen enkele meting zou nog veel meer zeggen. Niet uitgesloten: ${sentences.join('; ')}.`,
  orMendedByTheSameAct: (sentences: readonly string[]) =>
    ` Of, met dezelfde ingreep verholpen: ${sentences.join('; of ')}.`,
  both: (sentences: readonly string[]) => sentences.join(', en '),
  theGuitar: 'de gitaar',
  readAbout: (text: string): string | undefined => /ongeveer (.+)$/.exec(text)?.[1],
  readBetween: (text: string): readonly string[] | undefined =>
    /tussen (.+) en (.+)$/.exec(text)?.slice(1),
  startsBetween: (text: string): boolean => text.startsWith('tussen'),
  saysBand: (text: string): boolean => /\b(tussen|onder)\b/.test(text),
  saysOpen: (text: string): boolean => text.includes('open'),
};
