import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { oneHumbuckerOneKnob } from './catalog/one-humbucker-one-knob.ts';
import { threeSinglesFivePosition } from './catalog/three-singles-five-position.ts';
import { twoSinglesThreePosition } from './catalog/two-singles-three-position.ts';
import type { Circuit } from './circuit.ts';
import {
  jointTitle,
  leadTitle,
  lugOfJoint,
  lugTitle,
  partTitle,
  pointTitle,
  shortLeadTitle,
  siteTitle,
} from './names.ts';
import { layoutOf } from './netlist.ts';

const three = layoutOf(threeSinglesFivePosition());
const two = layoutOf(twoSinglesThreePosition());
const one = layoutOf(oneHumbuckerOneKnob());

describe('lugTitle', () => {
  it.each([
    [three, 'volume.3', 'lug 3 of the volume'],
    [three, 'neckTone.case', 'the case of the neck tone'],
    [three, 'selector.A2', 'lug A2 of the selector'],
    [three, 'selector.frame', 'the frame of the selector'],
    [three, 'jack.tip', 'the tip lug of the output jack'],
    [three, 'middleCoil.start', 'the start of the middle pickup'],
    [three, 'toneCap.a', 'leg a of the tone capacitor'],
    [three, 'strings.metal', 'the strings and bridge'],
    [one, 'link.joint', 'the series link of the bridge pickup'],
    [two, 'controlPlate.metal', 'the control plate'],
  ])('%# calls %s', (layout, lug, title) => {
    expect(lugTitle(layout, lug)).toBe(title);
  });
});

describe('leads and joints', () => {
  it.each([
    [three, 'bridgeHot', 'the lead of the bridge pickup on lug A1 of the selector'],
    [three, 'capHotLeg', 'the leg of the tone capacitor on lug 1 of the neck tone'],
    [three, 'jackHot', 'the wire from lug 2 of the volume to the tip lug of the output jack'],
    [two, 'volumeMount', 'the contact between the case of the volume and the control plate'],
  ])('%# names a lead by where it ends', (layout, id, title) => {
    expect(leadTitle(layout, id)).toBe(title);
  });

  it.each([
    [three, 'bridgeHot@to', "the joint of the bridge pickup's lead on lug A1 of the selector"],
    [three, 'capHotLeg@to', "the joint of the tone capacitor's leg on lug 1 of the neck tone"],
    [three, 'jackHot@from', 'the joint of the wire on lug 2 of the volume'],
    [two, 'volumeMount@to', 'the contact between the case of the volume and the control plate'],
  ])('%# names a joint', (layout, joint, title) => {
    expect(jointTitle(layout, joint)).toBe(title);
    expect(siteTitle(layout, joint)).toBe(title);
  });

  it('says the colour that was entered', () => {
    const circuit = oneHumbuckerOneKnob();
    const coloured: Circuit = {
      ...circuit,
      leads: circuit.leads.map((lead) => (lead.id === 'hot' ? { ...lead, colour: 'green' } : lead)),
    };
    expect(leadTitle(layoutOf(coloured), 'hot')).toBe(
      "the green lead of the bridge pickup's slug coil on lug 3 of the volume",
    );
    expect(shortLeadTitle(layoutOf(coloured), 'hot')).toBe(
      "the green lead of the bridge pickup's slug coil",
    );
  });

  it('finds the lug under a joint', () => {
    expect(lugOfJoint(three, 'bridgeHot@to')).toBe('selector.A1');
    expect(lugOfJoint(three, 'bridgeHot@from')).toBe('bridgeCoil.finish');
  });

  it('says where a probe stands on a bare end', () => {
    expect(pointTitle(three, 'bridgeHot@to')).toBe(
      "the bare end of the bridge pickup's lead, just off lug A1 of the selector",
    );
    expect(pointTitle(three, 'jack.sleeve')).toBe('the sleeve lug of the output jack');
  });
});

describe('siteTitle', () => {
  it.each([
    ['selector:A1-AC', 'the contact A1-AC of the selector'],
    ['volume:wiper', 'the wiper of the volume'],
    ['volume:lower', 'the track of the volume next to lug 1'],
    ['volume:upper', 'the track of the volume next to lug 3'],
    ['bridgeCoil:winding', 'the bridge pickup'],
    ['toneCap:body', 'the tone capacitor'],
    ['toneCap', 'the tone capacitor'],
    ['jackGround', 'the wire from the case of the volume to the sleeve lug of the output jack'],
  ])('of %s', (site, title) => {
    expect(siteTitle(three, site)).toBe(title);
  });
});

describe('names nobody knows', () => {
  it('are said as they came, never lost', () => {
    expect([
      partTitle(three, 'gone'),
      lugTitle(three, 'gone.1'),
      leadTitle(three, 'gone'),
      shortLeadTitle(three, 'gone'),
      lugOfJoint(three, 'gone@to'),
    ]).toEqual(['gone', 'gone.1', 'gone', 'gone', 'gone@to']);
  });
});

describe('every place of every starting wiring', () => {
  it.each(startingWirings.map(({ id, build }) => [id, build] as const))(
    'has a noun phrase in words, without an id: %s',
    (_id, build) => {
      const layout = layoutOf(build());
      const titles = [
        ...layout.sites.map(({ id }) => siteTitle(layout, id)),
        ...layout.nodes
          .filter((node) => !node.endsWith('.inside'))
          .map((node) => pointTitle(layout, node)),
      ];
      for (const title of titles) {
        expect(title).toMatch(/^(the|lug|leg) /);
        expect(title).not.toMatch(/[a-z][A-Z]|@|undefined/);
      }
    },
  );
});
