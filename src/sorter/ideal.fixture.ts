import type { SeenLead, SeenPickup } from '../circuit/seen-pickup.ts';
import { ohms } from '../circuit/units.ts';
import type { Ask, Reading, Seen } from '../readings/reading.ts';
import { type SortEvidence, type Sorting, sortLeads } from './sort.ts';

/** A pickup by hand: each lead's node; coils between two nodes, with the plus end second. No circuit solver is in it. */
export interface IdealPickup {
  readonly seen: SeenPickup;
  /** Node of each lead, by lead id; of metal by `plate` and `cover`. */
  readonly nodes: Readonly<Record<string, string>>;
  readonly coils: Readonly<Record<'a' | 'b', readonly [minus: string, plus: string, ohms: number]>>;
}

export const lead = (id: string, what: SeenLead['what'] = 'wire'): SeenLead => ({
  id,
  colour: id,
  what,
});

/** Walks from node to node along the coils, each used once: ohms and signed share of each coil's EMF; null where there is no way. */
function walk({ coils }: IdealPickup, from: string, to: string) {
  if (from === to) return { ohms: 0, a: 0, b: 0 };
  const steps = (['a', 'b'] as const).flatMap((id) => {
    const [minus, plus, r] = coils[id];
    if (!Number.isFinite(r)) return [];
    return [
      { id, from: minus, to: plus, ohms: r, sign: -1 },
      { id, from: plus, to: minus, ohms: r, sign: 1 },
    ];
  });
  for (const first of steps.filter((step) => step.from === from)) {
    if (first.to === to) return { ohms: first.ohms, a: 0, b: 0, [first.id]: first.sign };
    for (const second of steps)
      if (second.id !== first.id && second.from === first.to && second.to === to)
        return {
          ohms: first.ohms + second.ohms,
          a: 0,
          b: 0,
          [first.id]: first.sign,
          [second.id]: second.sign,
        };
  }
  return null;
}

export function answerOf(pickup: IdealPickup, ask: Ask): Seen {
  const node = (point: string) =>
    pickup.nodes[point.replace(/End[.]joint$|[.]metal$/, '')] as string;
  if (!('red' in ask)) throw new Error(`not asked of a pickup: ${ask.kind}`);
  const way = walk(pickup, node(ask.red), node(ask.black));
  if (ask.kind === 'ohms') return { kind: 'ohms', ohms: way ? ohms(way.ohms + 0.3) : 'open' };
  if (ask.kind === 'beep') return { kind: 'beep', beeps: way !== null && way.ohms < 20 };
  if (ask.kind !== 'tap') throw new Error(`not asked of a pickup: ${ask.kind}`);
  const swing =
    (way?.[ask.coil as 'a' | 'b'] ?? 0) +
    (pickup.seen.coils === 1 && ask.coil === 'a' ? (way?.b ?? 0) : 0);
  return { kind: 'tap', swing: swing > 0 ? 'plus' : swing < 0 ? 'minus' : 'nothing' };
}

export const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

export const reading = (at: number, ask: Ask, seen: Seen): Reading => ({
  id: `r${at}`,
  ask,
  seen,
  at: '2026-01-01T00:00:00Z',
  round: 0,
});

/** Sorts from first to last reading; `wrong` may replace an answer. */
export function sortThrough(
  pickup: IdealPickup,
  wrong: (ask: Ask, at: number) => Seen | undefined = () => undefined,
): { readonly sorting: Sorting; readonly evidence: SortEvidence } {
  let evidence: SortEvidence = { seen: pickup.seen, meter, readings: [], refused: [] };
  let sorting = sortLeads(evidence);
  while (sorting.state === 'asking' && evidence.readings.length < 25) {
    const ask = sorting.next[0]?.ask;
    if (!ask) break;
    const at = evidence.readings.length;
    const seen = wrong(ask, at) ?? answerOf(pickup, ask);
    evidence = { ...evidence, readings: [...evidence.readings, reading(at, ask, seen)] };
    sorting = sortLeads(evidence);
  }
  return { sorting, evidence };
}
