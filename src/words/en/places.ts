import { area } from '../area.ts';

/**
 * Places of a guitar, as noun phrases that stand after "at". A title is that of a part or pickup as the wiring has it; a place is a
 * phrase of this catalogue; a colour is in the person's words, or empty.
 */
const places = {
  caseOfPot: (title: string) => `the case of the ${title}`,
  frameOfSwitch: (title: string) => `the frame of the ${title}`,
  lugOfPart: (lug: string, title: string) => `lug ${lug} of the ${title}`,
  lugOfJack: (lug: string, title: string) => `the ${lug} lug of the ${title}`,
  endOfCoil: (end: string, title: string) => `the ${end} of the ${title}`,
  leg: (leg: string, title: string) => `leg ${leg} of the ${title}`,
  part: (title: string) => `the ${title}`,
  pickupLead: (colour: string, owner: string, place: string) =>
    `the ${adjective(colour)}lead of the ${owner} on ${place}`,
  legOn: (owner: string, place: string) => `the leg of the ${owner} on ${place}`,
  wire: (colour: string, from: string, to: string) =>
    `the ${adjective(colour)}wire from ${from} to ${to}`,
  mount: (from: string, to: string) => `the contact between ${from} and ${to}`,
  joint: (lead: string, place: string) => `the joint of ${lead} on ${place}`,
  /** The same in a table that speaks of joints anyway. */
  jointShort: (lead: string, place: string) => `${lead} on ${place}`,
  shortPickupLead: (colour: string, owner: string) =>
    // A coil is its pickup's already: no second one after that.
    owner.includes("'s ")
      ? `the ${adjective(colour)}lead of the ${owner}`
      : `the ${owner}'s ${adjective(colour)}lead`,
  shortLeg: (owner: string) => `the ${owner}'s leg`,
  shortWire: (colour: string) => `the ${adjective(colour)}wire`,
  bareEnd: (lead: string, place: string) => `the bare end of ${lead}, just off ${place}`,
  contact: (contact: string, title: string) => `the contact ${contact} of the ${title}`,
  wiper: (title: string) => `the wiper of the ${title}`,
  track: (title: string, lug: string) => `the track of the ${title} next to lug ${lug}`,
  /** A lug beside its part: "3", "case", "start". */
  lug: (name: string) => name,
  /** The same of metal. */
  plate: 'plate',
  cover: 'cover',
  bridge: 'bridge',
  twist: 'twist',
};

const adjective = (colour: string): string => (colour === '' ? '' : `${colour} `);

export const placeNames = area('places', places);
