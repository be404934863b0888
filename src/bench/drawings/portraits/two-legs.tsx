import type { Capacitor, Resistor } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE } from '../theme.ts';

/** Height of the body's middle above the points where the legs are touched, drawing units at scale 1. */
export const BODY_ABOVE_LEGS = 44;

/** A capacitor or resistor lying down, a leg at each end. It may be turned round: the legs are alike. */
export function twoLegsPortrait(part: Capacitor | Resistor, frame: Frame): Portrait {
  const s = frame.scale;
  const cx = frame.w / 2;
  const cy = 62 * s;
  const reach = 44 * s;
  const y = cy + BODY_ABOVE_LEGS * s;
  const leg = (name: 'a' | 'b', sign: -1 | 1): [string, Spot] => [
    `${part.id}.${name}`,
    {
      at: point(cx + sign * reach, y),
      radius: 6,
      side: 'down',
      label: name,
      labelAt: point(cx + sign * (reach - 12), y + 5),
      anchor: sign < 0 ? 'start' : 'end',
      shape: 'patch',
    },
  ];
  return {
    title: called(part.title),
    seen: drawingWords().lyingFlat,
    spots: new Map([leg('a', -1), leg('b', 1)]),
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        {([-1, 1] as const).map((sign) => (
          <path
            key={sign}
            d={`M${cx + sign * 22 * s} ${cy}h${sign * (reach - 30 * s)}q${sign * 8 * s} 0 ${sign * 8 * s} ${8 * s}V${y}`}
          />
        ))}
        {part.kind === 'capacitor' ? (
          <>
            <rect
              x={cx - 30 * s}
              y={cy - 25 * s}
              width={60 * s}
              height={50 * s}
              rx={14 * s}
              fill={PAPER}
            />
            <path
              d={`M${cx - 4} ${cy - 10 * s}v${20 * s}M${cx + 4} ${cy - 10 * s}v${20 * s}M${cx - 16 * s} ${cy}H${cx - 4}M${cx + 4} ${cy}h${16 * s - 4}`}
              stroke={LINE}
            />
          </>
        ) : (
          <>
            <path
              d={`M${cx - 34 * s} ${cy - 9 * s}q0 ${-5 * s} ${6 * s} ${-5 * s}h${9 * s}l${5 * s} ${3 * s}h${28 * s}l${5 * s} ${-3 * s}h${9 * s}q${6 * s} 0 ${6 * s} ${5 * s}v${18 * s}q0 ${5 * s} ${-6 * s} ${5 * s}h${-9 * s}l${-5 * s} ${-3 * s}h${-28 * s}l${-5 * s} ${3 * s}h${-9 * s}q${-6 * s} 0 ${-6 * s} ${-5 * s}z`}
              fill={PAPER}
            />
            <path
              d={`M${cx - 10 * s} ${cy - 11 * s}v${22 * s}M${cx} ${cy - 11 * s}v${22 * s}M${cx + 10 * s} ${cy - 11 * s}v${22 * s}`}
              stroke={LINE}
            />
          </>
        )}
      </g>
    ),
  };
}
