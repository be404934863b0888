import type { Circuit, LugRef } from '../../circuit.ts';
import type { Switch, SwitchPosition } from '../../parts/part.ts';
import type { Draft } from './draft.ts';
import { type Choice, type Chosen, type Option, optionOf } from './modification.ts';

/** What carries a switch: a lever of its own, or the shaft of a pot that carries none yet; `others` come last. */
export function carrierChoice(circuit: Circuit, ...others: readonly Option[]): Choice {
  const carried = new Set(
    circuit.parts.flatMap((part) => (part.kind === 'switch' && part.carrier ? [part.carrier] : [])),
  );
  const pots = circuit.parts.filter(({ kind, id }) => kind === 'pot' && !carried.has(id));
  const options = [
    { id: 'mini-toggle', title: 'mini toggle' },
    ...pots.map(({ id, title }) => ({ id: `push-pull:${id}`, title: `push-pull on the ${title}` })),
    ...pots.map(({ id, title }) => ({ id: `push-push:${id}`, title: `push-push on the ${title}` })),
    { id: 'slide', title: 'slide switch' },
    { id: 'rotary', title: 'rotary switch' },
    ...others,
  ];
  return { id: 'carrier', title: 'Switched by', options: options as [Option, ...Option[]] };
}

/** The option for a modification that can also be wired in for good. */
export const fixed: Option = { id: 'fixed', title: 'nothing: it is always on' };
export const isFixed = (chosen: Chosen): boolean => chosen['carrier'] === fixed.id;

interface Throw {
  readonly id: string;
  readonly title: string;
  /** What the two positions are called, rest first: "both coils", "slug coil". */
  readonly positions: readonly [string, string];
  readonly poles?: 1 | 2;
}

export interface Thrown {
  readonly part: Switch;
  /** `A1`, `AC`, `A2`, and the same of B: the common meets 1 at rest and 2 when thrown. */
  lug(name: 'A1' | 'AC' | 'A2' | 'B1' | 'BC' | 'B2'): LugRef;
}

/** Adds an on-on switch on the carrier that was chosen. */
export function addSwitch(draft: Draft, circuit: Circuit, chosen: Chosen, wanted: Throw): Thrown {
  const [style, carrier] = optionOf(carrierChoice(circuit), chosen).id.split(':');
  // A pot's switch, a slide switch and a rotary one come with two poles whatever they are used for.
  const poles = style === 'mini-toggle' && wanted.poles !== 2 ? ['A'] : ['A', 'B'];
  const across = [1, 'C', 2].map((place) => poles.map((pole) => `${pole}${place}`));
  const along = poles.map((pole) => [1, 'C', 2].map((place) => `${pole}${place}`));
  const position = (name: string, title: string, throwsTo: 1 | 2): SwitchPosition => ({
    name,
    title,
    joins: poles.map((pole) => [`${pole}C`, `${pole}${throwsTo}`] as const),
  });
  const part = draft.add<Switch>({
    kind: 'switch',
    id: wanted.id,
    title: wanted.title,
    style: style as Switch['style'],
    rows: style === 'slide' || style === 'rotary' || poles.length === 1 ? along : across,
    positions: [position('off', wanted.positions[0], 1), position('on', wanted.positions[1], 2)],
    ...(carrier && { carrier }),
    frame: false,
  });
  return { part, lug: (name) => `${part.id}.${name}` };
}
