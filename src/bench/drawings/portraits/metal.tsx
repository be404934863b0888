import type { Metal } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE } from '../theme.ts';

const seen: Readonly<Record<Metal['role'], string>> = {
  get strings() {
    return drawingWords().seenFromTheFront;
  },
  get plate() {
    return drawingWords().seenFromBelow;
  },
  get cover() {
    return drawingWords().seenFromTheTop;
  },
  get foil() {
    return drawingWords().theLinedCavity;
  },
  get paint() {
    return drawingWords().thePaintedCavity;
  },
  get 'control-plate'() {
    return drawingWords().seenFromBelow;
  },
};

/** Metal that should be grounded: one conductor, touched anywhere on its bare surface. */
export function metalPortrait(part: Metal, frame: Frame): Portrait {
  const s = frame.scale;
  const cx = frame.w / 2;
  const cy = frame.h / 2 - 8;
  const strings = part.role === 'strings';
  return {
    title: called(part.title),
    seen: seen[part.role],
    spots: new Map<string, Spot>([
      [
        `${part.id}.metal`,
        {
          at: point(cx, strings ? cy + 44 * s : cy + 8 * s),
          radius: 9,
          side: 'down',
          label: strings ? placeNames().bridge : drawingWords().bareMetal,
          labelAt: strings ? point(cx + 16, cy + 49 * s) : point(cx, cy - 16 * s),
          anchor: strings ? 'start' : 'middle',
          shape: 'patch',
        },
      ],
    ]),
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        {strings ? (
          <Bridge cx={cx} cy={cy} s={s} />
        ) : (
          <Sheet role={part.role} cx={cx} cy={cy} s={s} />
        )}
      </g>
    ),
  };
}

function Bridge({ cx, cy, s }: { cx: number; cy: number; s: number }) {
  const xs = [-2.5, -1.5, -0.5, 0.5, 1.5, 2.5].map((i) => cx + i * 19 * s);
  const top = cy - 12 * s;
  return (
    <>
      <rect x={cx - 72 * s} y={top} width={144 * s} height={72 * s} rx={8} fill={PAPER} />
      {xs.map((x, i) => (
        <g key={x}>
          <path d={`M${x} 4V${top + 10 * s}`} stroke-width={2.4 - i * 0.24} />
          <rect x={x - 7 * s} y={top + 8 * s} width={14 * s} height={24 * s} rx={3} fill={PAPER} />
          <path d={`M${x} ${top + 8 * s}v${24 * s}`} stroke={LINE} />
        </g>
      ))}
    </>
  );
}

function Sheet({ role, cx, cy, s }: { role: Metal['role']; cx: number; cy: number; s: number }) {
  const w = 70 * s;
  const h = 42 * s;
  if (role === 'foil' || role === 'paint') {
    const outline = `M${cx - w} ${cy - h * 0.6}q0 ${-h * 0.5} ${w * 0.5} ${-h * 0.45}q${w * 0.5} ${h * 0.1} ${w} ${-h * 0.1}q${w * 0.5} 0 ${w * 0.5} ${h * 0.7}v${h * 0.9}q0 ${h * 0.6} ${-w * 0.7} ${h * 0.55}h${-w * 0.7}q${-w * 0.6} 0 ${-w * 0.6} ${-h * 0.7}z`;
    return (
      <>
        <path d={outline} fill={PAPER} />
        <path
          d={[-3, -2, -1, 0, 1, 2]
            .map((i) => `M${cx + i * 20 * s} ${cy + h * 0.72}l${24 * s} ${-h * 1.4}`)
            .join('')}
          stroke={LINE}
          stroke-dasharray={role === 'paint' ? '2 5' : undefined}
        />
      </>
    );
  }
  return (
    <>
      <rect
        x={cx - w}
        y={cy - h}
        width={2 * w}
        height={2 * h}
        rx={role === 'control-plate' ? h * 0.5 : 8}
        fill={PAPER}
      />
      <rect
        x={cx - w + 5}
        y={cy - h + 5}
        width={2 * w - 10}
        height={2 * h - 10}
        rx={role === 'control-plate' ? h * 0.4 : 5}
        stroke={LINE}
      />
      {role !== 'cover' &&
        [-1, 1].map((sign) => <circle key={sign} cx={cx + sign * (w - 17)} cy={cy} r={5} />)}
    </>
  );
}
