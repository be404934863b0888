import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf, nodeAt, siteAt } from '../circuit/netlist.ts';
import { switchSettings } from '../circuit/setting.ts';
import { wire } from '../circuit/wired.ts';
import { solveDc } from '../solver/index.ts';
import { landedElsewhere } from './elsewhere.ts';
import { faultsOf } from './index.ts';
import { pointsOf } from './points.ts';
import { straysOf } from './strays.ts';

const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);

describe.each(startingWirings.map(({ id, build }) => [id, build()] as const))(
  'what is no slip of a list, on %s',
  (_id, circuit) => {
    const layout = layoutOf(circuit);
    const known = faultsOf(circuit);
    const { of } = pointsOf(layout);

    it('names each point once, by a lug that a wire joins to all others of it', () => {
      const { lugs } = pointsOf(layout);
      expect(new Set(lugs.map(of)).size).toBe(lugs.length);
      const { nodeCount, a, b, ohms } = wire(layout, switchSettings(circuit)[0]!, []);
      const healthy = solveDc({ nodes: nodeCount, a, b, ohms });
      for (const lug of layout.jointsAt.keys())
        for (const name of lugs)
          if (of(lug) === of(name))
            expect(healthy.resistance(nodeAt(layout, lug), nodeAt(layout, name))).toBe(0);
    });

    it('has paths that no modelled fault makes, weights that sum to 1, and sizes that share them out', () => {
      const strays = straysOf(layout, known);
      if (strays.length > 0) expect(sum(strays.map(({ weight }) => weight))).toBeCloseTo(1, 9);
      const bridged = known.flatMap(({ variants }) =>
        variants.flatMap(({ edits }) => edits.filter(({ op }) => op === 'bridge')),
      );
      for (const { id, variants } of strays) {
        expect(sum(variants.map(({ share }) => share))).toBeCloseTo(1, 9);
        for (const { edits } of variants)
          for (const edit of edits)
            if (edit.op === 'bridge')
              expect(
                bridged.some(
                  (one) =>
                    one.op === 'bridge' &&
                    [of(one.a), of(one.b)].sort().join() === [of(edit.a), of(edit.b)].sort().join(),
                ),
                id,
              ).toBe(false);
      }
    });

    it('has leads on other points than their own, each mended where a bad joint of that lead is', () => {
      const astray = landedElsewhere(layout, known);
      expect(sum(astray.map(({ weight }) => weight))).toBeCloseTo(1, 9);
      const remakes = new Set(known.map(({ remedy }) => remedy.key));
      for (const { id, remedy, variants } of astray) {
        expect(remakes.has(remedy.key), id).toBe(true);
        const [edit] = variants[0]!.edits;
        if (edit?.op !== 'land') throw new Error(`${id} lands nothing`);
        siteAt(layout, edit.joint);
        nodeAt(layout, edit.lug);
      }
    });
  },
);
