import type { homeWords as English } from '../en/home.ts';

export const home: ReturnType<typeof English> = {
  noReasonWasGiven: 'Er werd geen reden gegeven.',
  lugwise: 'Lugwise',
  findsWhatIsWrongInYourGuitars:
    'Vindt wat er mis is in de bedrading van je gitaar, met jou en een multimeter.',
  somethingIsWrong: 'Er is iets mis',
  silentWeakThinHummingCrackling: 'stil, zwak, dun, brommend, krakend',
  checkAJobBeforeClosing: 'Een klus nakijken voor je dichtmaakt',
  proveItBeforeThePlateGoes: 'bewijs het voor de plaat erop gaat',
  whichLeadDoesWhat: 'Welke draad doet wat?',
  aPickupWithLeadsOfUnknown: 'een element met onbekende draden',
  doTwoPickupsFight: 'Werken twee elementen elkaar tegen?',
  thinAndHollowWhereTheyPlay: 'dun en hol waar ze samen spelen',
  practiseOnAMadeUpGuitar: 'Oefenen op een verzonnen gitaar',
  noGuitarAndNoMeterNeeded: 'geen gitaar en geen meter nodig',
  practice: 'Oefenen',
  bringInAJobFromAFile: 'Een klus uit een bestand halen',
  hearingVoiceAndLight: 'Horen, stem en licht',
  gettingReadyToWorkOffline: 'Wordt klaargemaakt voor offline …',
  worksOfflineOnThisPhone: 'Werkt offline op deze telefoon.',
  needsAConnectionHereThisPage:
    'Heeft hier een verbinding nodig: deze pagina kan niet op de telefoon bewaard worden.',
  lookingForYourJobs: 'Je klussen worden gezocht …',
  yourJobsCouldNotBeReadSentence: (sentence) =>
    `Je klussen konden niet gelezen worden: ${sentence}`,
  onTheBench: 'Op de werkbank',
  noGuitarYetEveryReadingYou:
    'Nog geen gitaar. Elke meting die je doet wordt hier bewaard, alleen op deze telefoon.',
  closed: 'Gesloten',
  yourPickupsCouldNotBeRead: (failure) => `Je elementen konden niet gelezen worden: ${failure}`,
  pickups: 'Elementen',
  aPickup: 'Een element',
  saveAsAFile: 'Als bestand bewaren',
  thisScreenCouldNotBeShown: 'Dit scherm kon niet getoond worden',
  home: 'Beginscherm',
  openTheAppAgain: 'De app opnieuw openen',
  itIsAFaultOfTheApp:
    'Het is een fout van de app. Elke meting tot hier is bewaard; vanaf het beginscherm kan een klus als bestand bewaard worden.',
  findAJobOrAGuitar: 'Een klus of gitaar zoeken',
  saveAllAndWhatWasRemoved: 'Alles bewaren, en wat verwijderd is',
  noJobIsOpen: 'Er is geen klus open.',
  guitars: 'Gitaren',
  found: 'Gevonden',
  noJobHasTrimInItsName: (trim) =>
    `Geen klus heeft “${trim}” in zijn naam, zijn bedrading of zijn reparaties.`,
  countJobs: (count) => (count === 1 ? '1 klus' : `${count} klussen`),
};
