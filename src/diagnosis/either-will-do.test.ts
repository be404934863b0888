import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { Edit } from '../circuit/edit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { switchSettings } from '../circuit/setting.ts';
import { faultsOf } from '../faults/index.ts';
import { soundOf } from '../readings/sound.ts';
import { View } from '../readings/view.ts';

/** Pairs of faults of a wiring that one remedy mends on either side, and how the guitar sounds with given edits. */
function sidesOf(id: string) {
  const wiring = startingWirings.find((one) => one.id === id);
  if (!wiring) throw new Error(`no wiring ${id}`);
  const circuit = wiring.build();
  const layout = layoutOf(circuit);
  const either = faultsOf(circuit).filter(({ remedy }) => remedy.key.includes(' or '));
  const pairs = either.flatMap((one, at) =>
    either
      .slice(at + 1)
      .filter((other) => other.remedy.key === one.remedy.key)
      .map((other) => [one, other] as const),
  );
  const sound = (edits: readonly Edit[]) =>
    switchSettings(circuit).map((setting) => soundOf(new View(layout, setting, edits), null));
  return { either, pairs, sound };
}

const editsOf = (fault: { readonly variants: readonly { readonly edits: readonly Edit[] }[] }) =>
  fault.variants[0]?.edits ?? [];

describe('where turning either of two mends it', () => {
  it.each([
    ['two-wide-singles-four-knobs', 2],
    ['two-humbuckers-four-knobs', 1],
    ['one-humbucker-one-knob', 2],
  ])('%s: both turned sound as intended, one alone does not', (id, count) => {
    const { pairs, sound } = sidesOf(id);
    expect(pairs).toHaveLength(count);
    const intended = sound([]);
    for (const [one, other] of pairs) {
      const both = sound([...editsOf(one), ...editsOf(other)]);
      intended.forEach((was, at) => {
        for (const key of ['level', 'high'] as const)
          expect(both[at]?.[key]).toBeCloseTo(was[key], 3);
      });
      const alone = sound(editsOf(one));
      expect(alone.some((now, at) => now.level < 0.7 * (intended[at]?.level ?? 0))).toBe(true);
      expect(one.remedy).toEqual(other.remedy);
    }
  });

  it('is not said of three coils', () => {
    expect(sidesOf('three-singles-five-position').either).toEqual([]);
  });
});
