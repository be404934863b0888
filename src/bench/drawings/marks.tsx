import { along, heading } from './geometry.ts';
import { type PlacedProbe, PROBE } from './probe-place.ts';
import { COPPER, INK, PAPER, PROBE_BLACK, PROBE_LETTER, PROBE_RED, SOFT, STROKE } from './theme.ts';
import type { Mark } from './tool-marks.ts';

interface ProbeLetterProps {
  readonly at: { readonly x: number; readonly y: number };
  readonly colour: 'red' | 'black';
  readonly radius: number;
}

/** Red: a round mark with R. Black: a square mark with B, outlined in ink. */
export function ProbeLetter({ at, colour, radius }: ProbeLetterProps) {
  const size = Math.round(radius * 1.3);
  return (
    <g>
      {colour === 'red' ? (
        <circle cx={at.x} cy={at.y} r={radius} fill={PROBE_RED} stroke={INK} stroke-width={2} />
      ) : (
        <rect
          x={at.x - radius + 1}
          y={at.y - radius + 1}
          width={2 * radius - 2}
          height={2 * radius - 2}
          fill={PROBE_BLACK}
          stroke={INK}
          stroke-width={2}
        />
      )}
      <text
        x={at.x}
        y={at.y + size * 0.35}
        text-anchor="middle"
        font-size={size}
        font-weight={700}
        fill={PROBE_LETTER}
      >
        {colour === 'red' ? 'R' : 'B'}
      </text>
    </g>
  );
}

/** A probe's letter on a needle in a grip. */
export function ProbeMark({ probe, colour }: { probe: PlacedProbe; colour: 'red' | 'black' }) {
  const fill = colour === 'red' ? PROBE_RED : PROBE_BLACK;
  const mark = along(probe.tip, heading(probe.degrees), PROBE.mark);
  return (
    <g>
      <g transform={`translate(${probe.tip.x} ${probe.tip.y}) rotate(${probe.degrees})`}>
        <path
          d={`M3 0L${PROBE.needle + 4} -3V3z`}
          fill={INK}
          stroke={PAPER}
          stroke-width={2}
          stroke-linejoin="round"
          paint-order="stroke"
        />
        <rect
          x={PROBE.mark}
          y={-6}
          width={PROBE.end - PROBE.mark}
          height={12}
          rx={colour === 'red' ? 6 : 1.5}
          fill={fill}
          stroke={INK}
          stroke-width={1.25}
        />
        <path
          d={`M${PROBE.end - 16} -3v6M${PROBE.end - 11} -3v6M${PROBE.end - 6} -2.5v5`}
          stroke={PROBE_LETTER}
          stroke-width={1.25}
          opacity={0.7}
        />
      </g>
      <ProbeLetter at={mark} colour={colour} radius={PROBE.markRadius} />
    </g>
  );
}

/** The other things a hand does at a part. Copper: what to do now. */
export function ToolMark({ mark }: { mark: Mark }) {
  const { x, y } = mark.at;
  switch (mark.kind) {
    case 'wiggle':
      return (
        <g
          transform={`translate(${x} ${y}) rotate(${mark.degrees})`}
          fill="none"
          stroke={COPPER}
          stroke-width={STROKE.strong}
          stroke-linecap="round"
          stroke-linejoin="round"
        >
          <path d="M-10 -13q5 -6 10 0t10 0" />
          <path d="M-10 13q5 -6 10 0t10 0" />
          <path d="M-10 0H12" stroke-width={4.5} />
        </g>
      );
    case 'lens': {
      const grip = heading(mark.degrees);
      const from = along(mark.at, grip, 29);
      const to = along(mark.at, grip, 66);
      return (
        <g fill="none" stroke-linecap="round">
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} stroke={PAPER} stroke-width={13} />
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} stroke={INK} stroke-width={8} />
          <circle cx={x} cy={y} r={27} stroke={INK} stroke-width={4} />
          <circle cx={x} cy={y} r={22.5} stroke={COPPER} stroke-width={2} />
          <path d={`M${x - 15} ${y - 8}a17 17 0 0 1 8 -8`} stroke={SOFT} stroke-width={2} />
        </g>
      );
    }
    case 'hand':
      return <Hand x={x} y={y} />;
    case 'compass':
      return (
        <g>
          <circle cx={x} cy={y} r={26} fill={PAPER} stroke={INK} stroke-width={2.5} />
          <path
            d={[0, 90, 180, 270]
              .map((degrees) => {
                const a = along(mark.at, heading(degrees), 20);
                const b = along(mark.at, heading(degrees), 23.5);
                return `M${a.x} ${a.y}L${b.x} ${b.y}`;
              })
              .join('')}
            stroke={SOFT}
            stroke-width={1.5}
          />
          <g transform={`rotate(28 ${x} ${y})`}>
            <path
              d={`M${x} ${y - 6}L${x + 20} ${y}L${x} ${y + 6}z`}
              fill={COPPER}
              stroke={COPPER}
            />
            <path
              d={`M${x} ${y - 6}L${x - 20} ${y}L${x} ${y + 6}z`}
              fill={PAPER}
              stroke={COPPER}
              stroke-width={1.5}
            />
          </g>
          <circle cx={x} cy={y} r={2.5} fill={INK} />
        </g>
      );
    case 'steel':
      return (
        <g stroke-linejoin="round" stroke-linecap="round">
          <g transform={`rotate(-32 ${x} ${y})`}>
            <rect
              x={x - 1}
              y={y - 6}
              width={52}
              height={12}
              fill={PAPER}
              stroke={INK}
              stroke-width={2}
            />
            <path d={`M${x + 10} ${y - 2}h32`} stroke={SOFT} stroke-width={1.25} />
            <path
              d={`M${x + 51} ${y - 9}h30q8 0 8 9t-8 9h-30z`}
              fill={INK}
              stroke={INK}
              stroke-width={1.5}
            />
          </g>
          <path
            d={`M${x - 5} ${y - 10}V${y - 50}m-8 9l8 -10l8 10`}
            fill="none"
            stroke={PAPER}
            stroke-width={8}
          />
          <path
            d={`M${x - 5} ${y - 10}V${y - 50}m-8 9l8 -10l8 10`}
            fill="none"
            stroke={COPPER}
            stroke-width={STROKE.strong}
          />
        </g>
      );
  }
}

/** A hand from below with its first finger on the metal at (x, y). */
function Hand({ x, y }: { x: number; y: number }) {
  return (
    <g
      transform={`translate(${x} ${y})`}
      fill={PAPER}
      stroke={INK}
      stroke-width={2.25}
      stroke-linejoin="round"
      stroke-linecap="round"
    >
      <path d="M-8 6a8.5 8.5 0 0 1 17 0V40c3 -4 13 -4 14 3c4 -5 13 -3 13 4c4 -3 11 -1 11 6v22c0 12 -6 20 -10 30H5C-4 92 -16 78 -24 66c-5 -8 4 -15 10 -9l6 6z" />
      <path d="M23 44v14M36 48v12" fill="none" stroke={SOFT} />
      <path d="M-3.500 3a4.500 4.500 0 0 1 8 0" fill="none" stroke={COPPER} stroke-width={2.5} />
      <path
        d="M-17 -6a20 20 0 0 1 9 -12M18 -6a20 20 0 0 0 -9 -12"
        fill="none"
        stroke={COPPER}
        stroke-width={2.5}
      />
    </g>
  );
}
