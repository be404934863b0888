import { coilTitle, leadName, type SeenPickup } from '../../circuit/seen-pickup.ts';
import type { Trouble } from '../../sorter/candidates.ts';
import type { Role } from '../../sorter/inside.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';

/** Names of leads by their ids: "red lead + striped green lead". */
export const leadNames = (seen: SeenPickup, ids: readonly string[]): string =>
  ids
    .map((id) => seen.leads.find((lead) => lead.id === id))
    .map((lead) => (lead ? called(leadName(lead)) : ''))
    .join(' + ') || matWords().none;

/** What a lead turned out to be: "+ end, screw coil". */
export function roleWords(seen: SeenPickup, role: Role): string {
  const [of, end] = role.split('.');
  if (role === 'link') return matWords().whereTheTwoCoilsAreJoined;
  if (role === 'tap') return matWords().theTapOfTheCoil;
  if (role === 'plate') return matWords().theBasePlate;
  if (role === 'cover') return matWords().theCover;
  if (role === 'nothing') return matWords().reachesNothing;
  const coil = of === 'pair' ? matWords().twoCoilsInSeries : coilTitle(seen, of as 'a' | 'b');
  if (end === 'open') return matWords().coilWhichReadsOpen(coil);
  return matWords().whatEndCoil(end === 'finish' ? '+' : '−', coil);
}

export function troubleWords(seen: SeenPickup, trouble: Trouble): string {
  switch (trouble.is) {
    case 'open':
      return matWords().theCoilReadsOpenTheBreakIs(coilTitle(seen, trouble.coil));
    case 'dead lead':
      return matWords().theLeadNamesIsBrokenInside(leadNames(seen, [trouble.lead]));
    case 'touches plate':
      return matWords().theCoilTouchesTheBasePlate(coilTitle(seen, trouble.coil));
    case 'low':
      return matWords().theCoilIsLowerThanTheOther(coilTitle(seen, trouble.coil));
  }
}
