import type { placeNames as English } from '../en/places.ts';
import { de, einde, gekleurd, lip } from './nouns.ts';

export const places: ReturnType<typeof English> = {
  caseOfPot: (title) => `het huis van ${de(title)}`,
  frameOfSwitch: (title) => `het frame van ${de(title)}`,
  lugOfPart: (lug, title) => `lip ${lug} van ${de(title)}`,
  lugOfJack: (lug, title) => `lip ${lip(lug)} van ${de(title)}`,
  endOfCoil: (end, title) => `het ${einde(end)} van ${de(title)}`,
  leg: (leg, title) => `poot ${leg} van ${de(title)}`,
  part: (title) => `${de(title)}`,
  pickupLead: (colour: string, owner: string, place: string) =>
    `de draad${gekleurd(colour)} van ${de(owner)} op ${place}`,
  legOn: (owner, place) => `de poot van ${de(owner)} op ${place}`,
  wire: (colour: string, from: string, to: string) =>
    `de draad${gekleurd(colour)} van ${from} naar ${to}`,
  mount: (from, to) => `het contact tussen ${from} en ${to}`,
  joint: (lead, place) => `de soldering van ${lead} op ${place}`,
  jointShort: (lead, place) => `${lead} op ${place}`,
  shortPickupLead: (colour: string, owner: string) =>
    `de draad${gekleurd(colour)} van ${de(owner)}`,
  shortLeg: (owner) => `de poot van ${de(owner)}`,
  shortWire: (colour: string) => `de draad${gekleurd(colour)}`,
  bareEnd: (lead, place) => `het blanke einde van ${lead}, vlak naast ${place}`,
  contact: (contact, title) => `contact ${contact} van ${de(title)}`,
  wiper: (title) => `de loper van ${de(title)}`,
  track: (title, lug) => `de baan van ${de(title)} naast lip ${lug}`,
  lug: (name) => lips[name] ?? name,
  plate: 'plaat',
  cover: 'kap',
  bridge: 'brug',
  twist: 'verbinding',
};

const lips: Readonly<Record<string, string>> = {
  case: 'huis',
  frame: 'frame',
  sleeve: 'mantel',
  start: 'begin',
  finish: 'einde',
  metal: 'metaal',
  joint: 'verbinding',
};
