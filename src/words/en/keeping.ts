import { area } from '../area.ts';

const keeping = {
  home: 'Home',
  back: 'Back',
  noReason: 'No reason was given.',
  savedAsAFile: 'Saved as a file.',
  saveAsAFile: 'Save as a file',
  saveAllAsAFile: 'Save all as a file',
  tryAgain: 'Try again',
  storage: 'Storage',
  keepIt: 'Keep it',
  withoutAName: 'Without a name',

  found: 'Found',
  guitars: 'Guitars',
  noJobIsOpen: 'No job is open.',
  aGuitar: 'A guitar',
  jobsNeverChecked: (count: number) =>
    count === 1 ? '1 job · no closing check yet' : `${count} jobs · no closing check yet`,
  jobsChecked: (count: number, day: string) =>
    count === 1 ? `1 job · checked ${day}` : `${count} jobs · checked ${day}`,
  openingTheGuitar: 'Opening the guitar …',
  guitarNotHere: 'This guitar is not here',
  noJobOnIt: 'No job on it is on this phone.',
  newJobOnIt: 'New job on it',
  theWiring: 'The wiring',
  readingCard: 'Reading card',
  jobs: 'Jobs',
  saveItsJobs: 'Save its jobs as a file',
  neverChecked: 'No closing check was brought to its end yet.',
  lastCheck: 'Last closing check:',
  measuredParts: 'Measured parts',
  part: 'Part',
  asPrinted: 'As printed',
  measured: 'Measured',
  open: 'open',

  newJobOn: (guitar: string) => `New job on ${guitar}`,
  guitarOnDay: (guitar: string, day: string) => `${guitar}, ${day}`,
  whatComesAlong:
    'Its wiring, the values measured so far and the last closing check come along. The readings of earlier jobs stay with those.',
  closingCheck: 'Closing check',
  findAFault: 'Find a fault',
  nameOfJob: 'Name of the job',
  nameOfGuitar: 'Name of the guitar',
  isOpenAlready: 'It is open already',
  anotherNameJob: 'Another name for it',
  anotherNameGuitar: 'Another name for the guitar',
  rename: 'Rename',
  renamed: 'Renamed.',
  copyThisJob: 'Copy this job',
  removeIt: 'Remove it',
  canBePutBack: (days: number) => `It can be put back for ${days} days.`,
  remove: 'Remove',
  removeTitle: (title: string) => `Remove ${title}`,
  removeForGood: (title: string) => `Remove ${title} for good`,
  noRoomForBin:
    'The phone has no room left, not even to keep it for putting back. Save it as a file first.',
  couldNotRemove: 'It could not be removed.',
  removedName: (name: string) => `Removed: ${name}.`,
  putBack: 'Put back',
  putBackName: (name: string) => `Put back ${name}`,
  photoOf: (words: string) => `Photo: ${words}`,
  aPhoto: 'A photo',

  photos: 'Photos',
  photoKept: 'Photo kept.',
  makingSmall: 'Making it small …',
  photoCouldNotBeKept: 'The photo could not be kept.',
  noPicture: 'This file is no picture that the phone can read.',
  cannotMakeSmaller: 'This phone cannot make the picture smaller.',
  addAPhoto: 'Add a photo',
  photo: 'Photo',
  photoLine: (words: string, day: string) => `${words}, ${day}`,
  removePhoto: (words: string) => `Remove the photo: ${words}`,
  photoLimit: (count: number, most: number, used: string, each: string) =>
    `${count} of ${most}, ${used}. Each is made smaller, to at most ${each}, and stays on this phone. Where it was taken is not kept.`,

  bringInAJob: 'Bring in a job',
  whatAFileHolds:
    'A job, a pickup or a whole notebook. You see what would change before anything does.',
  noJobToBringIn: (sentence: string) => `This is no job that can be brought in. ${sentence}`,
  fileCouldNotBeRead: (name: string) => `The file ${name} could not be read.`,
  fileIsTooLarge: (name: string, size: string, most: string) =>
    `The file ${name} is too large: ${size}, where a notebook has at most ${most}.`,
  pictureIsTooLarge: (size: string, most: string) =>
    `This picture is too large to be made smaller here: ${size}, where ${most} is the most. Take it with a lower setting.`,
  pictureHasTooManyPixels: (megapixels: number, most: number) =>
    `This picture is too large to be made smaller here: ${megapixels} megapixels, where ${most} is the most. Take it with a lower setting.`,
  lookAtTheText: 'Look at the text',
  fromAFile: 'From a file',
  orPasteItsText: 'Or paste its text',
  whatItWouldChange: 'What it would change',
  bringItIn: 'Bring it in',
  isBroughtIn: 'It is brought in.',
  nothingWasChanged: (sentence: string) => `Nothing was changed. ${sentence}`,
  nothingNew: 'Nothing: all that is in it is on this phone already.',
  isNew: 'New on this phone.',
  isTheSame: 'It is here already, and the same.',
  isJoined: 'It is here already, and is joined with the file:',
  isCopied: 'It comes beside the one that is here.',
  isRefused: 'It cannot be brought in:',
  cannotBeRead: (sentence: string) => `It cannot be read: ${sentence}`,
  photosCome: (count: number) =>
    count === 1 ? '1 photo comes with it.' : `${count} photos come with it.`,
  photosStayOut: (count: number) =>
    count === 1
      ? '1 photo stays out: this phone keeps as many as it may, or its job is not here.'
      : `${count} photos stay out: this phone keeps as many as it may, or their jobs are not here.`,
  drawingsCome: (count: number) =>
    count === 1
      ? '1 drawing comes to the drawing board.'
      : `${count} drawings come to the drawing board.`,

  kilobytes: (count: number) => `${count} kB`,
  megabytes: (figure: string) => `${figure} MB`,
  gigabytes: (figure: string) => `${figure} GB`,

  yourNotebook: 'Your notebook',
  nameOfFile: 'Lugwise notebook',
  saveIt: 'Save it',
  oneFileWithAll: 'One file with all of it, to keep elsewhere or to bring in on another phone.',
  bringInFromAFile: 'Bring in from a file',
  pickups: 'Pickups sorted or compared',
  noPhotos: (room: string) => `none; room for ${room}`,
  photosOf: (count: number, used: string, room: string) => `${count}, ${used} of ${room}`,
  looking: 'Looking …',
  browserKeeps: 'The browser has promised not to clear it by itself.',
  browserMayClear:
    'The browser may clear it when the phone runs out of room. Save a file now and then.',
  askToKeep: 'Ask the browser to keep it',
  roomTaken: (used: string, left: string) =>
    `The app and your work take ${used}; ${left} are left to them.`,
  removed: 'Removed',
  removedOn: (day: string) => `removed ${day}`,
  nothingRemoved: (days: number) =>
    `Nothing. What you remove can be put back here for ${days} days.`,
  emptyForGood: 'Empty it for good',
  reallyForGood: 'Really, for good',
  keptForDays: (days: number) => `Each is kept for ${days} days, then goes for good.`,
};
export const keepingWords = area('keeping', keeping);
