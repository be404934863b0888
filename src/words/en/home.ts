import { area } from '../area.ts';

const home = {
  noReasonWasGiven: 'No reason was given.',
  lugwise: 'Lugwise',
  findsWhatIsWrongInYourGuitars:
    'Finds what is wrong in your guitar’s wiring, with you and a multimeter.',
  somethingIsWrong: 'Something is wrong',
  silentWeakThinHummingCrackling: 'silent, weak, thin, humming, crackling',
  checkAJobBeforeClosing: 'Check a job before closing',
  proveItBeforeThePlateGoes: 'prove it before the plate goes on',
  whichLeadDoesWhat: 'Which lead does what?',
  aPickupWithLeadsOfUnknown: 'a pickup with leads of unknown use',
  doTwoPickupsFight: 'Do two pickups fight?',
  thinAndHollowWhereTheyPlay: 'thin and hollow where they play together',
  practiseOnAMadeUpGuitar: 'Practise on a made-up guitar',
  noGuitarAndNoMeterNeeded: 'no guitar and no meter needed',
  practice: 'Practice',
  bringInAJobFromAFile: 'Bring in a job from a file',
  hearingVoiceAndLight: 'Hearing, voice and light',
  gettingReadyToWorkOffline: 'Getting ready to work offline …',
  worksOfflineOnThisPhone: 'Works offline on this phone.',
  needsAConnectionHereThisPage: 'Needs a connection here: this page cannot be kept on the phone.',
  lookingForYourJobs: 'Looking for your jobs …',
  yourJobsCouldNotBeReadSentence: (sentence: string) => `Your jobs could not be read: ${sentence}`,
  onTheBench: 'On the bench',
  noGuitarYetEveryReadingYou:
    'No guitar yet. Every reading you take is kept here, on this phone only.',
  closed: 'Closed',
  yourPickupsCouldNotBeRead: (failure: string) => `Your pickups could not be read: ${failure}`,
  pickups: 'Pickups',
  aPickup: 'A pickup',
  saveAsAFile: 'Save as a file',
  thisScreenCouldNotBeShown: 'This screen could not be shown',
  home: 'Home',
  openTheAppAgain: 'Open the app again',
  itIsAFaultOfTheApp:
    'It is a fault of the app. Every reading up to here is kept; from the home screen a job can be saved as a file.',
  findAJobOrAGuitar: 'Find a job or a guitar',
  saveAllAndWhatWasRemoved: 'Save all, and what was removed',
  noJobIsOpen: 'No job is open.',
  guitars: 'Guitars',
  found: 'Found',
  noJobHasTrimInItsName: (trim: string) =>
    `No job has “${trim}” in its name, its wiring or its repairs.`,
  countJobs: (count: number) => (count === 1 ? '1 job' : `${count} jobs`),
};
export const homeWords = area('home', home);
