import type { cardWords as English } from '../en/card.ts';
import { naam } from './nouns.ts';

export const card: ReturnType<typeof English> = {
  noReasonWasGiven: 'Er werd geen reden gegeven.',
  whatItShouldRead: 'Wat je hoort te meten',
  print: 'Afdrukken',
  toTheHunt: 'Naar de zoektocht',
  workingItOut: 'Wordt uitgerekend …',
  theCardCouldNotBeMadeSentence: (sentence) => `De kaart kon niet gemaakt worden: ${sentence}`,
  tryAgain: 'Opnieuw proberen',
  turningAKnobAtTheJack: 'Een knop draaien, bij de jack',
  from0To10TheOthersAt: 'Van 0 tot 10, de andere op 10. De ohms glijden; dit is hun hoogste.',
  pickupsInside: 'Elementen, binnenin',
  nothingUnsolderedEveryKnob: 'Niets losgesoldeerd, elke knop op 10.',
  potsInside: 'Potmeters, binnenin',
  theWiperIsTurnedFrom0To: 'De loper wordt van 0 tot 10 gedraaid.',
  smallPartsInside: 'Condensatoren en weerstanden, binnenin',
  oneLegUnsoldered: 'Elk apart, met één poot losgesoldeerd.',
  switchesInside: 'Schakelaars, binnenin',
  theseBeepAndOnlyThere: 'Deze piepen, en alleen daar.',
  grounds: 'Massa',
  bOnTheSleeveOfTheJack: 'B op de mantel van de jack.',
  oddHereStandsWhatIsMeant: (odd) => `${odd} Hier staat wat bedoeld is.`,
  unplugTheGuitarFromTheAmplifier: (sigma) =>
    `Haal de gitaar eerst van de versterker. Binnen de grenzen vallen 19 van de 20 gezonde gitaren (${sigma} standaardafwijkingen).`,
  atTheJack: 'Bij de jack',
  rOnTheTipBOnThe: (rows) => `R op de tip, B op de mantel; een losse plug bereikt beide. ${rows}`,
  measuredFarFromWhatIsPrinted: (map) => `Gemeten ver van wat erop staat: ${map}.`,
  theSettingsAreManyEachRow:
    'Er zijn veel standen: elke rij is één keuze van elementen, van het laagste tot het hoogste getal.',
  theSettingsAreManyEachRow2:
    'Er zijn veel standen: elke rij is één keuze van hoogstens twee spoelen; meer spoelen gaan op aantal.',
  noMoreThanThrownSwitchesAre: (thrown) =>
    `Hoogstens ${thrown} schakelaars staan niet in hun eerste stand.`,
  fromTheValuesOfThePartsAnd: 'Uit de waarden van de onderdelen, en hoever die mogen afwijken.',
  doesNotFit: 'Past niet',
  switches: 'Schakelaars',
  knobsAt10: 'Knoppen op 10',
  knobsAt0: 'Knoppen op 0',
  mergedFiguresInSettingsSettings: (merged, settings) =>
    `${merged} getallen in ${settings} standen`,
  moreMoreWays: (more) => `${more} andere manieren`,
  findLugAToLugB: (find, a, b) => `${naam(find)}, lip ${a} naar lip ${b}`,
  healthy: 'Gezond:',
  andItBeeps: ', en het piept',
  someMetersBeep: 'sommige meters piepen',
  thisJobIsClosedTakeItUp: 'Deze klus is gesloten. Neem hem weer op om een meting in te voeren.',
  enterWhatItReads: 'Voer in wat je meet',
  itReadsSomethingElse: 'Ik meet iets anders',
  thePickupsAndTheCoilThatIs: 'De elementen, en de spoel waar het om gaat',
  atItsHighest: 'op zijn hoogst',
  noCoil: 'geen spoel',
  heardCoilsTogether: (heard) => `${heard} spoelen samen`,
  titleAtWords: (title, words) => `${naam(title)} op ${words}`,
  probes: (red, black) => `R op ${red}, B op ${black}`,
  turnTheKnob: (red, black) =>
    `Draai de knop langzaam van 0 naar 10 en noteer het hoogste getal: R op ${red}, B op ${black}`,
  pointToPoint: (red, black) => `${red} naar ${black}`,
  itsLug: { case: 'zijn huis', frame: 'zijn frame' },
  lug: (lug) => `lip ${lug}`,
  narrowerForReadings: (count: number) =>
    `Uit de waarden van de onderdelen, en ${count} ${count === 1 ? 'meting die past' : 'metingen die allemaal passen'}: daardoor zijn de grenzen nauwer.`,
  doNotFit: (count: number) =>
    `${count === 1 ? 'Een meting past' : 'Er zijn metingen die'} niet bij deze bedrading zoals bedoeld${count === 1 ? '' : ' passen'}, dus wordt hier niets nauwer. De zoektocht gaat daarmee verder.`,
  orItBeeps: '; sommige meters piepen',
  ways: (ways: readonly string[]) => ways.join(', of '),
};
