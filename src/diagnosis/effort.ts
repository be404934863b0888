import type { Setting } from '../circuit/circuit.ts';
import { EVERYWHERE } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { type Seconds, seconds } from '../circuit/units.ts';
import type { Ask } from '../readings/reading.ts';

/** Seconds at the bench (estimates of ours, common practice, no source): what a reading costs from where the person stands now. */
const COST = {
  ohms: 6,
  beep: 4,
  turn: 14,
  flex: 12,
  tap: 15,
  farads: 20,
  listen: 25,
  touch: 10,
  hum: 30,
  look: 5,
  pole: 12,
  switch: 2,
  knob: 2,
  /** A clip on the plug or on outside metal, a tip on a lug, a tip held on a wire's bare end. */
  probeOutside: 2,
  probeLug: 4,
  probeWire: 5,
  plug: 15,
  /** The meter's dial or button, between ohms and the beep. */
  dial: 3,
  /** Unsolder one end and put it back afterwards. */
  lift: 90,
  /** Screws of the pickup and its ring. */
  pickupOut: 120,
  /** Strip a taped joint and tape it again. */
  splice: 20,
} as const;

/** Seconds from the last ask (null at the start) to having this one answered. */
export function effortOf(layout: Layout, ask: Ask, last: Ask | null): Seconds {
  let cost: number = COST[ask.kind];
  if (ask.kind === 'flex' && ask.site === EVERYWHERE) cost += COST.flex;
  if (last && (ask.kind === 'beep') !== (last.kind === 'beep')) cost += COST.dial;
  const before = last?.setting;
  cost += moves(before, ask.setting);
  for (const end of ['red', 'black'] as const) {
    const node = end in ask ? (ask as { red: string; black: string })[end] : undefined;
    if (node === undefined) continue;
    const same = last && end in last && (last as { red: string; black: string })[end] === node;
    const reach = reachOf(layout, node);
    if (!same)
      cost +=
        reach === 'outside'
          ? COST.probeOutside
          : node.includes('@')
            ? COST.probeWire
            : COST.probeLug;
    if (reach === 'pickup-out') cost += COST.pickupOut;
    if (node.endsWith('.joint')) cost += COST.splice;
  }
  return seconds(cost);
}

function moves(from: Setting | undefined, to: Setting): number {
  let cost = 0;
  for (const [id, position] of Object.entries(to.positions))
    if (from ? from.positions[id] !== position : false) cost += COST.switch;
  for (const [id, figure] of Object.entries(to.knobs))
    if ((from?.knobs[id] ?? 10) !== figure) cost += COST.knob;
  if ((from?.plug ?? 'out') !== to.plug) cost += COST.plug;
  for (const joint of to.lifted) if (!from?.lifted.includes(joint)) cost += COST.lift;
  return cost;
}
