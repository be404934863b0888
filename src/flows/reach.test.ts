import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { restingSetting } from '../circuit/setting.ts';
import { jointsNear, needsOpenGuitar } from './reach.ts';

const circuit = startingWirings[0]!.build();
const setting = restingSetting(circuit);
const ohmsAt = (red: string, black: string, lifted: readonly string[] = []) =>
  ({ kind: 'ohms', red, black, setting: { ...setting, lifted } }) as const;

describe('what needs the guitar opened', () => {
  it.each([
    ['the jack', ohmsAt('jack.tip', 'jack.sleeve'), false],
    ['the strings against the jack', ohmsAt('strings.metal', 'jack.sleeve'), false],
    ['a pot lug', ohmsAt('bridgeVolume.3', 'jack.sleeve'), true],
    ['the jack with an end unsoldered', ohmsAt('jack.tip', 'jack.sleeve', ['bridgeHot@to']), true],
    ['listening', { kind: 'listen', setting } as const, false],
    ['looking at a joint', { kind: 'look', at: 'bridgeHot@to', setting } as const, true],
  ])('%s', (_what, ask, open) => expect(needsOpenGuitar(circuit, ask)).toBe(open));
});

describe('the joints near a reading', () => {
  it('are those on the two lugs', () => {
    const sites = jointsNear(circuit, ohmsAt('jack.tip', 'jack.sleeve')).map(({ site }) => site);
    expect(sites).toEqual(['jackHot@to', 'jackGround@to']);
  });
  it('hold no end that is sealed inside a part', () => {
    const near = jointsNear(circuit, ohmsAt('bridgeSlug.finish', 'bridgeVolume.3'));
    expect(near.map(({ site }) => site)).toEqual(['bridgeHot@to', 'bridgeCapHotLeg@to']);
  });
  it('are none for an ask without probes', () =>
    expect(jointsNear(circuit, { kind: 'listen', setting })).toEqual([]));
});
