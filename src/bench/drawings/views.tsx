import { drawingWords } from '../../words/en/drawings.ts';
import { along, heading, point } from './geometry.ts';
import type { Frame } from './portrait.ts';
import { COPPER, INK, LINE, PAPER, SOFT, STROKE, TEXT } from './theme.ts';

/**
 * Degrees on the screen of a knob figure 0..10, as seen from the front: 0 at lower left, 10 at lower right, clockwise; on a left-handed
 * pot 0 at lower right, 10 at lower left, counter-clockwise.
 */
export const knobDegrees = (figure: number, leftHanded = false): number =>
  135 + 27 * (leftHanded ? 10 - figure : figure);

/** A knob from the front, to be turned from 0 to 10 while the reading is watched. */
export function KnobView({ frame, leftHanded }: { frame: Frame; leftHanded: boolean }) {
  const at = (figure: number) => heading(knobDegrees(figure, leftHanded));
  const c = point(frame.w / 2, frame.h / 2 - 8);
  const r = 36 * frame.scale;
  const arc = r + 17;
  const a = along(c, at(0.4), arc);
  const b = along(c, at(9.4), arc);
  const tip = heading(knobDegrees(9.4, leftHanded) + (leftHanded ? -90 : 90));
  const side = at(9.4);
  const back = along(b, tip, -9);
  const barb = (sign: 1 | -1) => along(back, side, sign * 7);
  const head = along(b, tip, 4);
  const figure = (n: 0 | 10) => along(c, at(n), arc + 15);
  const pointer = along(c, at(0), r - 7);
  return (
    <g fill="none" stroke-linecap="round" stroke-linejoin="round">
      <circle cx={c.x} cy={c.y} r={r} fill={PAPER} stroke={INK} stroke-width={2.25} />
      <circle cx={c.x} cy={c.y} r={r - 6} stroke={LINE} />
      <path
        d={`M${c.x} ${c.y}L${pointer.x} ${pointer.y}`}
        stroke={INK}
        stroke-width={STROKE.strong}
      />
      {Array.from({ length: 11 }, (_, n) => {
        const from = along(c, at(n), r + 4);
        const to = along(c, at(n), r + 9);
        return (
          <path
            key={n}
            d={`M${from.x} ${from.y}L${to.x} ${to.y}`}
            stroke={SOFT}
            stroke-width={1.5}
          />
        );
      })}
      <g stroke={COPPER} stroke-width={STROKE.strong}>
        <path d={`M${a.x} ${a.y}A${arc} ${arc} 0 1 ${leftHanded ? 0 : 1} ${b.x} ${b.y}`} />
        <path d={`M${barb(1).x} ${barb(1).y}L${head.x} ${head.y}L${barb(-1).x} ${barb(-1).y}`} />
      </g>
      <g font-size={TEXT.title} font-weight={700} fill={INK} text-anchor="middle">
        <text x={figure(0).x} y={figure(0).y + 8}>
          0
        </text>
        <text x={figure(10).x} y={figure(10).y + 8}>
          10
        </text>
      </g>
      <text x={c.x} y={frame.h - 6} font-size={TEXT.note} fill={SOFT} text-anchor="middle">
        {drawingWords().slowlyAllTheWay}
      </text>
    </g>
  );
}

/** A cable in the jack, for listening: nothing but the controls matters. */
export function PluggedView({ frame }: { frame: Frame }) {
  const cx = frame.w / 2 - 30;
  const cy = frame.h / 2 - 30;
  return (
    <g
      fill="none"
      stroke={SOFT}
      stroke-width={STROKE.light}
      stroke-linejoin="round"
      stroke-linecap="round"
    >
      <rect x={cx - 70} y={cy - 46} width={24} height={92} rx={8} fill={PAPER} />
      <path d={`M${cx - 46} ${cy - 18}h10v36h-10z`} fill={PAPER} />
      <path d={`M${cx - 36} ${cy - 8}h12v16h-12z`} fill={PAPER} stroke={INK} />
      <rect
        x={cx - 24}
        y={cy - 14}
        width={46}
        height={28}
        rx={6}
        fill={PAPER}
        stroke={INK}
        stroke-width={2.25}
      />
      <path d={`M${cx + 22} ${cy}q34 0 38 26t34 26`} stroke={INK} stroke-width={4.5} />
      <g stroke={COPPER} stroke-width={STROKE.strong}>
        {[12, 24, 36].map((r) => (
          <path
            key={r}
            d={`M${cx + 108 + r * 0.7} ${cy + 52 - r * 0.7}a${r} ${r} 0 0 1 0 ${r * 1.4}`}
          />
        ))}
      </g>
    </g>
  );
}
