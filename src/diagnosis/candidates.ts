import type { Setting } from '../circuit/circuit.ts';
import { EVERYWHERE, type NodeName } from '../circuit/edit.ts';
import { metalOf } from '../circuit/metal.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import { contacts } from '../circuit/parts/switch.ts';
import { type Reach, reachOf } from '../circuit/reach.ts';
import { potsOf, switchSettings, withKnob } from '../circuit/setting.ts';
import { jackOf } from '../readings/points.ts';
import type { Ask } from '../readings/reading.ts';
import { View } from '../readings/view.ts';
import { askKey } from './ask-key.ts';
import type { Access } from './assessment.ts';

/** Above this many switch settings only those that differ from rest by one switch are offered. */
const MANY_SETTINGS = 8;

/** Every reading that could be asked of this guitar, from the jack inward. Which is worth asking is decided elsewhere. */
export function candidates(layout: Layout, access: Access): readonly Ask[] {
  const asks: Ask[] = [];
  const settings = offeredSettings(layout);
  const { tip, sleeve } = jackOf(layout);
  const coils = layout.circuit.parts.filter((part) => part.kind === 'coil');
  for (const setting of settings) {
    asks.push({ kind: 'ohms', red: tip, black: sleeve, setting });
    for (const pot of potsOf(layout.circuit)) {
      asks.push({ kind: 'ohms', red: tip, black: sleeve, setting: withKnob(setting, pot.id, 0) });
      if (moves(layout, setting, pot.id, tip, sleeve))
        asks.push({ kind: 'turn', pot: pot.id, red: tip, black: sleeve, setting });
    }
    for (const coil of coils)
      asks.push({ kind: 'tap', coil: coil.id, red: tip, black: sleeve, setting });
    if (access === 'closed') asks.push({ kind: 'listen', setting: { ...setting, plug: 'in' } });
  }
  const rest = settings[0] as Setting;
  for (const part of layout.circuit.parts)
    if (part.kind === 'metal' && part.outside) {
      asks.push({ kind: 'ohms', red: `${part.id}.metal`, black: sleeve, setting: rest });
      asks.push({ kind: 'touch', metal: `${part.id}.metal`, setting: { ...rest, plug: 'in' } });
    }
  for (const coil of coils) asks.push({ kind: 'pole', coil: coil.id, setting: rest });
  if (access === 'open') asks.push(...inside(layout, settings));
  return [...new Map(asks.map((ask) => [askKey(ask), ask])).values()];
}

/** Whether the healthy reading changes as the knob turns: a tone control behind its capacitor does not show in ohms. */
function moves(
  layout: Layout,
  setting: Setting,
  pot: string,
  red: NodeName,
  black: NodeName,
): boolean {
  const view = new View(layout, setting, []);
  const at = (figure: number) =>
    view
      .in(withKnob(setting, pot, figure))
      .dc.resistance(nodeAt(layout, red), nodeAt(layout, black));
  const [low, middle, high] = [at(0), at(5), at(10)];
  return Math.max(low, middle, high) > 1.1 * Math.min(low, middle, high) + 1;
}

function offeredSettings(layout: Layout): readonly Setting[] {
  const all = switchSettings(layout.circuit);
  if (all.length <= MANY_SETTINGS) return all;
  const rest = all[0] as Setting;
  return all.filter(
    (setting) =>
      Object.keys(rest.positions).filter((id) => setting.positions[id] !== rest.positions[id])
        .length <= 1,
  );
}

