import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../catalog/one-humbucker-one-knob.ts';
import { twoPickupsSharedControls } from '../catalog/two-pickups-shared-controls.ts';
import { checkCircuit } from '../check.ts';
import type { Circuit } from '../circuit.ts';
import { CircuitError } from '../errors.ts';
import { type Act, afterAct } from './act.ts';
import { leadsAt } from './leads.ts';
import { tray } from './tray/index.ts';

const base = twoPickupsSharedControls();
const humbucker = oneHumbuckerOneKnob();
const done = (circuit: Circuit, ...acts: readonly Act[]) => acts.reduce(afterAct, circuit);
const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);
const lead = (circuit: Circuit, id: string) => circuit.leads.find((one) => one.id === id);
const title = (circuit: Circuit, id: string) => circuit.parts.find((one) => one.id === id)?.title;

describe('a part', () => {
  it('is taken away with its leads, and nothing else goes', () => {
    const next = afterAct(base, { do: 'remove', part: 'toneCap' });
    expect(ids(base.parts).filter((id) => !ids(next.parts).includes(id))).toEqual(['toneCap']);
    expect(ids(base.leads).filter((id) => !ids(next.leads).includes(id))).toEqual([
      'capHotLeg',
      'capToneLeg',
    ]);
    expect(ids(base.parts)).toContain('toneCap');
  });

  it('of a pickup takes the pickup with it, a pot its switch', () => {
    const [first] = humbucker.pickups;
    const next = afterAct(humbucker, { do: 'remove', part: first?.plate ?? '' });
    expect(next.pickups).toEqual([]);
    expect(next.parts.filter(({ kind }) => kind === 'coil')).toEqual([]);
    const pot = tray.find(({ id }) => id === 'pot')!.make(base, { back: 'push-pull' });
    const pulled = done(base, { do: 'add', ...pot }, { do: 'remove', part: pot.parts[0]!.id });
    expect(pulled).toEqual(base);
  });

  it('is called otherwise, and what belongs to it follows', () => {
    const next = afterAct(humbucker, {
      do: 'rename',
      thing: humbucker.pickups[0]!.id,
      title: '  front   pickup ',
    });
    expect(next.pickups[0]?.title).toBe('front pickup');
    expect(next.pickups[0]?.coils.map((id) => title(next, id))).toEqual([
      "front pickup's screw coil",
      "front pickup's slug coil",
    ]);
    const single = afterAct(base, { do: 'rename', thing: 'neckPickup', title: 'front pickup' });
    expect(title(single, 'neckCoil')).toBe('front pickup');
  });

  it.each<[string, Act, string]>([
    [
      'a title that another has',
      { do: 'rename', thing: 'tone', title: 'Volume' },
      'there is a volume already',
    ],
    [
      'no title',
      { do: 'rename', thing: 'tone', title: '  ' },
      'tone: type a name, it is empty now',
    ],
    [
      'too long a title',
      { do: 'rename', thing: 'tone', title: 'x'.repeat(201) },
      'tone: at most 200 characters, got 201',
    ],
    ['a part that is not there', { do: 'remove', part: 'gone' }, 'there is no part called gone'],
    [
      'a second jack',
      {
        do: 'add',
        parts: [{ kind: 'jack', id: 'jack2', title: 'second jack', ring: false }],
        leads: [],
      },
      'this guitar has its output jack already: change that one, or take it away first',
    ],
  ])('is refused %s', (_, act, sentence) => {
    expect(() => afterAct(base, act)).toThrow(CircuitError);
    expect(() => afterAct(base, act)).toThrow(sentence);
  });

  it('that loses lugs loses the leads on them', () => {
    const jack = { kind: 'jack', id: 'jack', title: 'output jack', ring: true } as const;
    const ringed = done(
      base,
      { do: 'change', part: jack },
      { do: 'join', lead: 'battery', from: 'jack.ring', to: 'volume.case' },
    );
    expect(leadsAt(ringed, 'jack.ring')).toHaveLength(1);
    const mono = afterAct(ringed, { do: 'change', part: { ...jack, ring: false } });
    expect(ids(mono.leads)).toEqual(ids(base.leads));
  });
});

