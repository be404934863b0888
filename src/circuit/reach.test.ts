import { describe, expect, it } from 'vitest';
import { oneThreeConductorHumbucker } from './catalog/one-three-conductor-humbucker.ts';
import { twoHumbuckersFourKnobs } from './catalog/two-humbuckers-four-knobs.ts';
import { twoSinglesThreePosition } from './catalog/two-singles-three-position.ts';
import { layoutOf } from './netlist.ts';
import { reachOf } from './reach.ts';

const four = layoutOf(twoHumbuckersFourKnobs());
const two = layoutOf(twoSinglesThreePosition());
const three = layoutOf(oneThreeConductorHumbucker());

describe('reachOf', () => {
  it.each([
    [four, 'jack.tip', 'outside'],
    [four, 'strings.metal', 'outside'],
    [two, 'controlPlate.metal', 'outside'],
    [two, 'neckCover.metal', 'outside'],
    [four, 'neckVolume.3', 'cavity'],
    [four, 'neckVolume.case', 'cavity'],
    [four, 'selector.C', 'cavity'],
    [four, 'neckLink.joint', 'cavity'],
    [four, 'neckPlate.metal', 'pickup-out'],
    [two, 'bridgeCoil.start', 'pickup-out'],
    [four, 'neckSlug.finish', 'never'],
    [four, 'neckVolume.inside', 'never'],
    [four, 'neckCap.a', 'never'],
    [four, 'jackHot@from', 'cavity'],
    [four, 'jackHot@to', 'cavity'],
    [four, 'neckHot@to', 'cavity'],
    [four, 'neckHot@from', 'never'],
    [four, 'neckCapHotLeg@to', 'cavity'],
    [four, 'neckCapHotLeg@from', 'never'],
    [two, 'volumeMount@to', 'never'],
    [two, 'bridgePlateLink@to', 'pickup-out'],
    [three, 'factoryJoint@to', 'never'],
    [three, 'middleLead@to', 'cavity'],
    [four, 'gone.1', 'never'],
    [four, 'gone@to', 'never'],
  ])('%# %s', (layout, node, reach) => {
    expect(reachOf(layout, node)).toBe(reach);
  });
});
