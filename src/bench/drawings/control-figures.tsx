import type { SwitchState } from './control-items.ts';
import { along, heading, point } from './geometry.ts';
import { COPPER, INK, LINE, PAPER, SOFT } from './theme.ts';
import { knobDegrees } from './views.tsx';

/** CSS pixels. */
export const FIGURE_HEIGHT = 36;
const colourOf = (moved: boolean) => (moved ? COPPER : INK);

/** A knob from the front with its pointer at a figure 0..10; a carried switch shows as an arrow beside it. */
export function KnobFigure({
  figure,
  leftHanded,
  moved,
  pull,
}: {
  figure: number;
  leftHanded: boolean;
  moved: boolean;
  pull?: { at: number; moved: boolean } | undefined;
}) {
  const c = point(pull ? 17 : 22, 19);
  const pointer = heading(knobDegrees(figure, leftHanded));
  const tip = along(c, pointer, 10.5);
  const hub = along(c, pointer, 2);
  const up = pull && pull.at > 0;
  return (
    <svg
      aria-hidden="true"
      viewBox={`0 0 44 ${FIGURE_HEIGHT}`}
      width={44}
      height={FIGURE_HEIGHT}
      fill="none"
    >
      <g stroke={SOFT} stroke-width={1.25}>
        {[0, 5, 10].map((n) => {
          const a = along(c, heading(knobDegrees(n)), 14.5);
          const b = along(c, heading(knobDegrees(n)), 17);
          return <path key={n} d={`M${a.x} ${a.y}L${b.x} ${b.y}`} />;
        })}
      </g>
      <circle
        cx={c.x}
        cy={c.y}
        r={12.5}
        fill={PAPER}
        stroke={colourOf(moved)}
        stroke-width={moved ? 2.5 : 1.75}
      />
      <path
        d={`M${hub.x} ${hub.y}L${tip.x} ${tip.y}`}
        stroke={colourOf(moved)}
        stroke-width={3}
        stroke-linecap="round"
      />
      {pull && (
        <path
          d={up ? 'M38 27V11M33.500 16l4.500 -5l4.500 5' : 'M38 11V27M33.500 22l4.500 5l4.500 -5'}
          stroke={colourOf(pull.moved)}
          stroke-width={pull.moved ? 3 : 2}
          stroke-linecap="round"
          stroke-linejoin="round"
        />
      )}
    </svg>
  );
}

/** A lever, slide, pointer or button at its position. */
export function SwitchFigure({ state, moved }: { state: SwitchState; moved: boolean }) {
  const { at, count, part } = state;
  const colour = colourOf(moved);
  const share = count > 1 ? at / (count - 1) : 0.5;
  const width = moved ? 2.5 : 1.75;
  if (part.style === 'button') {
    const pressed = at > 0;
    return (
      <svg aria-hidden="true" viewBox="0 0 44 36" width={44} height={FIGURE_HEIGHT} fill="none">
        <circle cx={22} cy={19} r={13} stroke={SOFT} stroke-width={1.75} />
        <circle
          cx={22}
          cy={19}
          r={pressed ? 7 : 9.5}
          fill={pressed ? colour : PAPER}
          stroke={colour}
          stroke-width={width}
        />
      </svg>
    );
  }
  if (part.style === 'rotary') {
    const c = point(30, 19);
    const tip = along(c, heading(knobDegrees(share * 10)), 11);
    return (
      <svg aria-hidden="true" viewBox="0 0 60 36" width={60} height={FIGURE_HEIGHT} fill="none">
        {Array.from({ length: count }, (_, i) => {
          const dot = along(c, heading(knobDegrees(count > 1 ? (i / (count - 1)) * 10 : 5)), 16.5);
          return <circle key={i} cx={dot.x} cy={dot.y} r={1.5} fill={SOFT} />;
        })}
        <circle cx={c.x} cy={c.y} r={12.5} fill={PAPER} stroke={colour} stroke-width={width} />
        <path
          d={`M${c.x} ${c.y}L${tip.x} ${tip.y}`}
          stroke={colour}
          stroke-width={3}
          stroke-linecap="round"
        />
      </svg>
    );
  }
  const small = part.style !== 'blade' && part.style !== 'toggle';
  const w = small ? 44 : 60;
  const track = small ? 24 : 44;
  const left = (w - track) / 2;
  const x = left + share * track;
  return (
    <svg
      aria-hidden="true"
      viewBox={`0 0 ${w} ${FIGURE_HEIGHT}`}
      width={w}
      height={FIGURE_HEIGHT}
      fill="none"
    >
      <rect
        x={left - 6}
        y={20}
        width={track + 12}
        height={9}
        rx={4.5}
        fill={PAPER}
        stroke={SOFT}
        stroke-width={1.5}
      />
      {Array.from({ length: count }, (_, i) => (
        <path
          key={i}
          d={`M${left + (count > 1 ? (i / (count - 1)) * track : track / 2)} 31v3`}
          stroke={i === at ? colour : SOFT}
          stroke-width={i === at ? 2.25 : 1.5}
        />
      ))}
      <path
        d={`M${w / 2 + (x - w / 2) * 0.75} 24.500L${x} 10`}
        stroke={colour}
        stroke-width={4}
        stroke-linecap="round"
      />
      <circle
        cx={x}
        cy={8.5}
        r={5.5}
        fill={moved ? COPPER : PAPER}
        stroke={colour}
        stroke-width={width}
      />
      <path d={`M${left} 24.500H${left + track}`} stroke={LINE} stroke-width={1.25} />
    </svg>
  );
}

export function PlugFigure({ plug, moved }: { plug: 'in' | 'out'; moved: boolean }) {
  const colour = colourOf(moved);
  const x = plug === 'in' ? 11 : 21;
  return (
    <svg
      aria-hidden="true"
      viewBox="0 0 44 36"
      width={44}
      height={FIGURE_HEIGHT}
      fill="none"
      stroke-linejoin="round"
    >
      <path d="M4 7v24M4 12h5v14H4" stroke={SOFT} stroke-width={2} />
      <path
        d={`M${x} 16.500h8v5h-8l-2.500 -2.500z`}
        fill={PAPER}
        stroke={colour}
        stroke-width={1.75}
      />
      <rect
        x={x + 8}
        y={13}
        width={11}
        height={12}
        rx={2.5}
        fill={moved ? COPPER : PAPER}
        stroke={colour}
        stroke-width={moved ? 2.5 : 1.75}
      />
      <path d={`M${x + 19} 19H44`} stroke={colour} stroke-width={2.5} />
    </svg>
  );
}
