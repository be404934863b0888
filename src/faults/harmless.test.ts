import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { faultsOf } from './index.ts';

const idsOf = (id: string) =>
  new Set(
    faultsOf(startingWirings.find((wiring) => wiring.id === id)!.build()).map((fault) => fault.id),
  );
const two = idsOf('two-singles-three-position');
const four = idsOf('two-humbuckers-four-knobs');
const three = idsOf('three-singles-five-position');

describe('a slip that changes nothing', () => {
  it.each([
    ['solder between lug 1 and case of a grounded volume', two, 'bridge:volume.1~volume.case'],
    ['the same on a tone with its lug 1 on its case', four, 'bridge:neckTone.1~neckTone.case'],
    [
      'a pickup ground on lug 1 of the volume instead of its case',
      four,
      'land:neckCold@to>neckVolume.1',
    ],
    [
      'the frame touching a lug that nothing is soldered to',
      two,
      'bridge:selector.B1~selector.frame',
    ],
    ['a pole that is empty bridged to itself', two, 'bridge:selector.B3~selector.B2'],
  ])('is no suspect: %s', (_what, ids, id) => {
    expect(ids).not.toContain(id);
  });
});

describe('a slip that does change something', () => {
  it.each([
    ['solder between lug 3 and case of a grounded volume', two, 'bridge:volume.3~volume.case'],
    ['solder between lugs 1 and 2: no sound', two, 'bridge:volume.1~volume.2'],
    ['solder between lugs 2 and 3: the volume stays up', two, 'bridge:volume.2~volume.3'],
    [
      'the case of a tone whose lug 1 carries a capacitor',
      three,
      'bridge:neckTone.1~neckTone.case',
    ],
    ['tip and sleeve exchanged', two, 'exchange:jack.tip~jack.sleeve'],
    ['outer lugs of a volume exchanged', two, 'exchange:volume.1~volume.3'],
    ['wiper and input exchanged', two, 'exchange:volume.2~volume.3'],
    ['a hot lead on the next lug of the selector', three, 'land:bridgeHot@to>selector.A2'],
    ['one coil of a humbucker turned', four, 'coil-reversed:neckSlug'],
    ['a whole humbucker turned', four, 'pickup-reversed:neckPickup'],
    ['a coil on its base plate', four, 'coil-plate:neckSlug'],
  ])('is a suspect: %s', (_what, ids, id) => {
    expect(ids).toContain(id);
  });

  it('keeps a bad joint that a second path hides', () => {
    const circuit = startingWirings[0]!.build();
    // A second ground wire beside the first: either may still be bad.
    const doubled = {
      ...circuit,
      leads: [
        ...circuit.leads,
        { id: 'second', kind: 'wire', from: 'neckVolume.case', to: 'bridgeVolume.case' } as const,
      ],
    };
    layoutOf(doubled);
    const ids = faultsOf(doubled).map(({ id }) => id);
    expect(ids).toContain('open:second@to');
    expect(ids).toContain('open:volumesGround@to');
    expect(ids).not.toContain('bridge:neckVolume.case~bridgeVolume.case');
  });
});
