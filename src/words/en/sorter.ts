import { area } from '../area.ts';

const sorter = {
  tapOnThePart: (coil: string) => `Tap on the ${coil}`,
  ohms: 'Ohms',
  beep: 'Beep',
  read: (act: string, seen: string) => `${act}: ${seen}`,
  readAt: (act: string, probes: string, seen: string) => `${act}, ${probes}: ${seen}`,
  thisWiringHasNoSuchPickup: 'This wiring has no such pickup.',
  wiringHasTwoCoils: (pickup: string) =>
    `The ${pickup} of this wiring has two coils, and this pickup one.`,
  wiringHasOneCoil: (pickup: string) =>
    `The ${pickup} of this wiring has one coil, and this pickup two.`,
  aCoilOfThisPickupReadsOpen: 'A coil of this pickup reads open: mend it before it goes in.',
  itsTwoCoilsAreJoinedInside:
    'Its two coils are joined inside so that they fight: no wiring here has that.',
};
export const sorterWords = area('sorter', sorter);
