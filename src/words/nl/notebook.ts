import type { notebookWords as English } from '../en/notebook.ts';

export const notebook: ReturnType<typeof English> = {
  theFileIsTooLargeCountCharacters: (count, LONGESTFILE) =>
    `Het bestand is te groot: ${count} tekens, terwijl een klus er hoogstens ${LONGESTFILE} heeft.`,
  theFileIsEmpty: 'Het bestand is leeg.',
  theFileIsNotJSONLineLine: (line, character) =>
    `Het bestand is geen JSON: regel ${line}, teken ${character}.`,
  theJobCouldNotBeReadOneLine: (oneLine) => `De klus kon niet gelezen worden: ${oneLine}`,
  theJobsOnThisDeviceWereWritten:
    'De klussen op dit apparaat zijn door een nieuwere Lugwise geschreven. Laad de pagina opnieuw om die te krijgen; bewaar je werk tot dan als bestand.',
  anotherTabOfLugwiseHoldsThe:
    'Een ander tabblad van Lugwise houdt de klussen vast. Sluit de andere tabbladen en probeer opnieuw; bewaar je werk tot dan als bestand.',
  thereIsNoRoomLeftOnThis:
    'Er is geen ruimte meer op dit apparaat. Er gaat niets verloren zolang deze pagina open blijft: bewaar de klus als bestand, maak ruimte en probeer opnieuw.',
  thisBrowserStoresNothingFor:
    'Deze browser bewaart niets voor Lugwise, zoals in een privévenster. Je werk blijft tot deze pagina sluit: bewaar het als bestand.',
  theStoredJobIsDamagedSave:
    'De bewaarde klus is beschadigd. Bewaar hem als bestand, zodat er niets van verloren gaat.',
  whatThisDeviceStoredIsDamaged:
    'Wat dit apparaat voor Lugwise bewaarde is beschadigd. Bewaar je werk als bestand: wat nog te lezen is staat erin.',
  itLacks: (stores) => `het mist ${stores}`,
  thereIsNoRoomForAnotherPhoto:
    'Er is geen ruimte voor nog een foto: een klus bewaart er 12, en een telefoon 30 MB in totaal. Verwijder er eerst een.',
  whatItShowsInWords: 'wat erop staat, in woorden',
  aNumberOfPixels: 'een aantal pixels',
  aNumberOfBytes: 'een aantal bytes',
  theNumberOfBytesInThePicture: 'het aantal bytes in het plaatje',
  expectedAJpegPicture: 'verwacht was een JPEG-plaatje',
  aPictureInBase64: 'een plaatje in base64',
  expectedAPictureInBase64: 'verwacht was een plaatje in base64',
  thisReadsVersion: (version, got) =>
    `versie: deze Lugwise leest versie ${version} van een notitieboekbestand, dit is ${got}. Werk hem bij, en open het bestand dan opnieuw`,
  keyExpectedAList: (key, got) => `${key}: verwacht was een lijst, dit is ${got}`,
  twoAreCalled: (id) => `twee heten "${id}"`,
  thisIsNotADrawing: 'Dit is geen tekening die gelezen kan worden',
  withoutAName: 'Zonder naam',
  itCouldNotBeRead: (reason) => `Het kon niet gelezen worden: ${reason}`,
  fromAFile: (title) => `${title} (uit een bestand)`,
  bothAreKept: 'Het gaat niet samen met wat er al is: beide worden bewaard.',
  itsNameBecomes: (title) => `De naam wordt “${title}”.`,
  itsWiringBecomes: 'De bedrading of de waarden worden die van het bestand.',
  itIsClosedThen: 'Daarna is het dicht.',
  itIsOpenThen: 'Daarna is het open.',
  itIsOnGuitarThen: (guitar) => `Daarna hoort het bij “${guitar}”.`,
  readingsAreAdded: (count: number) =>
    count === 1 ? 'Er komt 1 meting bij.' : `Er komen ${count} metingen bij.`,
  repairsAreAdded: (count: number) =>
    count === 1 ? 'Er komt 1 reparatie bij.' : `Er komen ${count} reparaties bij.`,
  checksAreAdded: (count: number) =>
    count === 1 ? 'Er komt 1 eindcontrole bij.' : `Er komen ${count} eindcontroles bij.`,
  itsJobIsNowhere: 'De klus is niet hier en niet in het bestand.',
  photosAreFull: "Er zijn al zoveel foto's als bewaard worden.",
  thisJobIsNotOnThisDevice:
    'Deze klus is niet meer op dit apparaat. Misschien is hij in een ander tabblad verwijderd.',
  theJobCouldNotBeStoredSave:
    'De klus kon niet bewaard worden. Bewaar hem als bestand en probeer opnieuw.',
  codeDetail: (code, detail) => `${code} (${detail})`,
  expectedLugwisePickupOrLugwise: 'verwacht was "lugwise-pickup" of "lugwise-together"',
  thereIsNoPickupCalledPickup: (pickup) => `er is geen element dat "${pickup}" heet`,
  ownerHasOneCoilWhichIsA: (owner) => `${owner} heeft één spoel, en dat is "a"`,
  expectedTapOrPole: 'verwacht was "tap" of "pole"',
  expectedKindAsAskedGotKind2: (kind, kind2) =>
    `verwacht was "${kind}" zoals gevraagd, dit is "${kind2}"`,
  twoPlaceAreCalledId: (place, id) => `twee ${place} heten "${id}"`,
  thisIsNotAJobExpectedAn: (shown) => `Dit is geen klus: verwacht was een object, dit is ${shown}`,
  expectedFormatGotShown: (format, shown) => `verwacht was "${format}", dit is ${shown}`,
  expectedAWholeNumberFrom1: (shown) => `verwacht was een heel getal vanaf 1, dit is ${shown}`,
  theJobWasWrittenByANewer: (from, present) =>
    `de klus is door een nieuwere Lugwise geschreven (versie ${from}); deze leest tot versie ${present}. Werk hem bij, en open de klus dan opnieuw`,
  thereIsNoStepFromVersionVersion: (version) =>
    `er is geen stap van versie ${version} naar de volgende`,
  twoReadingsAreCalledReading: (reading) => `twee metingen heten "${reading}"`,
  expectedAtMostCountTheNumber: (count, round) =>
    `verwacht was hoogstens ${count}, het aantal reparaties, dit is ${round}`,
  expectedOneTimeForEachOfThe: (count, count2) =>
    `verwacht was één tijd voor elk van de ${count} geweigerde, dit zijn er ${count2}`,
  thereIsNoPartCalledId: (id) => `er is geen onderdeel dat "${id}" heet`,
  idIsAGotExpectedAKind: (id, got, kind) => `"${id}" is een ${got}; verwacht was een ${kind}`,
  placeSentence: (place, sentence) => `${place}: ${sentence}`,
  expectedExpectedGotShown: (expected, shown) => `verwacht was ${expected}, dit is ${shown}`,
  aList: 'een lijst',
  anObject: 'een object',
  expectedWhatOfAtMostLongest: (what, longest, count) =>
    `verwacht was ${what} van hoogstens ${longest} tekens, dit zijn er ${count}`,
  orStringify: (stringify) => ` of ${stringify}`,
  whatFromLeastToMostOthers: (what, least, most, others) =>
    `${what} van ${least} tot ${most}${others}`,
  aWholeNumber: 'een heel getal',
  expectedAListOfLeastToMost: (least, most, count) =>
    `verwacht was een lijst van ${least} tot ${most}, dit is er een van ${count}`,
  shownIsNotAKeyThatIs: (shown) => `${shown} is geen sleutel die hier bekend is`,
  isMissing: 'ontbreekt',
  expectedAtMostMostKeysGot: (most, count) =>
    `verwacht waren hoogstens ${most} sleutels, dit zijn er ${count}`,
  placeTheKeyShown: (place, shown) => `${place}, de sleutel ${shown}`,
  rawSetAside: (raw) => `${raw} (apart gezet)`,
  degreesCelsius: 'graden Celsius',
  nothing: 'niets',
  or: ' of ',
  aNameOfLettersDigitsAndThat: 'een naam van letters, cijfers, - en _ die met een letter begint',
  aLugNameOfLettersAndDigits: 'een lipnaam van letters en cijfers',
  aLugAsInVolume3: 'een lip zoals "volume.3"',
  aJointAsInHotFrom: 'een soldering zoals "hot@from"',
  aTitleInWords: 'een titel in woorden',
  theNameOfAPosition: 'de naam van een stand',
  aShare: 'een deel',
  aNumberOfDecibels: 'een aantal decibel',
  aNumberOfOhms: 'een aantal ohm',
  aNumberOfFarads: 'een aantal farad',
  aNumberOfHenries: 'een aantal henry',
  aColourInWords: 'een kleur in woorden',
  aKnobFigure: 'een knopstand',
  anIdentifierOfLettersDigits: 'een kenmerk van letters, cijfers, - _ en ~',
  aTimeAsIn20260301T18: 'een tijd zoals "2026-03-01T18:30:00Z"',
  aTimeOr: 'een tijd of ""',
  aLugAsInVolume3Or: 'een lip zoals "volume.3" of een soldering zoals "hot@from"',
  aJointALeadOrAPlace: 'een soldering, een draad of een plek in een onderdeel',
  aNumberOfRepairs: 'een aantal reparaties',
  aNumber: 'een getal',
  whatWasReadInWords: 'wat gemeten is, in woorden',
  aMarkInWords: 'een merk in woorden',
};
