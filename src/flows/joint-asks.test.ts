import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { twoHumbuckersFourKnobs } from '../circuit/catalog/two-humbuckers-four-knobs.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { restingSetting } from '../circuit/setting.ts';
import { asksAtJoint } from './joint-asks.ts';

const circuit = twoHumbuckersFourKnobs();
const setting = restingSetting(circuit);
const pairs = (joint: string) =>
  asksAtJoint(circuit, joint, setting).ohms.map(({ to, ask }) => [to, ask.red, ask.black]);

describe('what can be read at a joint', () => {
  it('is through it, to the sleeve and to the tip, from the bare end of its lead', () =>
    expect(pairs('neckHot@to')).toEqual([
      ['across', 'neckHot@to', 'neckVolume.3'],
      ['sleeve', 'neckHot@to', 'jack.sleeve'],
      ['tip', 'neckHot@to', 'jack.tip'],
    ]));

  it('names no reading twice on the lugs of the jack', () =>
    expect(pairs('jackHot@to').map(([to]) => to)).toEqual(['across', 'sleeve']));

  it('is nothing inside a pickup, neither for probes nor for eyes', () =>
    expect(asksAtJoint(circuit, 'neckHot@from', setting)).toEqual({ ohms: [], look: null }));

  it('puts no probe out of reach, and looks at every joint that can be seen, in every starting wiring', () => {
    for (const { build } of startingWirings) {
      const wiring = build();
      const layout = layoutOf(wiring);
      const rest = restingSetting(wiring);
      for (const lead of wiring.leads)
        for (const end of ['from', 'to'] as const) {
          const { ohms, look } = asksAtJoint(wiring, `${lead.id}@${end}`, rest);
          for (const { ask } of ohms) {
            expect(reachOf(layout, ask.red), ask.red).not.toBe('never');
            expect(reachOf(layout, ask.black), ask.black).not.toBe('never');
            expect(ask.red).not.toBe(ask.black);
          }
          if (ohms.length > 0 && lead.kind === 'wire') expect(look?.at).toBe(`${lead.id}@${end}`);
        }
    }
  });
});
