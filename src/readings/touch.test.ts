import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';
import { jackOf } from './points.ts';
import type { Ask } from './reading.ts';

const two = new Guitar('two-singles-three-position');
const touched = (metal: string, edits: readonly Edit[] = []) => {
  const ask: Ask = { kind: 'touch', metal, setting: { ...two.at('bridge'), plug: 'in' } };
  const chances = two.chances(ask, edits);
  expect(Object.values(chances).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  return Object.entries(chances).sort((x, y) => y[1] - x[1])[0]![0];
};

// The touch test of the trade: grounded metal shields, floating metal does little, hot metal feeds hum in (field figure).
describe('touching', () => {
  it('grounded strings takes hum away', () => {
    expect(touched('strings.metal')).toBe('down');
  });
  it('strings whose ground wire is open changes little', () => {
    expect(touched('strings.metal', [{ op: 'open', site: 'stringGround@to' }])).toBe('same');
  });
  it('strings over a poor but present ground still helps', () => {
    expect(
      touched('strings.metal', [{ op: 'resist', site: 'stringGround@to', ohms: ohms(300) }]),
    ).toBe('down');
  });
  // An open position hums more than a pickup does, and less under a hand: common practice, no source.
  it('grounded strings takes hum away where nothing is joined to the output, too', () => {
    expect(touched('strings.metal', [{ op: 'open', site: 'bridgeHot' }])).toBe('down');
  });
  it('the plate is told from the strings: only one of them has lost its ground', () => {
    const torn: readonly Edit[] = [{ op: 'open', site: 'stringGround' }];
    expect(touched('controlPlate.metal', torn)).toBe('down');
    expect(touched('strings.metal', torn)).toBe('same');
  });
  it('strings tied to the hot side brings hum in: tip and sleeve exchanged', () => {
    expect(touched('strings.metal', [{ op: 'exchange', lugs: ['jack.tip', 'jack.sleeve'] }])).toBe(
      'up',
    );
  });
  it('a cover that sits on the hot side brings hum in', () => {
    expect(
      touched('neckCover.metal', [{ op: 'land', joint: 'neckCoverWire@to', lug: 'selector.A1' }]),
    ).toBe('up');
  });
});

describe('a guitar without a jack', () => {
  it('is told so', () => {
    const none = new Guitar('one-humbucker-one-knob', (circuit) => ({
      ...circuit,
      parts: circuit.parts.filter(({ kind }) => kind !== 'jack'),
      leads: circuit.leads.filter((lead) => !`${lead.from}${lead.to}`.includes('jack.')),
    }));
    expect(() => jackOf(none.layout)).toThrow(
      'this guitar has no output jack: add one to say where the sound comes out',
    );
  });
});