function inside(layout: Layout, settings: readonly Setting[]): readonly Ask[] {
  const asks: Ask[] = [];
  const { tip, sleeve } = jackOf(layout);
  const rest = settings[0] as Setting;
  const within = (node: NodeName): boolean => {
    const reach: Reach = reachOf(layout, node);
    return reach === 'outside' || reach === 'cavity' || reach === 'pickup-out';
  };
  const seen = new Set<string>();
  const pairs: [NodeName, NodeName][] = [];
  const offer = (red: NodeName, black: NodeName): void => {
    const key = [red, black].sort().join('~');
    if (red === black || seen.has(key) || !within(red) || !within(black)) return;
    seen.add(key);
    pairs.push([red, black]);
  };
  const { circuit, jointsAt } = layout;
  for (const lead of circuit.leads) {
    offer(lead.from, lead.to);
    offer(lead.from, `${lead.id}@from`);
    offer(lead.to, `${lead.id}@to`);
    offer(`${lead.id}@from`, `${lead.id}@to`);
    offer(`${lead.id}@to`, sleeve);
  }
  for (const node of layout.nodes)
    if (!node.includes('@') && jointsAt.has(node)) {
      offer(node, sleeve);
      offer(node, tip);
    }
  // Across a coil, a pickup and a capacitor the probes stand on the bare ends of its leads.
  for (const part of circuit.parts) {
    const ends = circuit.leads
      .filter((lead) => lead.kind !== 'wire' && lead.from.startsWith(`${part.id}.`))
      .map((lead) => `${lead.id}@to`);
    ends.forEach((end, at) => {
      for (const other of ends.slice(0, at)) offer(end, other);
    });
    if (part.kind === 'pot')
      for (const [a, b] of [
        ['1', '3'],
        ['1', '2'],
        ['2', '3'],
      ] as const)
        offer(`${part.id}.${a}`, `${part.id}.${b}`);
    if (part.kind === 'switch')
      for (const { a, b } of contacts(part)) offer(`${part.id}.${a}`, `${part.id}.${b}`);
  }
  for (const pickup of circuit.pickups) {
    const ends = circuit.leads
      .filter(
        (lead) =>
          lead.kind === 'pickup' && pickup.coils.some((id) => lead.from.startsWith(`${id}.`)),
      )
      .map((lead) => `${lead.id}@to`)
      // A joint made in the factory is not reached.
      .filter(within);
    ends.forEach((end, at) => {
      for (const other of ends.slice(0, at)) offer(end, other);
    });
    // With one lead lifted, the other end read against it is the pickup alone.
    for (const end of ends)
      for (const other of ends)
        if (end !== other)
          asks.push({ kind: 'ohms', red: end, black: other, setting: { ...rest, lifted: [end] } });
  }
  const acrossSwitch = (node: NodeName) =>
    layout.parts.get(node.split('.')[0] as string)?.kind === 'switch';
  for (const [red, black] of pairs)
    for (const setting of settings)
      if (setting === rest || acrossSwitch(red) || acrossSwitch(black))
        asks.push({ kind: 'ohms', red, black, setting });
  for (const part of circuit.parts) {
    if (part.kind === 'pot')
      for (const [a, b] of [
        ['2', '1'],
        ['2', '3'],
      ] as const)
        asks.push({
          kind: 'turn',
          pot: part.id,
          red: `${part.id}.${a}`,
          black: `${part.id}.${b}`,
          setting: rest,
        });
    if (part.kind === 'capacitor') {
      const leg = circuit.leads.find((lead) => lead.kind === 'leg' && lead.from === `${part.id}.a`);
      const other = circuit.leads.find(
        (lead) => lead.kind === 'leg' && lead.from === `${part.id}.b`,
      );
      if (leg && other) {
        const across = {
          red: `${leg.id}@to`,
          black: `${other.id}@to`,
          setting: { ...rest, lifted: [`${leg.id}@to`] },
        } as const;
        // With the leg off anyway, ohms tell a leak inside from a path beside it.
        asks.push({ kind: 'farads', part: part.id, ...across }, { kind: 'ohms', ...across });
      }
    }
  }
  for (const lead of circuit.leads)
    for (const end of lead.kind === 'wire' ? (['from', 'to'] as const) : (['to'] as const))
      if (lead.kind === 'mount' || within(`${lead.id}@${end}`))
        asks.push({ kind: 'look', at: `${lead.id}@${end}`, setting: rest });
  asks.push(...flexes(layout, settings));
  return asks;
}

/**
 * Wires moved part by part first, then one by one, with the probes where the signal comes out and on the strings' ground. All are moved
 * at once also with a probe on either side of each capacitor, through which no ohms come from the jack, and on each piece of metal.
 */
function flexes(layout: Layout, settings: readonly Setting[]): readonly Ask[] {
  const { tip, sleeve } = jackOf(layout);
  const strings = layout.circuit.parts.find(
    (part) => part.kind === 'metal' && part.role === 'strings',
  );
  const moved = [
    EVERYWHERE,
    ...layout.circuit.parts
      .filter((part) => [...layout.jointsAt.keys()].some((lug) => lug.startsWith(`${part.id}.`)))
      .map((part) => part.id),
    ...layout.circuit.leads.filter((lead) => lead.kind !== 'leg').map((lead) => lead.id),
  ];
  const [rest] = settings as [Setting];
  const { dc } = new View(layout, rest, []);
  const far = layout.circuit.parts.flatMap((part): (readonly [NodeName, NodeName])[] => {
    if (part.kind === 'capacitor')
      return layout.circuit.leads
        .filter(({ kind, from }) => kind === 'leg' && from.startsWith(`${part.id}.`))
        .map(({ id }): NodeName => `${id}@to`)
        .flatMap((leg) => [[tip, leg] as const, [leg, sleeve] as const]);
    const metal = metalOf(part);
    return metal === null || part === strings ? [] : [[metal, sleeve] as const];
  });
  const all = far
    .filter(([red, black]) =>
      Number.isFinite(dc.resistance(nodeAt(layout, red), nodeAt(layout, black))),
    )
    .map(([red, black]): Ask => ({ kind: 'flex', site: EVERYWHERE, red, black, setting: rest }));
  const nearby = moved.flatMap((site): Ask[] => [
    ...settings.map((setting): Ask => ({ kind: 'flex', site, red: tip, black: sleeve, setting })),
    ...(strings
      ? [
          {
            kind: 'flex',
            site,
            red: `${strings.id}.metal`,
            black: sleeve,
            setting: rest,
          } as const,
        ]
      : []),
  ]);
  return [...nearby, ...all];
}
