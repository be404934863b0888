import { area } from '../area.ts';

const proof = {
  workingItOut: 'Working it out …',
  lookingForTheShortestList: 'Looking for the shortest list …',
  passes: 'Passes:',
  probesOffAndTheAmplifiers: 'Probes off, and the amplifier’s volume low.',
  later: 'Not now',
  atDoesNotFitLookAtThe: (at: string) =>
    `${at} does not fit. Look at the controls and the probes, and do it once more.`,
  somethingIsNotAsItShouldBe: 'Something is not as it should be',
  theList: 'The list',
  findIt: 'Find it',
  youSaw: 'You saw',
  passes2: 'Passes',
  readItOnceMore: 'Read it once more',
  meterOnOhms: 'Meter on ohms',
  wiresMovedMeterOnOhms: 'Wires moved, meter on ohms',
  steelOnTheCoilsMeterOnDC: 'Steel on the coils, meter on DC millivolts',
  pluggedInLowVolume: 'Plugged in, low volume',
  allOfItPassed: 'All of it passed',
  aboutMinutesToGo: (minutes: string) => `About ${minutes} to go`,
  whatIsOff: 'What is off',
  goOn: 'Go on',
  begin: 'Begin',
  whatThisCannotSee: 'What this cannot see',
  keepTheRecord: 'Keep the record',
  readingsReadingsAndEveryOne: (readings: number) =>
    `${readings} readings, and every one is as a healthy guitar would read. What they rule out, and what they cannot see, is on the page that is kept.`,
  howWarmIsTheRoomInC: 'How warm is the room, in °C? Leave it empty if you do not know.',
  typedIsNoTemperatureOfARoom: (typed: string, COLDEST: number, HOTTEST: number) =>
    `“${typed}” is no temperature of a room: a number from ${COLDEST} to ${HOTTEST}.`,
  aCoilReads4MoreInA: 'A coil reads 4\u00a0% more in a room that is 10\u00a0°C warmer.',
  showsMostEveryLugCanBeReached: 'shows most: every lug can be reached, and it can be played',
  beforeItGoesIntoTheGuitar: 'before it goes into the guitar: nothing is strung yet',
  quickestAndSeesLeastTheJack: 'quickest, and sees least: the jack is all there is',
  howFarIsItPutTogether: 'How far is it put together?',
  theFewestReadingsThatWould:
    'The fewest readings that would show every fault a meter, a tap and an ear can show. In the end you get a page that says what is ruled out, and what is not.',
  home: 'Home',
  list: 'List',
  undo: 'Undo',
  checkItAgain: 'Check it again',
  beginOne: 'Begin one',
  noClosingCheckYet: 'No closing check yet',
  noCheckOfThisGuitarWasBrought: 'No check of this guitar was brought to its end.',
  noReasonWasGiven: 'No reason was given.',
  closingCheck: 'Closing check',
  print: 'Print',
  theReadingBefore: (answer: string) => `the reading before: ${answer}`,
  theOneBefore: 'The one before',
  theOneAfter: 'The one after',
  thePageCouldNotBeMadeSentence: (sentence: string) => `The page could not be made: ${sentence}`,
  tryAgain: 'Try again',
  jobClosingCheck: (job: string) => `${job}, closing check`,
  sinceTheCheckBefore: 'Since the check before',
  whatWasRead: 'What was read',
  notRead: 'not read',
  ruledOut: 'Ruled out',
  whatTheseReadingsCannotSee: 'What these readings cannot see',
  noFaultThatIsKnown:
    'No fault that Lugwise knows of. Of what it does not know, no list can promise anything.',
  valuesLearned: 'Values learned',
  repairs: 'Repairs',
  closingCheckJobWhen: (job: string, when: string) => `Closing check: ${job}, ${when}`,
  whatWasReadAndWhatPasses: 'What was read, and what passes',
  roomTemperatureNotTold: 'room temperature not told',
  roomAtCelsiusC: (celsius: string) => `room at ${celsius} °C`,
  stageMeterGoodToWhatUpTo: (
    stage: string,
    what: string,
    limit: string,
    leads: string,
    room: string,
  ) =>
    `${stage}. Meter good to ±${what} %, up to ${limit}, ${leads} with the probes together; ${room}.`,
  countPointsReadingsReadings: (count: number, readings: number, atLeast: number) =>
    `${count} points, ${readings} readings, all as a healthy guitar reads. No list that shows as much needs fewer than ${atLeast}.`,
  countOfCount2PointsAsAHealthy: (count: number, count2: number) =>
    `${count} of ${count2} points as a healthy guitar reads. The parts or the meter were set right since, so it is judged anew.`,
  titleEstimateMaxPrintedNominal: (title: string, estimate: string, max: number, nominal: string) =>
    `${title}: ${estimate} ±${max} %, printed ${nominal}`,
  toldAndMoreMore: (told: string, more: number) => `${told}; and ${more} more`,
  wentUp: (place: string, percent: number, now: string, before: string) =>
    `${place} is ${percent} % up, ${now} after ${before}`,
  wentDown: (place: string, percent: number, now: string, before: string) =>
    `${place} is ${percent} % down, ${now} after ${before}`,
  changed: (change: string) => `${change}.`,
  changedWarmer: (change: string, degrees: number) => `${change}: warmer by ${degrees} degrees.`,
  changedColder: (change: string, degrees: number) => `${change}: colder by ${degrees} degrees.`,
  offMoreThanOnce: (count: number) =>
    `${count === 1 ? 'This reading was' : 'These readings were'} off more than once. All that you have read goes along into the hunt; after the repair only what it may have changed is asked again.`,
  noListNeedsFewer: (readings: number, atLeast: number) =>
    `${readings} readings; no list that shows as much needs fewer than ${atLeast}.`,
  stopWheneverYouLike: 'Stop whenever you like: it goes on from here.',
  times: (taken: number, times: number) => `· ${taken} of ${times}`,
  timesTaken: (taken: number, times: number) => ` · ${taken} of ${times} times`,
  inPlaces: (count: number) => `, in ${count === 1 ? '1 place' : `${count} places`}`,
  theCheckOf: (date: string) => `The check of ${date}`,
  doneOf: (done: number, count: number) => `${done} of ${count}`,
  done: 'done',
  stopHere: 'Stop here',
  firstTheseShow: (time: string, readings: number, tenths: number) =>
    `First, about ${time}: these ${readings} readings show ${tenths} in 10 of what goes wrong.`,
  thenTheRest: (time: string) =>
    `Then the rest, about ${time}: what seldom goes wrong, and is hard to find later.`,
  soFarAllIsWell: 'So far all is well',
  stopAndKeepIt: 'Stop and keep it',
  whatYouHaveReadShows: (tenths: number) =>
    `What you have read shows ${tenths} in 10 of what goes wrong, and all of it is as it should be.`,
  theRestTakes: (time: string) =>
    `The rest takes about ${time}. It looks for what seldom goes wrong: a joint that gives way when a wire is moved, a coil that is turned round, a ground that hangs on one wire. If you stop here, the record says what was not looked for.`,
  aShortCheck: (count: number, all: number) =>
    `A short check: ${count} of ${all} points, all as a healthy guitar reads. The rest was not read.`,
  doItTimes: (times: number) =>
    times === 2 ? '· do it twice' : times === 3 ? '· do it three times' : `· do it ${times} times`,
  jumpsAbout: 'Jumps about',
  cantReachIt: 'Can’t reach it',
  cantDoIt: 'Can’t do it',
  /** What a reading gave, and then again. */
  inTurn: (answers: readonly string[]) => answers.join(', then '),
};
export const proofWords = area('proof', proof);
