import { area } from '../area.ts';

const faults = {
  lugTouchesLug2: (lug: string, lug2: string) => `${lug} touches ${lug2}`,
  clearWhatJoinsLugAndLug2: (lug: string, lug2: string) => `Clear what joins ${lug} and ${lug2}`,
  lookForAStrandABlobOr: 'Look for a strand, a blob, or a lug bent over.',
  cutOrWickItAwayCleanOff: 'Cut or wick it away; clean off old flux.',
  bendTheLugsApartAndSleeve: 'Bend the lugs apart and sleeve bare wire.',
  noBeepBetweenTheTwoThatThe: 'No beep between the two that the wiring does not ask for.',
  landedElsewhere: (lead: string, wrong: string, right: string) =>
    `${lead} does not sit on ${right} but on ${wrong}, or on what is wired to it`,
  findWhereItSits: (lead: string) => `Follow ${lead} to its end and see which lug it sits on.`,
  crossedLeads: (lug: string, lug2: string) =>
    `a lead that belongs on ${lug} and one that belongs on ${lug2} sit in each other’s place`,
  exchangeTwoLeads: (lug: string, lug2: string) =>
    `Exchange two leads, one on ${lug} and one on ${lug2}`,
  findCrossedEnd: (lead: string, right: string, wrong: string) =>
    `Find ${lead}: what belongs on ${right} sits on ${wrong}, or on what is wired to it. Mark it.`,
  strayPath: (lug: string, lug2: string) =>
    `something that is not on the drawing joins ${lug}, or what is wired to it, with ${lug2}`,
  strayFind: (lug: string, lug2: string) => `Find what joins ${lug} and ${lug2} that nobody drew`,
  strayLook: (lug: string, lug2: string) =>
    `Follow everything wired to ${lug} and to ${lug2}: look for a part of an earlier job, a hidden link, old flux, conductive paint or damp.`,
  strayDraw:
    'If a part sits there on purpose, draw it into the wiring: from then on Lugwise reckons with it.',
  strayClear: 'If not, take it out; clean off old flux and scrape paint away from the lugs.',
  strayProof: (lug: string, lug2: string) =>
    `Between ${lug} and ${lug2} the meter shows what the wiring foretells.`,
  theHotCoreOfThePickupS: (pickup: string) =>
    `the hot core of the ${pickup}'s lead touches its shield`,
  partTheCoreAndTheShieldOf: (pickup: string) =>
    `Part the core and the shield of the ${pickup}'s lead`,
  lookAtTheStrippedEndFirst: 'Look at the stripped end first: trim stray strands of the shield.',
  ifTheShortIsInsideCutThe: 'If the short is inside, cut the lead back past it or replace it.',
  thePickupReadsItsOwnOhmsAgain: (pickup: string) =>
    `The ${pickup} reads its own ohms again with its lead lifted.`,
  replaceThePart: (part: string) => `Replace the ${part}`,
  liftOneLegAndReadItAlone: 'Lift one leg and read it alone.',
  replaceItWithOneOfTheIntended: 'Replace it with one of the intended value; either way round.',
  openToTheOhmRangeOnceIt:
    'On the ohm range it reads open once it has charged; its capacitance is as marked.',
  withOneLegLiftedItReadsAsMarked: (part: string) =>
    `With one leg lifted the ${part} reads as marked.`,
  thePartIsShorted: (part: string) => `the ${part} is shorted`,
  thePartLeaks: (part: string) => `the ${part} leaks`,
  thePartIsOpenInside: (part: string) => `the ${part} is open inside`,
  thePartHasAnotherValue: (part: string) => `the ${part} has another value`,
  mendOrReplaceTheCoilCoil: (coil: string) => `Mend or replace the coil: ${coil}`,
  firstReadTheCoilAlone: (kilohms: string) =>
    `First lift one of its leads and read the coil alone. At about ${kilohms} kΩ it is whole, and the fault lies elsewhere: go back and enter it as your own reading.`,
  takeThePickupOutAndFollow:
    'Take the pickup out and follow its leads: one may be broken inside its cover.',
  reheatBrieflyTheJointsWhere:
    'Reheat, briefly, the joints where the fine wire meets the leads: the break is often there.',
  ifItStillReadsOpenOrToo: 'If it still reads open or too low, it needs a rewind or a replacement.',
  theCoilReadsAbout: (kilohms: string) =>
    `The coil reads about ${kilohms} kΩ with one of its leads lifted.`,
  theCoilIsOpenInside: (coil: string) => `the ${coil} is open inside`,
  turnsOfTheCoilAreShortedTogether: (coil: string) => `turns of the ${coil} are shorted together`,
  leadIsBrokenInsideItsCover: (lead: string) => `${lead} is broken inside its cover`,
  aLeadOfTheCoilMakesAnd: (coil: string) =>
    `a lead of the ${coil} makes and breaks inside the pickup`,
  theCoilTouchesTheMetalOfIts: (coil: string) => `the ${coil} touches the metal of its pickup`,
  theLeadsOfTheCoilAreThe: (coil: string) => `the leads of the ${coil} are the wrong way round`,
  thePickupIsWiredTheWrongWay: (pickup: string) => `the ${pickup} is wired the wrong way round`,
  exchangeTheTwoLeadsOfTheCoil: (coil: string) => `Exchange the two leads of the ${coil}`,
  markBothLeadsAndExchangeThem: 'Mark both leads and exchange them.',
  ifItsMetalCoverOrPlateIs:
    'If its metal cover or plate is tied to one of them, give the metal a ground wire of its own first, or it becomes hot.',
  nothingElseChanges: 'Nothing else changes.',
  itsTapSwingsTheSameWayAs:
    "Its tap swings the same way as its neighbour's, and the positions that combine it sound full.",
  theMagnetOfTheCoilIsThe: (coil: string) => `the magnet of the ${coil} is the other way up`,
  turnTheMagnetOfTheCoil: (coil: string) => `Turn the magnet of the ${coil}`,
  checkItsPoleWithACompassAgainst: 'Check its pole with a compass against its neighbour.',
  turnTheMagnetOverOrExchange:
    'Turn the magnet over, or exchange the leads if hum does not matter to you.',
  theCompassShowsTheOtherPole: 'The compass shows the other pole and the tap swings the other way.',
  thePickupIsWiredTheWrongWay2: (pickup: string) =>
    `the ${pickup} is wired the wrong way round as a whole`,
  exchangeTheTwoOuterLeadsOf: (pickup: string) => `Exchange the two outer leads of the ${pickup}`,
  markTheHotAndTheColdLead: 'Mark the hot and the cold lead and exchange them.',
  leaveTheBareOrShieldOnGround: 'Leave the bare or shield on ground.',
  itsTapSwingsTheSameWayAs2:
    "Its tap swings the same way as the other pickup's, and both together sound full.",
  whatBelongsOnLugAndWhatBelongs: (lug: string, lug2: string) =>
    `what belongs on ${lug} and what belongs on ${lug2} are exchanged`,
  exchangeTheLeadsOnLugAndLug2: (lug: string, lug2: string) =>
    `Exchange the leads on ${lug} and ${lug2}`,
  markBothLeads: 'Mark both leads.',
  unsolderThemAndPutEachOnThe: 'Unsolder them and put each on the other lug.',
  theReadingsThatWereOffAre: 'The readings that were off are as expected.',
  cleanAndTightenTitle: (title: string) => `Clean and tighten ${title}`,
  undoTheNutOrScrew: 'Undo the nut or screw.',
  scrapeBothFacesBright: 'Scrape both faces bright.',
  tightenItAgain: 'Tighten it again.',
  ifItWillNotStayGoodRun: 'If it will not stay good, run a wire beside it.',
  aBeepAcrossTheContactWith: 'A beep across the contact, with the parts moved about.',
  bothOfItsEnds: 'both of its ends',
  itsEndOnLug: (lug: string) => `its end on ${lug}`,
  remakeTitle: (title: string) => `Remake ${title}`,
  heatEndsWithFreshSolderUntil: (ends: string) =>
    `Heat ${ends} with fresh solder until it flows bright round lug and wire.`,
  holdItStillUntilItHasSet: 'Hold it still until it has set, then tug it gently.',
  ifTheLegHasSnappedReplace: 'If the leg has snapped, replace the part.',
  ifItStillReadsOpenTheWire:
    'If it still reads open, the wire is broken inside: replace it, or cut it back and strip it anew.',
  below1FromLugToLug2: (lug: string, lug2: string) =>
    `Below 1 Ω from ${lug} to ${lug2}, steady while you wiggle the wire.`,
  whereIsOpen: (where: string) => `${where} is open`,
  whereIsColdItConductsBadly: (where: string) => `${where} is cold: it conducts badly`,
  whereMakesAndBreaksAsItIs: (where: string) => `${where} makes and breaks as it is moved`,
  leadIsBroken: (lead: string) => `${lead} is broken`,
  shortLeadSitsOnLugInstead: (shortLead: string, lug: string, lug2: string) =>
    `${shortLead} sits on ${lug} instead of ${lug2}`,
  putShortLeadBackOnLug: (shortLead: string, lug: string) => `Put ${shortLead} back on ${lug}`,
  findWhichLugOfThePartIt: (part: string) =>
    `Find which lug of the ${part} it sits on; count from the side shown.`,
  solderItToLug: (lug: string) => `Solder it to ${lug}.`,
  below1FromLugToLug22: (lug: string, lug2: string) => `Below 1 Ω from ${lug} to ${lug2}.`,
  replaceThePartPot: (part: string) => `Replace the ${part} pot`,
  sprayContactCleanerIntoIt:
    'Spray contact cleaner into it and turn it end to end twenty times first.',
  ifItReadsTheSameReplaceIt: 'If it reads the same, replace it. Move its leads over lug by lug.',
  acrossItsOuterLugsItReads:
    'Across its outer lugs it reads its value; from the middle lug the ohms change smoothly as you turn.',
  theTrackOfThePartIsBroken: (part: string) => `the track of the ${part} is broken near lug 1`,
  theTrackOfThePartIsBroken2: (part: string) => `the track of the ${part} is broken near lug 3`,
  theWiperOfThePartMakesNo: (part: string) => `the wiper of the ${part} makes no good contact`,
  theTrackOfThePartIsWorn: (part: string) => `the track of the ${part} is worn`,
  thePartIsAPotOfAnother: (part: string) => `the ${part} is a pot of another value`,
  cleanOrReplaceThePart: (part: string) => `Clean or replace the ${part}`,
  sprayContactCleanerOnTheContacts:
    'Spray contact cleaner on the contacts and work the lever twenty times.',
  bendATiredContactBackOrReplace: 'Bend a tired contact back, or replace the switch.',
  eachPositionBeepsBetweenJust:
    'Each position beeps between just the lugs it should join, steady while you rock the lever.',
  theContactContactOfThePart: (contact: string, part: string) =>
    `the contact ${contact} of the ${part} does not close`,
  thePartStaysInItsPosition: (part: string, position: string) =>
    `the ${part} stays in its position "${position}" whatever the lever says`,
  thePartIsMountedTheWrongWay: (part: string) => `the ${part} is mounted the wrong way round`,
  turnThePartHalfRound: (part: string) => `Turn the ${part} round by half a turn`,
  undoItsScrewsOrNutTurnIt: 'Undo its screws or nut, turn it by half a turn, and fit it again.',
  eachPositionGivesThePickup: 'Each position gives the pickup it should.',
  oneOrOfTheName: (one: string, name: string) => `${one}, or of the ${name}`,
  eitherOfTheTwoWillDoBut:
    'Either of the two will do, but not both: what counts is how they stand to each other. Take the one that is easier to reach.',
};
export const faultWords = area('faults', faults);
