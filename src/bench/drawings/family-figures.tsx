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

/** How far each line lies from the next one at one place: all of it is done anew for every frame of a drag. */
function freeOf(heights: readonly number[]): readonly number[] {
  const order = heights.map((_, line) => line).sort((a, b) => at(a) - at(b));
  function at(line: number): number {
    return heights[line] as number;
  }
  const free = heights.map((): number => APART.well);
  for (let place = 0; place < order.length; place += 1) {
    const line = order[place] as number;
    if (at(line) > PLOT.bottom - MARK) free[line] = 0;
    else
      for (const beside of [order[place - 1], order[place + 1]])
        if (beside !== undefined)
          free[line] = Math.min(free[line] as number, Math.abs(at(beside) - at(line)));
  }
  return free;
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
  const free = inside.map((_, at) => freeOf(lines.map(({ heights }) => heights[at] as number)));
  const best = (at: (free: readonly number[]) => number): number => {
    let [place, most] = [0, Number.NEGATIVE_INFINITY];
    for (const [here, one] of free.entries()) {
      const room = at(one);
      if (room > most) [place, most] = [here, room];
    }
    return place;
  };
  const together = best((all) => Math.min(...all));
  const apart = Math.min(...(free[together] ?? [])) >= APART.least;
  const figures = lines
    .map(({ knob, heights }, line) => {
      const at = apart ? together : best((all) => all[line] as number);
      return {
        knob,
        x: inside[at]?.x ?? 0,
        y: heights[at] as number,
        free: free[at]?.[line] ?? 0,
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