describe('a lead', () => {
  it.each([
    ['a wire', 'volume.3', 'tone.3', { kind: 'wire', from: 'volume.3', to: 'tone.3' }],
    [
      'a pickup’s own, from the coil',
      'tone.1',
      'neckCoil.start',
      { kind: 'pickup', from: 'neckCoil.start', to: 'tone.1' },
    ],
    [
      'a pickup’s own, from its metal',
      'tone.1',
      'neckPlate.metal',
      { kind: 'pickup', from: 'neckPlate.metal', to: 'tone.1' },
    ],
    [
      'a wire on a leg that is soldered already',
      'tone.1',
      'toneCap.a',
      { kind: 'wire', from: 'tone.1', to: 'toneCap.a' },
    ],
    [
      'a wire from the strings',
      'strings.metal',
      'jack.sleeve',
      { kind: 'wire', from: 'strings.metal', to: 'jack.sleeve' },
    ],
  ])('is %s by what it joins', (_, from, to, expected) => {
    const next = afterAct(base, { do: 'join', lead: 'drawn', from, to });
    expect(lead(next, 'drawn')).toEqual({ id: 'drawn', ...expected });
    checkCircuit(next);
  });

  it('between sheet metal and a case is contact by mounting, and may be called a wire', () => {
    const plate = {
      kind: 'metal',
      id: 'sheet',
      title: 'control plate',
      role: 'control-plate',
      outside: true,
    } as const;
    const next = done(
      base,
      { do: 'add', parts: [plate], leads: [] },
      { do: 'join', lead: 'drawn', from: 'sheet.metal', to: 'volume.case' },
    );
    expect(lead(next, 'drawn')).toMatchObject({
      kind: 'mount',
      from: 'volume.case',
      to: 'sheet.metal',
    });
    expect(lead(afterAct(next, { do: 'kind', lead: 'drawn', kind: 'wire' }), 'drawn')?.kind).toBe(
      'wire',
    );
  });

  it('is cut, gets a colour and loses it, is soldered elsewhere', () => {
    expect(ids(afterAct(base, { do: 'cut', lead: 'jackHot' }).leads)).not.toContain('jackHot');
    const red = afterAct(base, { do: 'colour', lead: 'jackHot', colour: ' red  stripe ' });
    expect(lead(red, 'jackHot')?.colour).toBe('red stripe');
    expect(lead(afterAct(red, { do: 'colour', lead: 'jackHot', colour: '' }), 'jackHot')).toEqual(
      lead(base, 'jackHot'),
    );
    expect(
      lead(afterAct(base, { do: 'solder', joint: 'neckHot@to', lug: 'volume.2' }), 'neckHot')?.to,
    ).toBe('volume.2');
  });

  it.each<[string, Act, string]>([
    [
      'to itself',
      { do: 'join', lead: 'x', from: 'volume.1', to: 'volume.1' },
      'a lead has two ends: choose another lug',
    ],
    [
      'twice',
      { do: 'join', lead: 'x', from: 'jack.tip', to: 'volume.2' },
      'these two lugs are joined already',
    ],
    [
      'to a lug that is not there',
      { do: 'join', lead: 'x', from: 'jack.tip', to: 'volume.4' },
      'there is no lug volume.4 in this guitar',
    ],
    [
      'by its end inside the pickup',
      { do: 'solder', joint: 'neckHot@from', lug: 'volume.2' },
      'this end is inside the part: only the other end can be soldered elsewhere',
    ],
    [
      'that is a leg, as a wire',
      { do: 'kind', lead: 'capHotLeg', kind: 'wire' },
      'this lead comes out of the tone capacitor and stays its own',
    ],
    ['that is not there', { do: 'cut', lead: 'gone' }, 'there is no lead called gone'],
  ])('is refused %s', (_, act, sentence) => {
    expect(() => afterAct(base, act)).toThrow(CircuitError);
    expect(() => afterAct(base, act)).toThrow(sentence);
  });
});
