import type { proofWords as English } from '../en/proof.ts';

export const proof: ReturnType<typeof English> = {
  workingItOut: 'Wordt uitgerekend …',
  lookingForTheShortestList: 'De kortste lijst wordt gezocht …',
  passes: 'Goed bij:',
  probesOffAndTheAmplifiers: 'Meetpennen eraf, en het volume van de versterker laag.',
  later: 'Niet nu',
  atDoesNotFitLookAtThe: (at) =>
    `${at} past niet. Kijk naar de knoppen en de meetpennen, en doe het nog eens.`,
  somethingIsNotAsItShouldBe: 'Iets is niet zoals het hoort',
  theList: 'De lijst',
  findIt: 'Zoek het op',
  youSaw: 'Jij zag',
  passes2: 'Goed bij',
  readItOnceMore: 'Meet het nog eens',
  meterOnOhms: 'Meter op ohm',
  wiresMovedMeterOnOhms: 'Draden bewogen, meter op ohm',
  steelOnTheCoilsMeterOnDC: 'Staal op de spoelen, meter op DC millivolt',
  pluggedInLowVolume: 'Ingestoken, laag volume',
  allOfItPassed: 'Alles is goed',
  aboutMinutesToGo: (minutes) => `Nog ongeveer ${minutes}`,
  whatIsOff: 'Wat afwijkt',
  goOn: 'Doorgaan',
  begin: 'Beginnen',
  whatThisCannotSee: 'Wat dit niet kan zien',
  keepTheRecord: 'Het verslag bewaren',
  readingsReadingsAndEveryOne: (readings) =>
    `${readings} metingen, en elk is zoals een gezonde gitaar zou meten. Wat ze uitsluiten, en wat ze niet kunnen zien, staat op de pagina die bewaard wordt.`,
  howWarmIsTheRoomInC: 'Hoe warm is de kamer, in °C? Laat leeg als je het niet weet.',
  typedIsNoTemperatureOfARoom: (typed, COLDEST, HOTTEST) =>
    `“${typed}” is geen temperatuur van een kamer: een getal van ${COLDEST} tot ${HOTTEST}.`,
  aCoilReads4MoreInA: 'Een spoel meet 4\u00a0% meer in een kamer die 10\u00a0°C warmer is.',
  showsMostEveryLugCanBeReached:
    'ziet het meest: elke lip is te bereiken, en er kan gespeeld worden',
  beforeItGoesIntoTheGuitar: 'voor het de gitaar in gaat: er zitten nog geen snaren op',
  quickestAndSeesLeastTheJack: 'het snelst, en ziet het minst: er is alleen de jack',
  howFarIsItPutTogether: 'Hoe ver zit hij in elkaar?',
  theFewestReadingsThatWould:
    'De minste metingen die elke fout zouden laten zien die een meter, een tik en een oor kunnen laten zien. Aan het eind krijg je een pagina die zegt wat uitgesloten is, en wat niet.',
  home: 'Beginscherm',
  list: 'Lijst',
  undo: 'Terugnemen',
  checkItAgain: 'Opnieuw controleren',
  beginOne: 'Begin er een',
  noClosingCheckYet: 'Nog geen eindcontrole',
  noCheckOfThisGuitarWasBrought: 'Er is nog geen controle van deze gitaar afgemaakt.',
  noReasonWasGiven: 'Er werd geen reden gegeven.',
  closingCheck: 'Eindcontrole',
  print: 'Afdrukken',
  theReadingBefore: (answer) => `de meting hiervoor: ${answer}`,
  theOneBefore: 'De vorige',
  theOneAfter: 'De volgende',
  thePageCouldNotBeMadeSentence: (sentence) => `De pagina kon niet gemaakt worden: ${sentence}`,
  tryAgain: 'Opnieuw proberen',
  jobClosingCheck: (job) => `${job}, eindcontrole`,
  sinceTheCheckBefore: 'Sinds de vorige controle',
  whatWasRead: 'Wat gemeten is',
  notRead: 'niet gemeten',
  ruledOut: 'Uitgesloten',
  whatTheseReadingsCannotSee: 'Wat deze metingen niet kunnen zien',
  noFaultThatIsKnown:
    'Geen fout die Lugwise kent. Over wat het niet kent kan geen lijst iets beloven.',
  valuesLearned: 'Geleerde waarden',
  repairs: 'Reparaties',
  closingCheckJobWhen: (job, when) => `Eindcontrole: ${job}, ${when}`,
  whatWasReadAndWhatPasses: 'Wat gemeten is, en wat goed is',
  roomTemperatureNotTold: 'kamertemperatuur niet gezegd',
  roomAtCelsiusC: (celsius) => `kamer op ${celsius} °C`,
  stageMeterGoodToWhatUpTo: (stage, what, limit, leads, room) =>
    `${stage}. Meter goed tot op ±${what} %, tot ${limit}, ${leads} met de punten tegen elkaar; ${room}.`,
  countPointsReadingsReadings: (count, readings, atLeast) =>
    `${count} punten, ${readings} metingen, alle zoals een gezonde gitaar meet. Geen lijst die evenveel laat zien heeft er minder dan ${atLeast} nodig.`,
  countOfCount2PointsAsAHealthy: (count, count2) =>
    `${count} van ${count2} punten zoals een gezonde gitaar meet. De onderdelen of de meter zijn sindsdien verbeterd, dus wordt het opnieuw beoordeeld.`,
  titleEstimateMaxPrintedNominal: (title, estimate, max, nominal) =>
    `${title}: ${estimate} ±${max} %, gedrukt ${nominal}`,
  toldAndMoreMore: (told, more) => `${told}; en nog ${more}`,
  wentUp: (place, percent, now, before) => `${place} is ${percent} % hoger, ${now} na ${before}`,
  wentDown: (place, percent, now, before) => `${place} is ${percent} % lager, ${now} na ${before}`,
  changed: (change) => `${change}.`,
  changedWarmer: (change, degrees) => `${change}: ${degrees} graden warmer.`,
  changedColder: (change, degrees) => `${change}: ${degrees} graden kouder.`,
  offMoreThanOnce: (count: number) =>
    `${count === 1 ? 'Deze meting week' : 'Deze metingen weken'} meer dan eens af. Alles wat je gemeten hebt gaat mee de zoektocht in; na de reparatie wordt alleen opnieuw gevraagd wat ze veranderd kan hebben.`,
  noListNeedsFewer: (readings, atLeast) =>
    `${readings} metingen; geen lijst die evenveel laat zien heeft er minder dan ${atLeast} nodig.`,
  stopWheneverYouLike: 'Stop wanneer je wilt: het gaat hier verder.',
  times: (taken, times) => `· ${taken} van ${times}`,
  timesTaken: (taken, times) => ` · ${taken} van ${times} keer`,
  inPlaces: (count: number) => `, op ${count === 1 ? '1 plek' : `${count} plekken`}`,
  theCheckOf: (date) => `De controle van ${date}`,
  doneOf: (done, count) => `${done} van ${count}`,
  done: 'gedaan',
  stopHere: 'Stop hier',
  firstTheseShow: (time: string, readings: number, tenths: number) =>
    `Eerst, ongeveer ${time}: deze ${readings} metingen tonen ${tenths} op de 10 fouten die voorkomen.`,
  thenTheRest: (time: string) =>
    `Dan de rest, ongeveer ${time}: wat zelden fout gaat en later moeilijk te vinden is.`,
  soFarAllIsWell: 'Tot nu toe is alles goed',
  stopAndKeepIt: 'Stop en bewaar',
  whatYouHaveReadShows: (tenths: number) =>
    `Wat je gemeten hebt toont ${tenths} op de 10 fouten die voorkomen, en alles is zoals het hoort.`,
  theRestTakes: (time: string) =>
    `De rest duurt ongeveer ${time}. Die zoekt naar wat zelden fout gaat: een soldering die loslaat als een draad beweegt, een spoel die omgekeerd is, een massa die aan één draad hangt. Stop je hier, dan staat op het bewijs waar niet naar gezocht is.`,
  aShortCheck: (count: number, all: number) =>
    `Een korte controle: ${count} van ${all} punten, alle zoals een gezonde gitaar meet. De rest is niet gemeten.`,
  doItTimes: (times: number) =>
    times === 2
      ? '· doe het twee keer'
      : times === 3
        ? '· doe het drie keer'
        : `· doe het ${times} keer`,
  jumpsAbout: 'Ver\u00adspringt',
  cantReachIt: 'Kan er niet bij',
  cantDoIt: 'Kan ik niet doen',
  inTurn: (answers: readonly string[]) => answers.join(', daarna '),
};
