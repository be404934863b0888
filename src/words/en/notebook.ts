import { area } from '../area.ts';

const notebook = {
  theFileIsTooLargeCountCharacters: (count: number, LONGESTFILE: number) =>
    `The file is too large: ${count} characters, where a job has at most ${LONGESTFILE}.`,
  theFileIsEmpty: 'The file is empty.',
  theFileIsNotJSONLineLine: (line: number, character: number) =>
    `The file is not JSON: line ${line}, character ${character}.`,
  theJobCouldNotBeReadOneLine: (oneLine: string) => `The job could not be read: ${oneLine}`,
  theJobsOnThisDeviceWereWritten:
    'The jobs on this device were written by a newer Lugwise. Reload the page to get it; until then, save your work as a file.',
  anotherTabOfLugwiseHoldsThe:
    'Another tab of Lugwise holds the jobs. Close the other tabs and try again; until then, save your work as a file.',
  thereIsNoRoomLeftOnThis:
    'There is no room left on this device. Nothing is lost while this page stays open: save the job as a file, free some space and try again.',
  thisBrowserStoresNothingFor:
    'This browser stores nothing for Lugwise, as in a private window. Your work lasts until this page is closed: save it as a file.',
  theStoredJobIsDamagedSave:
    'The stored job is damaged. Save it as a file, so that nothing in it is lost.',
  whatThisDeviceStoredIsDamaged:
    'What this device stored for Lugwise is damaged. Save your work as a file: what can still be read is in it.',
  itLacks: (stores: string) => `it lacks ${stores}`,
  thereIsNoRoomForAnotherPhoto:
    'There is no room for another photo: a job keeps 12, and a phone 30 MB in all. Remove one first.',
  whatItShowsInWords: 'what it shows, in words',
  aNumberOfPixels: 'a number of pixels',
  aNumberOfBytes: 'a number of bytes',
  theNumberOfBytesInThePicture: 'the number of bytes in the picture',
  expectedAJpegPicture: 'expected a JPEG picture',
  aPictureInBase64: 'a picture in base64',
  expectedAPictureInBase64: 'expected a picture in base64',
  thisReadsVersion: (version: number, got: string) =>
    `version: this Lugwise reads version ${version} of a notebook file, got ${got}. Update it, then open the file again`,
  keyExpectedAList: (key: string, got: string) => `${key}: expected a list, got ${got}`,
  twoAreCalled: (id: string) => `two are called "${id}"`,
  thisIsNotADrawing: 'This is not a drawing that can be read',
  withoutAName: 'Without a name',
  itCouldNotBeRead: (reason: string) => `It could not be read: ${reason}`,
  fromAFile: (title: string) => `${title} (from a file)`,
  bothAreKept: 'It does not go together with the one that is here: both are kept.',
  itsNameBecomes: (title: string) => `Its name becomes “${title}”.`,
  itsWiringBecomes: 'Its wiring or its values become those of the file.',
  itIsClosedThen: 'It is closed then.',
  itIsOpenThen: 'It is open then.',
  itIsOnGuitarThen: (guitar: string) => `It is on “${guitar}” then.`,
  readingsAreAdded: (count: number) =>
    count === 1 ? '1 reading is added.' : `${count} readings are added.`,
  repairsAreAdded: (count: number) =>
    count === 1 ? '1 repair is added.' : `${count} repairs are added.`,
  checksAreAdded: (count: number) =>
    count === 1 ? '1 closing check is added.' : `${count} closing checks are added.`,
  itsJobIsNowhere: 'Its job is neither here nor in the file.',
  photosAreFull: 'There are as many photos as are kept.',
  thisJobIsNotOnThisDevice:
    'This job is not on this device any more. It may have been deleted in another tab.',
  theJobCouldNotBeStoredSave: 'The job could not be stored. Save it as a file and try again.',
  codeDetail: (code: string, detail: string) => `${code} (${detail})`,
  expectedLugwisePickupOrLugwise: 'expected "lugwise-pickup" or "lugwise-together"',
  thereIsNoPickupCalledPickup: (pickup: string) => `there is no pickup called "${pickup}"`,
  ownerHasOneCoilWhichIsA: (owner: string) => `${owner} has one coil, which is "a"`,
  expectedTapOrPole: 'expected "tap" or "pole"',
  expectedKindAsAskedGotKind2: (kind: string, kind2: string) =>
    `expected "${kind}" as asked, got "${kind2}"`,
  twoPlaceAreCalledId: (place: string, id: string) => `two ${place} are called "${id}"`,
  thisIsNotAJobExpectedAn: (shown: string) => `This is not a job: expected an object, got ${shown}`,
  expectedFormatGotShown: (format: string, shown: string) => `expected "${format}", got ${shown}`,
  expectedAWholeNumberFrom1: (shown: string) => `expected a whole number from 1, got ${shown}`,
  theJobWasWrittenByANewer: (from: number, present: number) =>
    `the job was written by a newer Lugwise (version ${from}); this one reads up to version ${present}. Update it, then open the job again`,
  thereIsNoStepFromVersionVersion: (version: number) =>
    `there is no step from version ${version} to the next`,
  twoReadingsAreCalledReading: (reading: string) => `two readings are called "${reading}"`,
  expectedAtMostCountTheNumber: (count: number, round: number) =>
    `expected at most ${count}, the number of repairs, got ${round}`,
  expectedOneTimeForEachOfThe: (count: number, count2: number) =>
    `expected one time for each of the ${count} refused, got ${count2}`,
  thereIsNoPartCalledId: (id: string) => `there is no part called "${id}"`,
  idIsAGotExpectedAKind: (id: string, got: string, kind: string) =>
    `"${id}" is a ${got}; expected a ${kind}`,
  placeSentence: (place: string, sentence: string) => `${place}: ${sentence}`,
  expectedExpectedGotShown: (expected: string, shown: string) =>
    `expected ${expected}, got ${shown}`,
  aList: 'a list',
  anObject: 'an object',
  expectedWhatOfAtMostLongest: (what: string, longest: number, count: number) =>
    `expected ${what} of at most ${longest} characters, got one of ${count}`,
  orStringify: (stringify: string) => ` or ${stringify}`,
  whatFromLeastToMostOthers: (what: string, least: string, most: string, others: string) =>
    `${what} from ${least} to ${most}${others}`,
  aWholeNumber: 'a whole number',
  expectedAListOfLeastToMost: (least: number, most: number, count: number) =>
    `expected a list of ${least} to ${most}, got one of ${count}`,
  shownIsNotAKeyThatIs: (shown: string) => `${shown} is not a key that is known here`,
  isMissing: 'is missing',
  expectedAtMostMostKeysGot: (most: number, count: number) =>
    `expected at most ${most} keys, got ${count}`,
  placeTheKeyShown: (place: string, shown: string) => `${place}, the key ${shown}`,
  rawSetAside: (raw: string) => `${raw} (set aside)`,
  degreesCelsius: 'degrees Celsius',
  nothing: 'nothing',
  or: ' or ',
  aNameOfLettersDigitsAndThat: 'a name of letters, digits, - and _ that starts with a letter',
  aLugNameOfLettersAndDigits: 'a lug name of letters and digits',
  aLugAsInVolume3: 'a lug as in "volume.3"',
  aJointAsInHotFrom: 'a joint as in "hot@from"',
  aTitleInWords: 'a title in words',
  theNameOfAPosition: 'the name of a position',
  aShare: 'a share',
  aNumberOfDecibels: 'a number of decibels',
  aNumberOfOhms: 'a number of ohms',
  aNumberOfFarads: 'a number of farads',
  aNumberOfHenries: 'a number of henries',
  aColourInWords: 'a colour in words',
  aKnobFigure: 'a knob figure',
  anIdentifierOfLettersDigits: 'an identifier of letters, digits, - _ and ~',
  aTimeAsIn20260301T18: 'a time as in "2026-03-01T18:30:00Z"',
  aTimeOr: 'a time or ""',
  aLugAsInVolume3Or: 'a lug as in "volume.3" or a joint as in "hot@from"',
  aJointALeadOrAPlace: 'a joint, a lead or a place in a part',
  aNumberOfRepairs: 'a number of repairs',
  aNumber: 'a number',
  whatWasReadInWords: 'what was read, in words',
  aMarkInWords: 'a mark in words',
};
export const notebookWords = area('notebook', notebook);
