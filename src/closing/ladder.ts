import type { Edit } from '../circuit/edit.ts';
import type { Hypothesis } from '../diagnosis/hypothesis.ts';

/**
 * The sizes of one fault from the least effect to the largest. A resistance read between two points rises and falls with every
 * resistance in the network (Rayleigh's monotonicity law), so a reading that shows one size shows all larger ones.
 */
export type Ladder = readonly Hypothesis[];

/** Every hypothesis in its ladder; faults without a size are ladders of one. */
export function laddersOf(hypotheses: readonly Hypothesis[]): readonly Ladder[] {
  const ladders = new Map<string, { step: number; hypothesis: Hypothesis }[]>();
  for (const hypothesis of hypotheses) {
    const rung = rungOf(hypothesis);
    const key = `${hypothesis.faults[0]?.id} ${rung?.key ?? hypothesis.index}`;
    const list = ladders.get(key) ?? [];
    ladders.set(key, list);
    list.push({ step: rung?.effect ?? 0, hypothesis });
  }
  return [...ladders.values()].map((list) =>
    list.sort((x, y) => x.step - y.step).map(({ hypothesis }) => hypothesis),
  );
}

function rungOf({ edits, loose }: Hypothesis): { key: string; effect: number } | null {
  const [edit] = edits as readonly [Edit];
  if (edits.length !== 1) return null;
  if (edit.op === 'resist') return { key: `resist ${edit.site}`, effect: edit.ohms };
  if (edit.op === 'bridge') return { key: `bridge ${edit.a} ${edit.b}`, effect: -edit.ohms };
  if (edit.op === 'scale' && loose)
    return { key: `scale ${edit.part}`, effect: Math.abs(Math.log(edit.factor)) };
  return null;
}
