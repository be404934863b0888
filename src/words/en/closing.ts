import { area } from '../area.ts';

const closing = {
  /** Kinds of fault by the start of a fault's id. */
  kinds: {
    open: 'A joint that is open',
    high: 'A cold joint',
    intermittent: 'A joint that makes and breaks only when moved',
    broken: 'A broken wire',
    land: 'A wire one lug off',
    exchange: 'Two wires exchanged',
    'coil-reversed': 'A coil wired the wrong way round',
    'pickup-reversed': 'A pickup wired the wrong way round',
    magnet: 'A magnet the other way up',
    'coil-plate': 'A coil that touches the metal of its pickup',
    'coil-open': 'An open coil',
    core: 'A leak inside a pickup lead',
    bridge: 'A leak between two lugs',
    'coil-shorted': 'Shorted turns',
    'cap-open': 'A capacitor that is open inside',
    'cap-value': 'A capacitor of another value',
    'cap-short': 'A shorted capacitor',
    'cap-leak': 'A leaking capacitor',
    worn: 'A worn track',
    wiper: 'A wiper that makes bad contact',
    'track-lower': 'A track broken near lug 1',
    'track-upper': 'A track broken near lug 3',
    'wrong-pot': 'A pot of another value',
    contact: 'A switch contact that makes bad contact',
    stuck: 'A switch that stays in one position',
    turned: 'A switch mounted the wrong way round',
  },
  fault: 'A fault',
  twoThatHideEachOther: 'Two faults that hide each other',
  whileOther: (one: string, other: string) => `${one}, while ${other}`,
  upToAbout: (kind: string, ohms: string) => `${kind} up to about ${ohms}`,
  ofAboutOrMore: (kind: string, ohms: string) => `${kind} of about ${ohms} or more`,
  upToShareOfCoil: (kind: string, percent: number) =>
    `${kind} that take up to ${percent} % of a coil`,
  places: (kind: string, count: number) => `${kind}: ${count} ${count === 1 ? 'place' : 'places'}`,
  placesSaveSizes: (kind: string, count: number) =>
    `${kind}: ${count} ${count === 1 ? 'place' : 'places'}, save the sizes named below`,
};
export const closingWords = area('closing', closing);
