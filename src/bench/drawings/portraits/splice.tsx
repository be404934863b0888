import type { Splice } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE } from '../theme.ts';

/** Leads twisted together, their tape pushed up so that the twist is bare. */
export function splicePortrait(part: Splice, frame: Frame): Portrait {
  const s = frame.scale;
  const cx = frame.w / 2;
  const top = 16;
  const bare = top + 58 * s;
  const y = bare + 30 * s;
  const twist = (sign: 1 | -1) =>
    `M${cx} ${bare}q${sign * 9} ${5 * s} 0 ${10 * s}t0 ${10 * s}t0 ${10 * s}`;
  return {
    title: called(part.title),
    seen: drawingWords().tapePushedAside,
    spots: new Map<string, Spot>([
      [
        `${part.id}.joint`,
        {
          at: point(cx, y),
          radius: 7,
          side: 'down',
          label: placeNames().twist,
          labelAt: point(cx + 14, bare + 14 * s),
          anchor: 'start',
          shape: 'blob',
        },
      ],
    ]),
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        <path d={twist(1)} />
        <path d={twist(-1)} />
        <rect x={cx - 15 * s} y={top} width={30 * s} height={60 * s} rx={7} fill={PAPER} />
        <path
          d={[0, 1, 2, 3]
            .map((i) => `M${cx - 15 * s} ${top + (18 + i * 12) * s}l${30 * s} ${-10 * s}`)
            .join('')}
          stroke={LINE}
        />
      </g>
    ),
  };
}
