import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { onOnOn } from './selectors.ts';

/** Both coils' inner ends go to the commons: in series they meet, in parallel each goes on to the far side of the other coil. */
export function fourStringsHumbuckerMiniToggle(): Circuit {
  const parts = humbucker('bridge', { resistance: 4400, inductance: 2.8 }, '');
  return {
    id: 'four-strings-humbucker-mini-toggle',
    title:
      'four strings, one humbucker, mini toggle for series or parallel, one volume and one tone',
    pickups: [humbuckerPickup('bridge')],
    parts: [
      ...parts.filter(({ kind }) => kind !== 'splice'),
      onOnOn('coils', 'coil switch', ['coils in series', 'slug coil alone', 'coils in parallel']),
      ...sharedKnobs(500e3, 47e-9),
    ],
    leads: leads([
      ['hot', 'pickup', 'bridgeSlug.finish', 'volume.3'],
      ['slugInner', 'pickup', 'bridgeSlug.start', 'coils.AC'],
      ['screwInner', 'pickup', 'bridgeScrew.finish', 'coils.BC'],
      ['cold', 'pickup', 'bridgeScrew.start', 'volume.case'],
      ['bare', 'pickup', 'bridgePlate.metal', 'volume.case'],
      ['seriesLink', 'wire', 'coils.A1', 'coils.B1'],
      ['slugGround', 'wire', 'coils.A2', 'volume.case'],
      ['screwHot', 'wire', 'coils.B2', 'volume.3'],
      ...sharedKnobLeads,
    ]),
  };
}
