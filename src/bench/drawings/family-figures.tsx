import type { Trial } from '../../diagnosis/trial.ts';
import { MARK, PLOT, type Point } from './chart-plot.ts';
import { INK, PAPER, TEXT } from './theme.ts';

/** Figures nearer to each other than this run together; farther apart than that they are well apart. */
const APART = { least: 12, well: 24 };
/** Two figures side by side. */
const WIDE = 18;

interface FamilyFiguresProps {
  readonly family: Trial['family'];
  readonly shown: readonly Point[];
  down(decibels: number): number;
}

/**
 * The knob's figure on each thin line: one above the other where there is a place at which all lines lie apart, or else each where its
 * own line lies farthest from the others.
 */
export function FamilyFigures({ family, shown, down }: FamilyFiguresProps) {
  const inside = shown.filter(({ x }) => x > PLOT.left + MARK && x < PLOT.right - 2 * MARK);
  const lines = family
    .map(({ knob, curve }) => ({
      knob,
      heights: inside.map(({ index }) => down(curve.decibels[index] as number)),
    }))
    .filter(({ heights }) => heights.some((y) => y < PLOT.bottom - MARK));
  type Line = (typeof lines)[number];
  const freeAt = (line: Line, at: number): number => {
    const y = line.heights[at] as number;
    if (y > PLOT.bottom - MARK) return 0;
    return lines.reduce(
      (free, other) =>
        other === line ? free : Math.min(free, Math.abs((other.heights[at] as number) - y)),
      APART.well,
    );
  };
  const places = inside.map((_, at) => at);
  const best = (free: (at: number) => number): number =>
    places.reduce((so, at) => (free(at) > free(so) ? at : so), 0);
  const ofAll = (at: number) => Math.min(...lines.map((line) => freeAt(line, at)));
  const together = best(ofAll);
  const apart = ofAll(together) >= APART.least;
  const figures = lines
    .map((line) => {
      const at = apart ? together : best((place) => freeAt(line, place));
      return {
        knob: line.knob,
        x: inside[at]?.x ?? 0,
        y: line.heights[at] as number,
        free: freeAt(line, at),
      };
    })
    .sort((one, other) => other.free - one.free);
  // A figure that would lie on another's is left out: its neighbours tell it.
  const kept: typeof figures = [];
  for (const one of figures)
    if (!kept.some(({ x, y }) => Math.abs(x - one.x) < WIDE && Math.abs(y - one.y) < APART.least))
      kept.push(one);
  return (
    <g fill={INK} font-size={TEXT.note} text-anchor="middle">
      {kept.map(({ knob, x, y }) => (
        <text key={knob} x={x} y={y + 4.5} stroke={PAPER} stroke-width="4" paint-order="stroke">
          {knob}
        </text>
      ))}
    </g>
  );
}
