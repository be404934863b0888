import type { Circuit } from '../circuit.ts';
import { leads, outputJack, strings } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { ownKnobLeads, ownKnobs, selectorToJack } from './knobs.ts';
import { toggle3 } from './selectors.ts';

const sides = ['neck', 'bridge'] as const;

/** Each pickup has its own volume and tone; volumes feed the selector from their wipers, tones hang on the volumes' inputs. */
export function twoHumbuckersFourKnobs(): Circuit {
  return {
    id: 'two-humbuckers-four-knobs',
    title: 'two humbuckers, 3-position toggle, two volumes and two tones',
    pickups: sides.map(humbuckerPickup),
    parts: [
      ...humbucker('neck', { resistance: 3800, inductance: 2.2 }),
      ...humbucker('bridge', { resistance: 4100, inductance: 2.2 }),
      ...sides.flatMap((side) => ownKnobs(side, 500e3)),
      toggle3,
      outputJack,
      strings,
    ],
    leads: leads([
      ...sides.flatMap((side) => [
        ...humbuckerLeads(side, `${side}Volume.3`, `${side}Volume.case`),
        ...ownKnobLeads(side, side === 'neck' ? 'selector.A' : 'selector.B'),
      ]),
      ...selectorToJack,
    ]),
  };
}
