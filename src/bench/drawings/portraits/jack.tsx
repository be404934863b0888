import type { Jack } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE, TEXT, textWidth } from '../theme.ts';

const spotAt = (x: number, y: number, label: string, align: -1 | 0 | 1): Spot => ({
  at: point(x, y),
  radius: 8,
  side: 'down',
  label: placeNames().lug(label),
  labelAt: align === 0 ? point(x, y - 16) : point(x + align * 13, y + 5),
  anchor: align === 0 ? 'middle' : align < 0 ? 'end' : 'start',
  shape: 'eyelet',
});

/** An open jack from the soldering side: the tip's spring reaches over the hole, the sleeve's washer is the rim around it. */
export function jackPortrait(jack: Jack, frame: Frame): Portrait {
  const s = frame.scale;
  const r = 36 * s;
  const dx = jack.ring ? 36 * s : 24 * s;
  // The name beside the sleeve, which is strong where it is asked for, stays in the frame.
  const name = 15 + 1.1 * textWidth(placeNames().lug('sleeve'), TEXT.lug);
  const cx = Math.min(frame.w / 2, frame.w - dx - name);
  const cy = 14 + r;
  const y = cy + r + 40;
  const left = cx - dx;
  const right = cx + dx;
  const spots = new Map<string, Spot>([
    [`${jack.id}.tip`, spotAt(left, y, 'tip', -1)],
    [`${jack.id}.sleeve`, spotAt(right, y, 'sleeve', 1)],
  ]);
  if (jack.ring) spots.set(`${jack.id}.ring`, spotAt(cx, y, 'ring', 0));
  const arm = cx - r - 12;
  return {
    title: called(jack.title),
    seen: drawingWords().seenFromTheSolderingSide,
    brief: drawingWords().fromTheSolderingSide,
    spots,
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light} stroke-linejoin="round">
        <circle cx={cx} cy={cy} r={r} fill={PAPER} />
        <circle cx={cx} cy={cy} r={r * 0.5} stroke={LINE} />
        <path
          d={`M${cx + r * 0.5} ${cy + r * 0.86}L${right - 9} ${y - 22}V${y}a9 9 0 0 0 18 0V${y - 30}L${cx + r * 0.88} ${cy + r * 0.46}`}
          fill={PAPER}
        />
        {jack.ring && (
          <path d={`M${cx - 9} ${cy + r}V${y}a9 9 0 0 0 18 0V${cy + r}`} fill={PAPER} />
        )}
        <path
          d={`M${left - 9} ${y}V${y - 18}L${arm} ${cy + 14}V${cy - 2}q0 -9 9 -9H${cx - 10}l10 8l8 -8h10`}
        />
        <path
          d={`M${left + 9} ${y}V${y - 22}L${arm + 13} ${cy + 8}V${cy + 1}H${cx - 14}`}
          stroke={LINE}
        />
        <path d={`M${left - 9} ${y}a9 9 0 0 0 18 0`} />
      </g>
    ),
  };
}

/** The free plug of a cable whose other end is in the jack: the same two points, with the guitar closed. */
export function plugPortrait(jack: Jack, frame: Frame): Portrait {
  const s = frame.scale;
  const left = frame.w / 2 - 74 * s;
  const cy = frame.h / 2;
  const half = 14 * s;
  const at = (x: number) => left + x * s;
  return {
    title: drawingWords().freeCablePlug,
    seen: drawingWords().otherPlugInTheJack(jack.title),
    brief: drawingWords().otherPlug,
    spots: new Map<string, Spot>([
      [
        `${jack.id}.tip`,
        {
          at: point(at(133), cy),
          radius: 5,
          side: 'right',
          label: placeNames().lug('tip'),
          labelAt: point(at(134), cy + half + 20),
          anchor: 'middle',
          shape: 'patch',
          leadsHidden: true,
        },
      ],
      [
        `${jack.id}.sleeve`,
        {
          at: point(at(80), cy),
          radius: 5,
          side: 'down',
          label: placeNames().lug('sleeve'),
          labelAt: point(at(82), cy + half + 20),
          anchor: 'middle',
          shape: 'patch',
          leadsHidden: true,
        },
      ],
    ]),
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light} stroke-linejoin="round">
        <path d={`M0 ${cy}C${at(-6)} ${cy} ${at(-2)} ${cy} ${at(4)} ${cy}`} stroke-width={5} />
        <rect
          x={at(2)}
          y={cy - half - 6}
          width={48 * s}
          height={2 * half + 12}
          rx={6}
          fill={PAPER}
        />
        <path
          d={`M${at(12)} ${cy - half}v${2 * half}M${at(20)} ${cy - half}v${2 * half}`}
          stroke={LINE}
        />
        <rect x={at(50)} y={cy - half} width={60 * s} height={2 * half} fill={PAPER} />
        <rect x={at(110)} y={cy - half} width={7 * s} height={2 * half} fill={SOFT} />
        <path
          d={`M${at(117)} ${cy - half}h${6 * s}q${4 * s} ${half * 0.45} ${9 * s} ${half * 0.25}q${14 * s} ${half * 0.05} ${16 * s} ${half * 0.75}q${-2 * s} ${half * 0.7} ${-16 * s} ${half * 0.75}q${-5 * s} ${-half * 0.2} ${-9 * s} ${half * 0.25}h${-6 * s}z`}
          fill={PAPER}
        />
      </g>
    ),
  };
}
