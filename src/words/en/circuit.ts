import { area } from '../area.ts';

const circuit = {
  theCircuitShouldHaveLists: 'the circuit should have lists of parts, leads and pickups',
  theCircuitHasNoPartsPlace: 'the circuit has no parts: place at least a pickup and a jack',
  whatIsCalledNameANameStarts: (what: string, name: string) =>
    `${what} is called "${name}": a name starts with a letter and has letters, digits, - and _ only`,
  twoThingsAreCalledName: (name: string) => `two things are called "${name}"`,
  aPart: 'a part',
  partKindIsNoKindOfPart: (part: string, kind: string) => `${part}: "${kind}" is no kind of part`,
  partAPartNeedsATitleIn: (part: string) => `${part}: a part needs a title in words`,
  aLead: 'a lead',
  leadLeadEndsOnEndWhichIs: (lead: string, end: string) =>
    `lead ${lead} ends on ${end}, which is no lug of this guitar`,
  leadLeadRunsFromFromToItself: (lead: string, from: string) =>
    `lead ${lead} runs from ${from} to itself`,
  leadLeadKindIsNoKindOf: (lead: string, kind: string) =>
    `lead ${lead}: "${kind}" is no kind of lead`,
  aPickup: 'a pickup',
  pickupPartIsOfAnotherKind: (pickup: string, id: string, got: string, kind: string) =>
    `${pickup}: ${id} is a ${got}, where a ${kind} is expected`,
  pickupPartBelongsToAPickupAlready: (pickup: string, id: string) =>
    `${pickup}: ${id} belongs to a pickup already`,
  pickupThereIsNoPartCalled: (pickup: string, id: string) =>
    `${pickup}: there is no part called ${id}`,
  theSettingNamesASwitchIdThat: (id: string) =>
    `the setting names a switch "${id}" that this guitar does not have`,
  partHasNoPositionPosition: (part: string, position: string) =>
    `${part} has no position "${position}"`,
  theSettingNamesAKnobIdThat: (id: string) =>
    `the setting names a knob "${id}" that this guitar does not have`,
  partAKnobStandsBetween0And: (part: string, figure: string) =>
    `${part}: a knob stands between 0 and 10, got ${figure}`,
  theSettingLiftsJointWhich: (joint: string) =>
    `the setting lifts ${joint}, which is no joint of this guitar`,
  thereIsNoPartCalledId: (id: string) => `there is no part called ${id}`,
  thereIsNoLeadCalledId: (id: string) => `there is no lead called ${id}`,
  thereIsNoLugLugInThis: (lug: string) => `there is no lug ${lug} in this guitar`,
  aLeadHasTwoEndsChooseAnother: 'a lead has two ends: choose another lug',
  theseTwoLugsAreJoinedAlready: 'these two lugs are joined already',
  twoThingsWouldBeCalledId: (id: string) => `two things would be called "${id}"`,
  aGuitarHasAtMostLeadsLeads: (leads: number) => `a guitar has at most ${leads} leads here`,
  thisEndIsInsideThePartOnly:
    'this end is inside the part: only the other end can be soldered elsewhere',
  theColour: 'the colour',
  thisLeadComesOutOfTheOwnerOf: (ownerOf: string) =>
    `this lead comes out of the ${ownerOf} and stays its own`,
  thisGuitarHasItsJackAlready: (jack: string) =>
    `this guitar has its ${jack} already: change that one, or take it away first`,
  tooMany: {
    parts: (most: number, got: number) =>
      `a guitar has at most ${most} parts here, and this would be ${got}`,
    leads: (most: number, got: number) =>
      `a guitar has at most ${most} leads here, and this would be ${got}`,
    pickups: (most: number, got: number) =>
      `a guitar has at most ${most} pickups here, and this would be ${got}`,
  },
  theBeforeBelongsToAPickup: (before: string, kind: string) =>
    `the ${before} belongs to a pickup and stays a ${kind}`,
  titleTooLong: (title: string, most: number) => `${title}: at most ${most} characters`,
  thereIsATwinAlready: (twin: string) => `there is a ${twin} already`,
  theWiring: 'the wiring',
  whatTypeANameItIsEmpty: (what: string) => `${what}: type a name, it is empty now`,
  whatAtMostLongestCharacters: (what: string, longest: number, count: number) =>
    `${what}: at most ${longest} characters, got ${count}`,
  leadLeadEndsOnLugWhichIs: (lead: string, lug: string) =>
    `lead ${lead} ends on ${lug}, which is no lug of this guitar`,
  thereIsNoLugOrLeadEnd: (name: string) =>
    `there is no lug or lead end called ${name} in this guitar`,
  thereIsNoJointLeadOrPart: (id: string) =>
    `there is no joint, lead or part site called ${id} in this guitar`,
  partWhatShouldBeAbove0Got: (part: string, what: string, value: string) =>
    `${part}: ${what} should be above 0, got ${value}`,
  windingSense: 'winding sense',
  magnetPolarity: 'magnet polarity',
  partWhatShouldBe1Or1: (part: string, what: string, sign: string) =>
    `${part}: ${what} should be 1 or -1, got ${sign}`,
  partTheShareAtHalfTurnShould: (part: string, midShare: string) =>
    `${part}: the share at half turn should lie between 0 and 1, got ${midShare}`,
  partASwitchNeedsAtLeastOne: (part: string) => `${part}: a switch needs at least one position`,
  partTwoOfItsLugsHaveThe: (part: string) => `${part}: two of its lugs have the same name`,
  partTwoPositionsAreCalled: (part: string, position: string) =>
    `${part}: two positions are called "${position}"`,
  partPositionPositionJoins: (part: string, position: string, lug: string) =>
    `${part}: position "${position}" joins lug ${lug}, which it does not have`,
  partPositionPositionJoins2: (part: string, position: string, a: string) =>
    `${part}: position "${position}" joins lug ${a} to itself`,
  titleWhatShouldBeExpected: (title: string, what: string, expected: string, got: string) =>
    `${title}: ${what} should be ${expected}, got ${got}`,
  above0: (unit: string) => `above 0 ${unit}`,
  warmth: 'from -50 to 100 °C',
  itsValue: 'its value',
  aValueInUnit: (unit: string) => `a value in ${unit}`,
  thePrintedValue: 'the printed value',
  theMeasuredValue: 'the measured value',
  measuredOpen: '"measured open"',
  trueOrNothing: 'true or nothing',
  itsWarmthWhenMeasured: 'its warmth when measured',
  theTolerance: 'the tolerance',
  above0AndAtMost1100: 'above 0 and at most 1 (100 %)',
  aPickupToSortHas2To: (count: number) => `a pickup to sort has 2 to 6 leads, got ${count}`,
  twoLeadsAreCalledTwiceGive: (twice: string) =>
    `two leads are called "${twice}": give one of them a mark, such as striped or knotted`,
  thingExpectedAValueOf0Or: (thing: string, value: string) =>
    `${thing}: expected a value of 0 or more, got ${value}`,
};
export const circuitWords = area('circuit', circuit);
