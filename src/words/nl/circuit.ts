import type { circuitWords as English } from '../en/circuit.ts';
import { de, naam } from './nouns.ts';

export const circuit: ReturnType<typeof English> = {
  theCircuitShouldHaveLists:
    'de schakeling hoort lijsten van onderdelen, draden en elementen te hebben',
  theCircuitHasNoPartsPlace:
    'de schakeling heeft geen onderdelen: plaats minstens een element en een jack',
  whatIsCalledNameANameStarts: (what, name) =>
    `${what} heet "${name}": een naam begint met een letter en heeft alleen letters, cijfers, - en _`,
  twoThingsAreCalledName: (name) => `twee dingen heten "${name}"`,
  aPart: 'een onderdeel',
  partKindIsNoKindOfPart: (part, kind) => `${naam(part)}: "${kind}" is geen soort onderdeel`,
  partAPartNeedsATitleIn: (part) => `${naam(part)}: een onderdeel heeft een naam in woorden nodig`,
  aLead: 'een draad',
  leadLeadEndsOnEndWhichIs: (lead, end) =>
    `draad ${lead} eindigt op ${end}, en die lip heeft deze gitaar niet`,
  leadLeadRunsFromFromToItself: (lead, from) => `draad ${lead} loopt van ${from} naar zichzelf`,
  leadLeadKindIsNoKindOf: (lead, kind) => `draad ${lead}: "${kind}" is geen soort draad`,
  aPickup: 'een element',
  pickupPartIsOfAnotherKind: (pickup, id, got, kind) =>
    `${naam(pickup)}: ${id} is een ${got}, terwijl een ${kind} wordt verwacht`,
  pickupPartBelongsToAPickupAlready: (pickup, id) =>
    `${naam(pickup)}: ${id} hoort al bij een element`,
  pickupThereIsNoPartCalled: (pickup, id) => `${naam(pickup)}: er is geen onderdeel dat ${id} heet`,
  theSettingNamesASwitchIdThat: (id) =>
    `de stand noemt een schakelaar "${id}" die deze gitaar niet heeft`,
  partHasNoPositionPosition: (part, position) => `${naam(part)} heeft geen stand "${position}"`,
  theSettingNamesAKnobIdThat: (id) => `de stand noemt een knop "${id}" die deze gitaar niet heeft`,
  partAKnobStandsBetween0And: (part, figure) =>
    `${naam(part)}: een knop staat tussen 0 en 10, dit is ${figure}`,
  theSettingLiftsJointWhich: (joint) =>
    `de stand licht ${joint}, en dat is geen soldering van deze gitaar`,
  thereIsNoPartCalledId: (id) => `er is geen onderdeel dat ${id} heet`,
  thereIsNoLeadCalledId: (id) => `er is geen draad die ${id} heet`,
  thereIsNoLugLugInThis: (lug) => `er is geen lip ${lug} in deze gitaar`,
  aLeadHasTwoEndsChooseAnother: 'een draad heeft twee einden: kies een andere lip',
  theseTwoLugsAreJoinedAlready: 'deze twee lippen zijn al verbonden',
  twoThingsWouldBeCalledId: (id) => `twee dingen zouden "${id}" heten`,
  aGuitarHasAtMostLeadsLeads: (leads) => `een gitaar heeft hier hoogstens ${leads} draden`,
  thisEndIsInsideThePartOnly:
    'dit einde zit in het onderdeel: alleen het andere kan ergens anders gesoldeerd worden',
  theColour: 'de kleur',
  thisLeadComesOutOfTheOwnerOf: (ownerOf) =>
    `deze draad komt uit ${de(ownerOf)} en blijft van dat onderdeel`,
  thisGuitarHasItsJackAlready: (jack) =>
    `deze gitaar heeft al ${de(jack)}: verander die, of haal hem eerst weg`,
  tooMany: {
    parts: (most: number, got: number) =>
      `een gitaar heeft hier hoogstens ${most} onderdelen, en dit worden er ${got}`,
    leads: (most: number, got: number) =>
      `een gitaar heeft hier hoogstens ${most} draden, en dit worden er ${got}`,
    pickups: (most: number, got: number) =>
      `een gitaar heeft hier hoogstens ${most} elementen, en dit worden er ${got}`,
  },
  theBeforeBelongsToAPickup: (before, kind) =>
    `${de(before)} hoort bij een element en blijft een ${kind}`,
  titleTooLong: (title, most) => `${naam(title)}: hoogstens ${most} tekens`,
  thereIsATwinAlready: (twin) => `er is al een ${naam(twin)}`,
  theWiring: 'de bedrading',
  whatTypeANameItIsEmpty: (what) => `${naam(what)}: typ een naam, hij is nu leeg`,
  whatAtMostLongestCharacters: (what, longest, count) =>
    `${naam(what)}: hoogstens ${longest} tekens, dit zijn er ${count}`,
  leadLeadEndsOnLugWhichIs: (lead, lug) =>
    `draad ${lead} eindigt op ${lug}, en die lip heeft deze gitaar niet`,
  thereIsNoLugOrLeadEnd: (name) => `er is in deze gitaar geen lip of draadeinde dat ${name} heet`,
  thereIsNoJointLeadOrPart: (id) =>
    `er is in deze gitaar geen soldering, draad of plek die ${id} heet`,
  partWhatShouldBeAbove0Got: (part, what, value) =>
    `${naam(part)}: ${what} hoort boven 0 te zijn, dit is ${value}`,
  windingSense: 'de wikkelrichting',
  magnetPolarity: 'de magneetpool',
  partWhatShouldBe1Or1: (part, what, sign) =>
    `${naam(part)}: ${what} hoort 1 of -1 te zijn, dit is ${sign}`,
  partTheShareAtHalfTurnShould: (part, midShare) =>
    `${naam(part)}: het deel op halve draai hoort tussen 0 en 1 te liggen, dit is ${midShare}`,
  partASwitchNeedsAtLeastOne: (part) =>
    `${naam(part)}: een schakelaar heeft minstens één stand nodig`,
  partTwoOfItsLugsHaveThe: (part) => `${naam(part)}: twee van zijn lippen heten hetzelfde`,
  partTwoPositionsAreCalled: (part, position) => `${naam(part)}: twee standen heten "${position}"`,
  partPositionPositionJoins: (part, position, lug) =>
    `${naam(part)}: stand "${position}" verbindt lip ${lug}, en die heeft hij niet`,
  partPositionPositionJoins2: (part, position, a) =>
    `${naam(part)}: stand "${position}" verbindt lip ${a} met zichzelf`,
  titleWhatShouldBeExpected: (title, what, expected, got) =>
    `${naam(title)}: ${what} hoort ${expected} te zijn, dit is ${got}`,
  above0: (unit) => `boven 0 ${unit}`,
  warmth: 'van -50 tot 100 °C',
  itsValue: 'de waarde',
  aValueInUnit: (unit) => `een waarde in ${unit}`,
  thePrintedValue: 'de gedrukte waarde',
  theMeasuredValue: 'de gemeten waarde',
  measuredOpen: '"open gemeten"',
  trueOrNothing: 'waar of niets',
  itsWarmthWhenMeasured: 'de temperatuur bij het meten',
  theTolerance: 'de tolerantie',
  above0AndAtMost1100: 'boven 0 en hoogstens 1 (100 %)',
  aPickupToSortHas2To: (count) =>
    `een element om uit te zoeken heeft 2 tot 6 draden, dit zijn er ${count}`,
  twoLeadsAreCalledTwiceGive: (twice) =>
    `twee draden heten "${twice}": geef er een een merk, zoals gestreept of geknoopt`,
  thingExpectedAValueOf0Or: (thing, value) =>
    `${thing}: verwacht was een waarde van 0 of meer, dit is ${value}`,
};
