import { lugTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import { kindOf } from '../circuit/parts/index.ts';
import type { Part } from '../circuit/parts/part.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily } from './fault.ts';

/** Every two occupied lugs of one part; a case or frame is not mistaken for a lug. */
function pairs(part: Part, layout: Layout): readonly (readonly [string, string])[] {
  if (part.kind !== 'pot' && part.kind !== 'switch' && part.kind !== 'jack') return [];
  const lugs = kindOf(part)
    .lugs(part)
    .filter((lug) => lug !== 'case' && lug !== 'frame')
    .map((lug) => `${part.id}.${lug}`);
  return lugs
    .flatMap((a, i) => lugs.slice(i + 1).map((b) => [a, b] as const))
    .filter(([a, b]) => layout.jointsAt.has(a) && layout.jointsAt.has(b));
}

export const exchanges: FaultFamily = {
  name: 'exchanged leads',
  share: 0.1,
  reason:
    "two leads of one part in each other's place: a pot wired from the wrong side, tip and sleeve of the jack, two pickups on a selector",
  list(circuit, layout) {
    return circuit.parts.flatMap((part) =>
      pairs(part, layout).map(
        ([a, b]): Fault => ({
          id: `exchange:${a}~${b}`,
          family: 'exchanged leads',
          sites: [part.id],
          weight: part.kind === 'jack' ? 2 : 1,
          sentence: faultWords().whatBelongsOnLugAndWhatBelongs(
            lugTitle(layout, a),
            lugTitle(layout, b),
          ),
          remedy: {
            key: `swap:${a}~${b}`,
            title: faultWords().exchangeTheLeadsOnLugAndLug2(
              lugTitle(layout, a),
              lugTitle(layout, b),
            ),
            steps: [faultWords().markBothLeads, faultWords().unsolderThemAndPutEachOnThe],
            proof: faultWords().theReadingsThatWereOffAre,
          },
          variants: [{ edits: [{ op: 'exchange', lugs: [a, b] }], share: 1 }],
        }),
      ),
    );
  },
};
