import type { Circuit, LugRef } from '../../../circuit/circuit.ts';
import { layoutOf } from '../../../circuit/netlist.ts';
import type { Part } from '../../../circuit/parts/part.ts';
import { formatFarads, formatOhms } from '../../../readings/entry.ts';
import { called, withoutOwner } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { type Box, type Point, point, wrapWords } from '../geometry.ts';
import { textWidth } from '../theme.ts';
import { onGrid, union } from './boxes.ts';
import type { Lug } from './exits.ts';
import { type Figure, figureOf } from './figure.ts';
import type { Stand, Turn } from './places.ts';
import { type Slot, sidesOf } from './slots.ts';
import { turned, turnedBox } from './turn.ts';

/** Sizes of names in layout units. */
export const WHOLE_TEXT = { title: 13, lug: 12, lead: 12 } as const;

/** Everything of one stand that does not depend on where it stands: points and boxes count from its place. */
export interface Footprint {
  readonly stand: Stand;
  readonly turn: Turn;
  readonly figure: Figure;
  readonly lugs: readonly Lug[];
  /** No lead of others comes in here; on the grid. */
  readonly box: Box;
  /** Ways out for the leads, by lug: at least as many as there are leads on it. */
  readonly slots: ReadonlyMap<LugRef, readonly Slot[]>;
  readonly words: readonly {
    readonly text: string;
    readonly at: Point;
    readonly strong: boolean;
  }[];
}

const known = new WeakMap<Circuit, Map<string, Footprint>>();

export function footprintOf(circuit: Circuit, stand: Stand, turn: Turn): Footprint {
  const forCircuit = known.get(circuit) ?? new Map<string, Footprint>();
  known.set(circuit, forCircuit);
  const name = `${stand.id} ${turn}`;
  const before = forCircuit.get(name);
  if (before) return before;
  const made = makeFootprint(circuit, stand, turn);
  forCircuit.set(name, made);
  return made;
}

function makeFootprint(circuit: Circuit, stand: Stand, turn: Turn): Footprint {
  const figure = figureOf(circuit, stand);
  const first = stand.parts[0]!;
  const inside = first.kind === 'pot' && stand.parts.length === 1;
  const beside = first.kind === 'splice';
  const lugs = [...figure.portrait.spots].map(([ref, spot]): Lug => {
    if (inside && ref.endsWith('.case'))
      return { ref, shape: 'patch', radius: 5, label: placeNames().lug('case'), ...CASE_IN_CIRCLE };
    // Metal and twists are named by their titles.
    const label = beside || first.kind === 'metal' ? '' : spot.label;
    const width = textWidth(label, WHOLE_TEXT.lug);
    const shift = spot.anchor === 'start' ? width / 2 : spot.anchor === 'end' ? -width / 2 : 0;
    const local = (x: number, y: number): Point =>
      turned(point(x - figure.middle.x, y - figure.middle.y), turn);
    return {
      ref,
      at: local(spot.at.x, spot.at.y),
      radius: Math.min(spot.radius, 7),
      shape: spot.shape,
      label,
      labelAt: local(spot.labelAt.x + shift, spot.labelAt.y - WHOLE_TEXT.lug * 0.38),
    };
  });
  const { body, middle } = figure;
  const bodyBox = turnedBox({ ...body, x: body.x - middle.x, y: body.y - middle.y }, turn);
  const labels = lugs
    .filter(({ label }) => label)
    .map(({ label, labelAt }): Box => {
      const w = textWidth(label, WHOLE_TEXT.lug);
      return { x: labelAt.x - w / 2, y: labelAt.y - WHOLE_TEXT.lug / 2, w, h: WHOLE_TEXT.lug };
    });
  const inner = onGrid(union([bodyBox, ...labels]), 2);
  const lines = titleLines(stand, inside ? 8 : Math.max(18, Math.floor(inner.w / 7.8)));
  const line = inside ? 13.5 : 14;
  const sides = sidesOf(stand, figure, lugs, turn, layoutOf(circuit).jointsAt, inner, {
    where: inside ? 'inside' : beside ? 'beside' : 'strip',
    w: Math.max(...lines.map(({ text }) => textWidth(text, WHOLE_TEXT.title))),
    h: lines.length * line + 4,
  });
  const start = inside
    ? point(0, -((lines.length - 1) * line) / 2 - 4)
    : point(sides.title.x + sides.title.w / 2, sides.title.y + line / 2 + 1);
  return {
    stand,
    turn,
    figure,
    lugs,
    box: sides.box,
    slots: sides.slots,
    words: lines.map(({ text, strong }, i) => ({
      text,
      strong,
      at: point(start.x, start.y + i * line),
    })),
  };
}

/** In the lower part of a pot's circle whichever way the pot is turned: it is round, and words stay upright. */
const CASE_IN_CIRCLE = { at: point(-16, 25), labelAt: point(6, 26) };

/** The stand's name, its value, and what the switch on a pot's back does. */
function titleLines(stand: Stand, limit: number): { text: string; strong: boolean }[] {
  const soft = (text: string) => ({ text, strong: false });
  const [first, ...rest] = stand.parts;
  const title = stand.subject.title;
  return [
    ...wrapWords(called(title), limit).map((text) => ({ text, strong: true })),
    ...(first ? printedOn(first).map(soft) : []),
    ...rest
      .filter(({ kind }) => kind === 'switch')
      .flatMap((part) => wrapWords(withoutOwner(part.title, title), limit + 3))
      .map(soft),
  ];
}

/** What is printed on it, and which way its figures run where that is not the usual one. */
function printedOn(part: Part): string[] {
  switch (part.kind) {
    case 'pot':
      return [
        formatOhms(part.ohms.nominal),
        ...(part.leftHanded ? [drawingWords().leftHandedPot] : []),
      ];
    case 'resistor':
      return [formatOhms(part.ohms.nominal)];
    case 'capacitor':
      return [formatFarads(part.farads.nominal)];
    default:
      return [];
  }
}
