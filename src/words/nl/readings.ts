import type { readingWords as English } from '../en/readings.ts';
import { de } from './nouns.ts';

export const readings: ReturnType<typeof English> = {
  listenForTheBeepProbes: (probes) => `Luister naar de piep: ${probes}.`,
  youEnteredWasAHealthyGuitar: (was, expected, is) =>
    `Je voerde ${was} in. Een gezonde gitaar geeft hier ${expected}, dus zou ${is} er dichter bij zijn. Wat toont het scherm?`,
  youEnteredWasFewThingsInA: (was, is) =>
    `Je voerde ${was} in. Weinig in een gitaar meet dat; spoelen en potmeters meten duizenden ohm. Toont het scherm ${is}?`,
  youEntered0WhichIsA:
    'Je voerde 0 Ω in, een volledige kortsluiting. Toont het scherm een nul, of geen getal (OL, een losse 1, leeg)?',
  thatIsTooLongForAValue: 'Dat is te lang voor een waarde. Typ het ene getal.',
  typeTheCapacitanceWithIts: 'Typ de capaciteit met haar eenheid, zoals 22n of 0,022u.',
  entryOnACapacitanceRangeMeans: (entry) =>
    `"${entry}" op een capaciteitsbereik betekent meer dan het kan meten, zoals bij een kortgesloten onderdeel. Is dat wat je ziet?`,
  overRangeShorted: 'Buiten bereik: kortgesloten',
  entryIsNotACapacitanceType: (entry) =>
    `"${entry}" is geen capaciteit. Typ zoiets als 22n, 1n5 of 0,022u.`,
  entryIsBelowZeroWhichNoCapacitance: (entry) =>
    `"${entry}" is onder nul, en dat is geen capaciteit.`,
  zeroCapacitanceDoesTheMeter: 'Capaciteit nul: vindt de meter helemaal geen condensator?',
  yesOpen: 'Ja: open',
  suffixIsNotAUnitOfCapacitance: (suffix) =>
    `"${suffix}" is geen eenheid van capaciteit. Typ p, n of u, zoals 470p, 22n of 0,022u.`,
  entryIsMoreThanAnyCapacitor: (entry) =>
    `"${entry}" is meer dan een condensator van een gitaar heeft. Controleer de eenheid.`,
  doesTheCommaOfEntryStandFor: (entry) => `Staat het teken in "${entry}" voor een decimale komma?`,
  entryOfWhatChooseTheUnit: (entry) => `"${entry}" van wat? Kies de eenheid.`,
  thatIsTooLongForAReading: 'Dat is te lang voor een meting. Typ het ene getal.',
  typeWhatTheDisplayShowsIf: 'Typ wat het scherm toont. Toont het geen getal, druk dan op OL.',
  entryIsNotAReadingTypeA: (entry) =>
    `"${entry}" is geen meting. Typ een getal, met k of M als het scherm die toont, of OL.`,
  entryIsBelowZeroWhichNoResistance: (entry) =>
    `"${entry}" is onder nul, en dat is geen weerstand. Kijk of de meter op ohm staat en of de gitaar los is.`,
  isTheMOfEntryALarge: (entry) =>
    `Is de m van "${entry}" een grote M, voor een miljoen ohm, of een duizendste?`,
  milliMilliohm: (milli) => `${milli} (milliohm)`,
  suffixIsNotAUnitOfResistance: (suffix) =>
    `"${suffix}" is geen eenheid van weerstand. Typ k voor duizenden ohm, M voor miljoenen, of niets voor ohm.`,
  entryIsMoreThanAnyHandMeter: (entry) =>
    `"${entry}" is meer dan een handmeter toont. Toont hij geen getal, druk dan op OL.`,
  yesValue: (value) => `Ja: ${value}`,
  noLarge: (large) => `Nee: ${large}`,
  whatDoesTheDisplayShowFor: (entry) =>
    `Wat toont het scherm bij "${entry}": een nul, of helemaal geen getal?`,
  olALone1OrNoNumber: 'OL, een losse 1, of geen getal',
  n0AZero: '0 Ω, een nul',
  isItALone1AtThe: 'Is het een losse 1 aan de linkerrand van het scherm, of één ohm?',
  aLone1OverRange: 'Een losse 1: buiten bereik',
  textIsMoreThanAnyResistor: (text) => `"${text}" is meer dan een weerstand van een gitaar heeft.`,
  textIsNoCapacitanceOfAGuitars: (text) => `"${text}" is geen capaciteit van een gitaaronderdeel.`,
  textCouldNotBeWorkedOutType: (text) =>
    `"${text}" kon niet uitgerekend worden. Typ één waarde, of waarden met + of ||.`,
  trimIsNoPartAtAll: (trim) => `"${trim}" is helemaal geen onderdeel.`,
  aValueIsMissingOrIsNo: 'Er ontbreekt een waarde of ze is geen getal.',
  putBracketsAroundWhatIsIn: 'Zet haakjes om wat parallel staat: + en || staan naast elkaar.',
  giveEveryValueOfTheSumIts: 'Geef elke waarde van de som haar eenheid: k, M of ohm; p, n of u.',
  aResistance: 'een weerstand',
  aCapacitance: 'een capaciteit',
  giveTheValuesTheirUnitPN: 'Geef de waarden hun eenheid: p, n of u.',
  thatDoesNotComeOutAsName: (name) =>
    `Daar komt niet ${name} uit. Controleer de eenheden en de tekens.`,
  thatComesOutBelowZeroOrWithout: (name) =>
    `Daar komt iets onder nul of zonder einde uit, en dat is niet ${name}.`,
  liftOneLegOfThePartAnd: (part) =>
    `Maak één poot van ${de(part)} los en meet zijn capaciteit, R en B op zijn twee poten.`,
  everyWireInTheCavityInTurn: 'elke draad in de holte om de beurt',
  everyWireAtThePart: (part) => `elke draad aan ${de(part)}`,
  theWireAtTitle: (title) => `de draad bij ${title}`,
  holdTheProbesStillProbesWiggle: (probes, moved) =>
    `Houd de meetpennen stil: ${probes}. Beweeg ${moved} met een droog stokje, en kijk of het getal springt.`,
  plugInAtLowVolumeSetThe:
    'Steek de kabel in op laag volume, zet de knoppen zoals getoond en speel. Hoe klinkt het?',
  lookCloselyAtWhat: (what) => `Kijk goed naar ${what}.`,
  readTheOhmsProbes: (probes) => `Meet de ohms: ${probes}.`,
  thisGuitarHasNoOutputJack:
    'deze gitaar heeft geen uitgangsjack: voeg er een toe, zodat duidelijk is waar het geluid eruit komt',
  holdACompassOverThePartWhich: (part) =>
    `Houd een kompas boven ${de(part)}. Welke pool is zijn bovenkant?`,
  setTheMeterToDCMillivolts: (probes, part) =>
    `Zet de meter op DC millivolt: ${probes}. Leg staal op ${de(part)}, trek het dan weg en kijk welke kant het getal uitslaat.`,
  plugInAtLowVolumeAndTouch: (lug) =>
    `Steek de kabel in op laag volume en raak ${lug} aan. Wordt de brom zachter, blijft hij gelijk, of wordt hij luider?`,
  turnThePartSlowlyFrom0To: (part, probes) =>
    `Draai ${de(part)} langzaam van 0 naar 10 en kijk naar de ohms: ${probes}. Noteer het hoogste getal.`,
  openOL: 'open (OL)',
  rOnPointBOnPoint2: (point, point2) => `R op ${point}, B op ${point2}`,
  beeps: 'piept',
  silent: 'stil',
  turn: { smooth: 'vloeiend', jumps: 'springt', stuck: 'vast' },
  highest: (how, peak) => `${how}, hoogste ${peak}`,
  flex: { steady: 'stabiel', jumps: 'springt heen en weer' },
  swing: { plus: 'slaat uit naar plus', nothing: 'geen uitslag', minus: 'slaat uit naar min' },
  farads: { open: 'open', short: 'kortsluiting' },
  heard: {
    normal: 'normaal',
    silent: 'stil',
    weak: 'zwak',
    thin: 'dun',
    dull: 'dof',
    hum: 'brom',
    crackle: 'gekraak',
  },
  hum: { up: 'brom wordt luider', down: 'brom wordt zachter', same: 'brom blijft gelijk' },
  humSame: 'even luid',
  humLouder: (decibels) => `${decibels} dB luider`,
  humSofter: (decibels) => `${decibels} dB zachter`,
  measureTheHumAgainst: (here, there) =>
    `Meet met een hand op de snaren de brom: ${here}, tegenover ${there}.`,
  knobStands: (pot, figure) => `${pot} op ${figure}`,
  look: {
    good: 'ziet er goed uit',
    dull: 'doffe of korrelige soldering',
    loose: 'los',
    burnt: 'verbrand',
    bridged: 'soldeer of een draadje overbrugt het',
    elsewhere: 'de draad zit op een andere lip',
  },
  pole: { north: 'noordpool', south: 'zuidpool', none: 'geen pool te zien' },
  olOpen: 'OL (open)',
  amount: (figure, unit) => `${figure} ${unit}`,
  onlyOneValueInSeries: (text) => `Maar één waarde in serie: "${text}".`,
  onlyOneValueInParallel: (text) => `Maar één waarde parallel: "${text}".`,
  thatIsLongerThan: (longest) => `Dat is langer dan ${longest} tekens. Maak het korter.`,
  onlySignsAre: (what) => `"${what}" kon niet uitgerekend worden: alleen + - * / en || kunnen.`,
  typeValuesWith: (what) => `"${what}" kon niet uitgerekend worden. Typ waarden met + of ||.`,
  noUnitThatIsKnown: (name) =>
    `"${name}" is geen eenheid die hier bekend is. Typ k, M, ohm, p, n of u.`,
  trackEnds: (pot) => `baaneinden van ${de(pot)}`,
  temperature: 'temperatuur',
  meterScale: 'de schaal van de meter',
  probeLeads: 'meetsnoeren',
  openWords: ['leeg', 'oneindig', 'geengetal', 'geenmeting', 'buitenbereik'],
  zeroOrOpenWords: ['geen', 'niets', 'nul', 'dood', 'geencontact'],
  sumInEnglish: (text) =>
    text
      .replace(/\s+in\s+serie\s*$/i, ' in series')
      .replace(/\s+(?:in\s+)?parallel\s*$/i, ' in parallel')
      .replace(/\s+en\s+/gi, ' and '),
};
