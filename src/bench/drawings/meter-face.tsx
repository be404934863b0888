import { drawingWords } from '../../words/en/drawings.ts';
import { INK, LINE, PAPER, PROBE_BLACK, PROBE_RED, SOFT } from './theme.ts';

/** A multimeter's display with whatever it shows: "OL", "1", nothing, "---", "7.42 k". No maker's face. */
export function MeterFace({
  show,
  within,
}: {
  show: string;
  /** Where it stands in a larger drawing. */
  within?: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}) {
  const [figure = '', ...rest] = show.trim().split(' ');
  const unit = rest.join(' ');
  // Meters of the older kind show over-range as a single 1 at the left edge: common practice, no source.
  const overRange = show.trim() === '1';
  const words = show.trim()
    ? drawingWords().theMeterShowsTrim(show.trim())
    : drawingWords().theMetersDisplayIsBlank;
  return (
    <svg
      role="img"
      aria-label={words}
      viewBox="0 0 160 104"
      font-family="inherit"
      width="100%"
      {...within}
    >
      <title>{words}</title>
      <rect
        x={2}
        y={2}
        width={156}
        height={100}
        rx={14}
        fill={PAPER}
        stroke={INK}
        stroke-width={2.5}
      />
      <rect
        x={14}
        y={13}
        width={132}
        height={50}
        rx={6}
        fill={SOFT}
        fill-opacity={0.14}
        stroke={SOFT}
        stroke-width={1.5}
      />
      <text
        x={overRange ? 26 : unit ? 116 : 136}
        y={50}
        text-anchor={overRange ? 'start' : 'end'}
        font-size={Math.min(34, (unit ? 90 : 116) / (Math.max(1, figure.length) * 0.62))}
        font-weight={700}
        font-family="ui-monospace, 'DejaVu Sans Mono', monospace"
        fill={INK}
      >
        {figure}
      </text>
      {unit && (
        <text x={138} y={50} text-anchor="end" font-size={18} font-weight={700} fill={INK}>
          {unit}
        </text>
      )}
      <g stroke={SOFT} stroke-width={1.5} fill="none">
        <circle cx={80} cy={82} r={12} stroke={INK} stroke-width={2} />
        <path d="M80 82L72 74.500" stroke={INK} stroke-width={2.5} stroke-linecap="round" />
        <path d="M61 82h3M64 71l2.500 2M96 82h3M93.500 73l2.500 -2" stroke={LINE} />
      </g>
      <circle cx={124} cy={82} r={6.5} fill={PROBE_RED} stroke={INK} stroke-width={1.5} />
      <rect
        x={30}
        y={75.5}
        width={13}
        height={13}
        fill={PROBE_BLACK}
        stroke={INK}
        stroke-width={1.5}
      />
    </svg>
  );
}
