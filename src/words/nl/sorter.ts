import type { sorterWords as English } from '../en/sorter.ts';
import { de, groot } from './nouns.ts';

export const sorter: ReturnType<typeof English> = {
  tapOnThePart: (coil) => `Tik op ${de(coil)}`,
  ohms: 'Ohms',
  beep: 'Piep',
  read: (act, seen) => `${act}: ${seen}`,
  readAt: (act, probes, seen) => `${act}, ${probes}: ${seen}`,
  thisWiringHasNoSuchPickup: 'Deze bedrading heeft geen zulk element.',
  wiringHasTwoCoils: (pickup) =>
    `${groot(de(pickup))} van deze bedrading heeft twee spoelen, en dit element één.`,
  wiringHasOneCoil: (pickup) =>
    `${groot(de(pickup))} van deze bedrading heeft één spoel, en dit element twee.`,
  aCoilOfThisPickupReadsOpen:
    'Een spoel van dit element meet open: herstel die voor het erin gaat.',
  itsTwoCoilsAreJoinedInside:
    'Zijn twee spoelen zijn binnenin zo verbonden dat ze elkaar tegenwerken: geen bedrading hier heeft dat.',
};
