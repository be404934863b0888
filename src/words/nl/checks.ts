import type { checkWords as English } from '../en/checks.ts';
import { de, groot, klein, naam } from './nouns.ts';

export const checks: ReturnType<typeof English> = {
  whatComesFromLugEndsAtLug2: (lug, lug2) =>
    `Wat van ${lug} komt eindigt op ${lug2} en loopt dood.`,
  hotAndGroundAreJoinedByWires:
    'Signaal en massa zijn met alleen draden verbonden: de gitaar zwijgt in elke stand.',
  withEveryKnobFullUp: 'met elke knop helemaal open',
  hotIsJoinedToGroundWhenBy: (when, where) =>
    `Signaal is ${when} met massa verbonden, via ${where}: daar zwijgt de gitaar.`,
  thePartReachesTheJackInNo: (part) => `${groot(de(part))} bereikt de jack in geen enkele stand.`,
  thereIsNoOutputJackAddOne:
    'Er is geen uitgangsjack: voeg er een toe, zodat duidelijk is waar het geluid eruit komt.',
  thereIsNoPickup: 'Er is geen element.',
  thePartAtPosition: (part, position) => `${de(part)} op "${naam(position)}"`,
  withList: (list) => `met ${list}`,
  pressingChangesNothing: (part) => `Op ${de(part)} drukken verandert niets.`,
  movingChangesNothing: (part) => `${groot(de(part))} omzetten verandert niets.`,
  turningChangesNothing: (part) => `Aan ${de(part)} draaien verandert niets.`,
  noGround: (what) => `${what} heeft geen massa.`,
  noGroundWith: (what, stand) => `${what} heeft geen massa ${stand}.`,
  itIsOnHot: 'Het ligt aan het signaal: het bromt als je het aanraakt.',
  itCanHum: 'Het kan brommen.',
  nothingIsSoldered: (part) => `Aan ${de(part)} is nog niets gesoldeerd.`,
  nothingOnIt: (lugs) => `Aan ${klein(lugs)} zit niets.`,
};
