import { type Box, boxesOverlap, type Point, point } from './geometry.ts';
import type { Frame, Spot } from './portrait.ts';
import { TEXT, textWidth } from './theme.ts';

interface Line {
  readonly spot: Spot;
  /** Where its line runs down or up. */
  readonly x: number;
  readonly text: string;
}
export interface PlacedLabel {
  readonly text: string;
  readonly at: Point;
  readonly box: Box;
  /** y at which a vertical line stops above (or below) its label. */
  readonly lineEnd?: number;
}

const ROW = 16;
/** Above this many labels on one side all combinations are too many; they are then placed one by one. */
const EXHAUSTIVE = 5;

/**
 * Colour words at the ends of leads: on two or three rows, so that no word lies on another word or on a line.
 * Longer words than the picture is wide are cut with an ellipsis; the text alternative has them in full.
 */
export function placeLabels(lines: readonly Line[], frame: Frame): (PlacedLabel | undefined)[] {
  const placed: (PlacedLabel | undefined)[] = lines.map(() => undefined);
  for (const side of ['left', 'right'] as const) {
    for (const [i, line] of lines.entries()) {
      if (line.spot.side !== side || !line.text) continue;
      const room = (side === 'left' ? line.spot.at.x : frame.w - line.spot.at.x) - 12;
      const text = cut(line.text, room);
      const w = textWidth(text, TEXT.lead);
      const x = side === 'left' ? 2 : frame.w - 2 - w;
      const y = line.spot.at.y - 5;
      placed[i] = { text, at: point(x, y), box: { x, y: y - 12, w, h: 15 } };
    }
  }
  for (const side of ['up', 'down'] as const) {
    const indices = lines.flatMap((line, i) => (line.spot.side === side ? [i] : []));
    const labelled = indices.filter((i) => lines[i]!.text);
    if (labelled.length === 0) continue;
    const lineOf = (i: number) => lines[i]!;
    const choose = (chosen: Map<number, PlacedLabel>, i: number) =>
      options(lineOf(i), side, frame).map((option) => ({
        option,
        cost: cost(option, i, chosen, indices, lineOf, side),
      }));
    let best: { cost: number; chosen: Map<number, PlacedLabel> } = {
      cost: Number.POSITIVE_INFINITY,
      chosen: new Map(),
    };
    const search = (depth: number, chosen: Map<number, PlacedLabel>, sum: number): void => {
      if (sum >= best.cost) return;
      const i = labelled[depth];
      if (i === undefined) {
        best = { cost: sum, chosen: new Map(chosen) };
        return;
      }
      let candidates = choose(chosen, i);
      if (labelled.length > EXHAUSTIVE)
        candidates = [candidates.reduce((a, b) => (b.cost < a.cost ? b : a))];
      for (const { option, cost: extra } of candidates) {
        chosen.set(i, option);
        search(depth + 1, chosen, sum + extra);
        chosen.delete(i);
      }
    };
    search(0, new Map(), 0);
    for (const [i, label] of best.chosen) placed[i] = label;
  }
  return placed;
}

function options(line: Line, side: 'up' | 'down', frame: Frame): PlacedLabel[] {
  const text = cut(line.text, frame.w - 4);
  const w = textWidth(text, TEXT.lead);
  const found: PlacedLabel[] = [];
  for (const row of [0, 1]) {
    for (const lean of [0.5, 0.25, 0.75, 0, 1]) {
      const x = Math.min(Math.max(line.x - w * lean, 2), frame.w - 2 - w);
      const y = side === 'down' ? frame.h - 3 - row * ROW : 12 + row * ROW;
      const box = { x, y: y - 12, w, h: 15 };
      const lineEnd = side === 'down' ? box.y - 2 : box.y + box.h + 1;
      found.push({ text, at: point(x, y), box, lineEnd });
    }
  }
  return found;
}

function cost(
  option: PlacedLabel,
  index: number,
  chosen: ReadonlyMap<number, PlacedLabel>,
  indices: readonly number[],
  lineOf: (i: number) => Line,
  side: 'up' | 'down',
): number {
  let sum = Math.abs(option.box.x + option.box.w / 2 - lineOf(index).x) / 40;
  const passes = (x: number, end: number | undefined, box: Box) => {
    const reaches =
      end === undefined || (side === 'down' ? end > box.y + 2 : end < box.y + box.h - 2);
    return reaches && x > box.x - 2 && x < box.x + box.w + 2;
  };
  for (const other of indices) {
    if (other === index) continue;
    const label = chosen.get(other);
    const line = lineOf(other);
    if (label && boxesOverlap(label.box, option.box)) sum += 100;
    if ((label || !line.text) && passes(line.x, label?.lineEnd, option.box)) sum += 10;
    if (label && passes(lineOf(index).x, option.lineEnd, label.box)) sum += 10;
  }
  return sum;
}

function cut(text: string, room: number): string {
  if (textWidth(text, TEXT.lead) <= room) return text;
  const letters = Math.max(2, Math.floor(room / textWidth('m', TEXT.lead)) - 1);
  return `${text.slice(0, letters)}…`;
}
