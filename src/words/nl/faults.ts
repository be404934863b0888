import type { faultWords as English } from '../en/faults.ts';
import { de, groot, naam } from './nouns.ts';

export const faults: ReturnType<typeof English> = {
  lugTouchesLug2: (lug, lug2) => `${lug} raakt ${lug2}`,
  clearWhatJoinsLugAndLug2: (lug, lug2) => `Maak vrij wat ${lug} en ${lug2} verbindt`,
  lookForAStrandABlobOr: 'Zoek een draadje, een klodder, of een omgebogen lip.',
  cutOrWickItAwayCleanOff: 'Snijd het weg of zuig het op; maak oude flux schoon.',
  bendTheLugsApartAndSleeve: 'Buig de lippen uit elkaar en doe krimpkous om blanke draad.',
  noBeepBetweenTheTwoThatThe: 'Geen piep tussen de twee die de bedrading niet vraagt.',
  landedElsewhere: (lead, wrong, right) =>
    `${lead} zit niet op ${right} maar op ${wrong}, of op wat daaraan vastzit`,
  findWhereItSits: (lead) => `Volg ${lead} tot het einde en kijk op welke lip die zit.`,
  crossedLeads: (lug, lug2) =>
    `een draad die op ${lug} hoort en een die op ${lug2} hoort zitten op elkaars plaats`,
  exchangeTwoLeads: (lug, lug2) => `Verwissel twee draden, een op ${lug} en een op ${lug2}`,
  findCrossedEnd: (lead, right, wrong) =>
    `Zoek ${lead}: wat op ${right} hoort zit op ${wrong}, of op wat daaraan vastzit. Merk hem.`,
  strayPath: (lug, lug2) =>
    `iets wat niet op de tekening staat verbindt ${lug}, of wat daaraan vastzit, met ${lug2}`,
  strayFind: (lug, lug2) => `Zoek wat ${lug} en ${lug2} verbindt en door niemand getekend is`,
  strayLook: (lug, lug2) =>
    `Volg alles wat vastzit aan ${lug} en aan ${lug2}: zoek een onderdeel van een vroegere klus, een verborgen verbinding, oude flux, geleidende verf of vocht.`,
  strayDraw:
    'Zit daar met opzet een onderdeel, teken het dan in de bedrading: vanaf dan rekent Lugwise ermee.',
  strayClear: 'Zo niet, haal het weg; maak oude flux schoon en schraap verf van de lippen.',
  strayProof: (lug, lug2) =>
    `Tussen ${lug} en ${lug2} wijst de meter aan wat de bedrading voorspelt.`,
  theHotCoreOfThePickupS: (pickup) =>
    `de signaalkern van de draad van ${de(pickup)} raakt zijn afscherming`,
  partTheCoreAndTheShieldOf: (pickup) =>
    `Scheid de kern en de afscherming van de draad van ${de(pickup)}`,
  lookAtTheStrippedEndFirst:
    'Kijk eerst naar het gestripte einde: knip losse draadjes van de afscherming weg.',
  ifTheShortIsInsideCutThe:
    'Zit de kortsluiting binnenin, kort de draad dan in tot voorbij die plek of vervang hem.',
  thePickupReadsItsOwnOhmsAgain: (pickup) =>
    `${groot(de(pickup))} geeft weer zijn eigen ohms met zijn draad los.`,
  replaceThePart: (part) => `Vervang ${de(part)}`,
  liftOneLegAndReadItAlone: 'Maak één poot los en meet hem alleen.',
  replaceItWithOneOfTheIntended:
    'Vervang hem door een met de bedoelde waarde; het mag beide kanten op.',
  openToTheOhmRangeOnceIt:
    'Open op het ohmbereik zodra hij geladen is; zijn capaciteit is zoals erop staat.',
  withOneLegLiftedItReadsAsMarked: (part) => `Met één poot los leest ${de(part)} wat erop staat.`,
  thePartIsShorted: (part) => `${de(part)} is kortgesloten`,
  thePartLeaks: (part) => `${de(part)} lekt`,
  thePartIsOpenInside: (part) => `${de(part)} is vanbinnen open`,
  thePartHasAnotherValue: (part) => `${de(part)} heeft een andere waarde`,
  mendOrReplaceTheCoilCoil: (coil) => `Herstel of vervang de spoel: ${naam(coil)}`,
  firstReadTheCoilAlone: (kilohms) =>
    `Maak eerst een van de draden los en meet de spoel alleen. Bij ongeveer ${kilohms} kΩ is ze heel, en zit de fout ergens anders: ga terug en voer het in als eigen meting.`,
  takeThePickupOutAndFollow:
    'Haal het element eruit en volg zijn draden: er kan er een onder de mantel gebroken zijn.',
  reheatBrieflyTheJointsWhere:
    'Verhit kort de solderingen waar de dunne draad op de aansluitdraden komt: daar zit de breuk vaak.',
  ifItStillReadsOpenOrToo:
    'Meet hij nog steeds open of te laag, dan moet hij opnieuw gewikkeld of vervangen worden.',
  theCoilReadsAbout: (kilohms) =>
    `De spoel meet ongeveer ${kilohms} kΩ met een van zijn draden los.`,
  theCoilIsOpenInside: (coil) => `${de(coil)} is vanbinnen open`,
  turnsOfTheCoilAreShortedTogether: (coil) => `windingen van ${de(coil)} zijn kortgesloten`,
  leadIsBrokenInsideItsCover: (lead) => `${lead} is onder zijn mantel gebroken`,
  aLeadOfTheCoilMakesAnd: (coil) =>
    `een draad van ${de(coil)} maakt binnen het element af en toe contact`,
  theCoilTouchesTheMetalOfIts: (coil) => `${de(coil)} raakt het metaal van zijn element`,
  theLeadsOfTheCoilAreThe: (coil) => `de draden van ${de(coil)} zitten verkeerd om`,
  thePickupIsWiredTheWrongWay: (pickup) => `${de(pickup)} is verkeerd om aangesloten`,
  exchangeTheTwoLeadsOfTheCoil: (coil) => `Verwissel de twee draden van ${de(coil)}`,
  markBothLeadsAndExchangeThem: 'Merk beide draden en verwissel ze.',
  ifItsMetalCoverOrPlateIs:
    'Zit de metalen kap of plaat aan een ervan vast, geef het metaal dan eerst een eigen massadraad, anders komt er signaal op.',
  nothingElseChanges: 'Verder verandert er niets.',
  itsTapSwingsTheSameWayAs:
    'Zijn tik slaat dezelfde kant uit als die van zijn buur, en de standen die hem combineren klinken vol.',
  theMagnetOfTheCoilIsThe: (coil) => `de magneet van ${de(coil)} zit andersom`,
  turnTheMagnetOfTheCoil: (coil) => `Draai de magneet van ${de(coil)} om`,
  checkItsPoleWithACompassAgainst: 'Controleer zijn pool met een kompas naast zijn buur.',
  turnTheMagnetOverOrExchange:
    'Draai de magneet om, of verwissel de draden als brom je niet uitmaakt.',
  theCompassShowsTheOtherPole:
    'Het kompas toont de andere pool en de tik slaat de andere kant uit.',
  thePickupIsWiredTheWrongWay2: (pickup) => `${de(pickup)} is als geheel verkeerd om aangesloten`,
  exchangeTheTwoOuterLeadsOf: (pickup) => `Verwissel de twee buitenste draden van ${de(pickup)}`,
  markTheHotAndTheColdLead: 'Merk de signaaldraad en de koude draad en verwissel ze.',
  leaveTheBareOrShieldOnGround: 'Laat de blanke draad of afscherming aan massa.',
  itsTapSwingsTheSameWayAs2:
    'Zijn tik slaat dezelfde kant uit als die van het andere element, en beide samen klinken vol.',
  whatBelongsOnLugAndWhatBelongs: (lug, lug2) =>
    `wat op ${lug} hoort en wat op ${lug2} hoort is verwisseld`,
  exchangeTheLeadsOnLugAndLug2: (lug, lug2) => `Verwissel de draden op ${lug} en ${lug2}`,
  markBothLeads: 'Merk beide draden.',
  unsolderThemAndPutEachOnThe: 'Soldeer ze los en zet elk op de andere lip.',
  theReadingsThatWereOffAre: 'De metingen die afweken zijn zoals verwacht.',
  cleanAndTightenTitle: (title) => `Maak schoon en draai vast: ${title}`,
  undoTheNutOrScrew: 'Maak de moer of schroef los.',
  scrapeBothFacesBright: 'Schuur beide vlakken blank.',
  tightenItAgain: 'Draai hem weer vast.',
  ifItWillNotStayGoodRun: 'Wil het niet goed blijven, leg er dan een draad naast.',
  aBeepAcrossTheContactWith: 'Een piep over het contact, terwijl de delen bewogen worden.',
  bothOfItsEnds: 'beide einden',
  itsEndOnLug: (lug) => `het einde op ${lug}`,
  remakeTitle: (title) => `Soldeer opnieuw: ${title}`,
  heatEndsWithFreshSolderUntil: (ends) =>
    `Verhit ${ends} met vers soldeer tot het glanzend om lip en draad vloeit.`,
  holdItStillUntilItHasSet: 'Houd hem stil tot hij hard is, en trek er dan zacht aan.',
  ifTheLegHasSnappedReplace: 'Is de poot afgebroken, vervang dan het onderdeel.',
  ifItStillReadsOpenTheWire:
    'Meet hij nog steeds open, dan is de draad vanbinnen gebroken: vervang hem, of kort hem in en strip hem opnieuw.',
  below1FromLugToLug2: (lug, lug2) =>
    `Onder 1 Ω van ${lug} naar ${lug2}, stabiel terwijl je aan de draad wiebelt.`,
  whereIsOpen: (where) => `${where} is open`,
  whereIsColdItConductsBadly: (where) => `${where} is koud: die geleidt slecht`,
  whereMakesAndBreaksAsItIs: (where) => `${where} maakt en verbreekt contact bij bewegen`,
  leadIsBroken: (lead) => `${lead} is gebroken`,
  shortLeadSitsOnLugInstead: (shortLead, lug, lug2) =>
    `${shortLead} zit op ${lug} in plaats van ${lug2}`,
  putShortLeadBackOnLug: (shortLead, lug) => `Zet ${shortLead} terug op ${lug}`,
  findWhichLugOfThePartIt: (part) =>
    `Zoek op welke lip van ${de(part)} hij zit; tel vanaf de getoonde kant.`,
  solderItToLug: (lug) => `Soldeer hem op ${lug}.`,
  below1FromLugToLug22: (lug, lug2) => `Onder 1 Ω van ${lug} naar ${lug2}.`,
  replaceThePartPot: (part) => `Vervang de potmeter: ${naam(part)}`,
  sprayContactCleanerIntoIt:
    'Spuit er contactreiniger in en draai hem eerst twintig keer van eind tot eind.',
  ifItReadsTheSameReplaceIt:
    'Meet hij hetzelfde, vervang hem dan. Zet de draden lip voor lip over.',
  acrossItsOuterLugsItReads:
    'Over zijn buitenste lippen meet hij zijn waarde; vanaf de middelste lip veranderen de ohms vloeiend als je draait.',
  theTrackOfThePartIsBroken: (part) => `de baan van ${de(part)} is gebroken bij lip 1`,
  theTrackOfThePartIsBroken2: (part) => `de baan van ${de(part)} is gebroken bij lip 3`,
  theWiperOfThePartMakesNo: (part) => `de loper van ${de(part)} maakt geen goed contact`,
  theTrackOfThePartIsWorn: (part) => `de baan van ${de(part)} is versleten`,
  thePartIsAPotOfAnother: (part) => `${de(part)} is een potmeter met een andere waarde`,
  cleanOrReplaceThePart: (part) => `Maak ${de(part)} schoon of vervang hem`,
  sprayContactCleanerOnTheContacts:
    'Spuit contactreiniger op de contacten en zet de schakelaar twintig keer om.',
  bendATiredContactBackOrReplace: 'Buig een slap contact terug, of vervang de schakelaar.',
  eachPositionBeepsBetweenJust:
    'Elke stand piept alleen tussen de lippen die hij hoort te verbinden, stabiel terwijl je aan de schakelaar wiebelt.',
  theContactContactOfThePart: (contact, part) => `contact ${contact} van ${de(part)} sluit niet`,
  thePartStaysInItsPosition: (part, position) =>
    `${de(part)} blijft in de stand "${naam(position)}", hoe hij ook staat`,
  thePartIsMountedTheWrongWay: (part) => `${de(part)} is verkeerd om gemonteerd`,
  turnThePartHalfRound: (part) => `Draai ${de(part)} een halve slag`,
  undoItsScrewsOrNutTurnIt:
    'Maak de schroeven of moer los, draai hem een halve slag, zet hem weer vast.',
  eachPositionGivesThePickup: 'Elke stand geeft het element dat hij hoort te geven.',
  oneOrOfTheName: (one, name) => `${one}, of van ${de(name)}`,
  eitherOfTheTwoWillDoBut:
    'Een van de twee is genoeg, niet allebei: het gaat erom hoe ze tegenover elkaar staan. Neem die waar je het makkelijkst bij komt.',
};
