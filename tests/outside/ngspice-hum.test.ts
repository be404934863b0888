import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { suspectsOf } from '../../src/faults/index.ts';
import { usualLoad } from '../../src/readings/audio.ts';
import { soundOf } from '../../src/readings/sound.ts';
import { straysOf } from '../../src/readings/strays.ts';
import { View } from '../../src/readings/view.ts';
import { type ResponseJob, responses, spiceNetlist } from '../oracle/index.ts';
import { Dice } from '../simulated/dice.ts';
import { everySetting } from './settings.ts';

// The room's voltage itself is put into ngspice's circuit, capacitances and hand with it: no reciprocity there.
describe('hum of electric fields, against ngspice', { timeout: 60_000 }, () => {
  it.each(startingWirings.map(({ id, build }) => [id, build()] as const))('%s', (id, circuit) => {
    const layout = layoutOf(circuit);
    const dice = new Dice(`${id} hum`);
    const faults = suspectsOf(circuit);
    const across = ['jack.tip', 'jack.sleeve'] as const;
    const nameOf = (node: number) => layout.nodes[node] ?? 'body';
    const cases = Array.from({ length: 6 }, (_, at) => ({
      setting: { ...dice.pick(everySetting(circuit)), plug: 'in' as const },
      touched: at % 2 ? 'strings.metal' : null,
      edits: at < 2 ? [] : dice.pick(faults).edits,
    }));
    const jobs = cases.map(({ setting, edits, touched }): ResponseJob => {
      const { loads, fromRoom } = straysOf(layout, touched);
      return {
        netlist: spiceNetlist(circuit, setting, edits),
        beyond: ['body', 'room'],
        drive: { held: ['room', 'jack.sleeve'] },
        across,
        loads: [
          { at: across, ...usualLoad },
          ...loads.map((load) => {
            const { from, to, ohms, farads } = load;
            const end = fromRoom.includes(load) ? 'room' : nameOf(to);
            return {
              at: [nameOf(from), end] as const,
              ...(Number.isFinite(ohms) && { ohms }),
              ...(farads > 0 && { farads }),
            };
          }),
        ],
      };
    });
    const theirs = responses(jobs, [2000]);
    cases.forEach(({ setting, edits, touched }, at) => {
      const { electric } = soundOf(new View(layout, setting, edits), touched);
      const expected = theirs[at]!.real[0]! ** 2 + theirs[at]!.imaginary[0]! ** 2;
      // 0.01 dB; below a millionth of a millionth of the room nothing is heard, and a hundredth of that is what the simulator's ties of
      // 1e12 ohm bring to a jack that nothing else reaches.
      if (Math.max(electric, expected) > 1e-14)
        expect(
          Math.abs(10 * Math.log10(electric / expected)),
          JSON.stringify(cases[at]),
        ).toBeLessThan(0.01);
    });
  });
});
