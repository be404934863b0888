import type { LugName, Switch } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { outward, type Point, point, type Side } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE } from '../theme.ts';

interface Placed {
  readonly lug: LugName;
  readonly x: number;
  readonly y: number;
  readonly side: Side;
  readonly label?: Point;
  readonly dodge?: number;
}

/** A switch from the soldering side: its lugs in the rows that the part gives. */
export function switchPortrait(part: Switch, frame: Frame): Portrait {
  const placed = part.style === 'rotary' ? ring(part, frame) : grid(part, frame);
  const spots = new Map<string, Spot>();
  const radius = part.rows.flat().length > 8 ? 7 : 7 * frame.scale;
  const inside = part.rows.length > 2 ? 15 : 12 + radius;
  for (const { lug, x, y, side, label, dodge } of placed) {
    const out = outward[side];
    const level = side === 'left' || side === 'right';
    spots.set(`${part.id}.${lug}`, {
      at: point(x, y),
      radius,
      side,
      label: lug,
      labelAt: label ?? (level ? point(x - out.x * 13, y + 5) : point(x, y - out.y * inside + 5)),
      anchor: label ? 'middle' : side === 'left' ? 'start' : side === 'right' ? 'end' : 'middle',
      shape: 'eyelet',
      ...(dodge && { dodge }),
    });
  }
  const xs = placed.map((p) => p.x);
  const ys = placed.map((p) => p.y);
  const box = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
  const oneRow = part.rows.length === 1;
  const cx = frame.w / 2;
  const wide = placed.every(({ side }) => side === 'up' || side === 'down');
  const body = {
    x: box.left - (wide ? 16 : -2),
    y: oneRow ? box.top - 36 : box.top + (wide ? 6 : -16),
    w: box.right - box.left + (wide ? 32 : -4),
    h: oneRow ? 32 : box.bottom - box.top + (wide ? -12 : 32),
  };
  if (part.frame) {
    const x = Math.max(14, body.x - 13);
    spots.set(`${part.id}.frame`, {
      at: point(x, body.y + body.h / 2),
      radius: 7,
      side: 'down',
      label: placeNames().lug('frame'),
      labelAt: oneRow
        ? point(Math.max(2, x - 10), body.y - 8)
        : point(Math.max(44, box.left - 12), box.top - 8),
      anchor: oneRow ? 'start' : 'end',
      shape: 'patch',
    });
  }
  return {
    title: called(part.title),
    seen: drawingWords().seenFromTheSolderingSide,
    brief: drawingWords().fromTheSolderingSide,
    spots,
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        {part.style === 'rotary' ? (
          <>
            <circle cx={cx} cy={frame.h / 2} r={50 * frame.scale} fill={PAPER} />
            {oneRow && <circle cx={cx} cy={frame.h / 2} r={9} stroke={LINE} />}
          </>
        ) : part.style === 'button' ? (
          <circle cx={cx} cy={body.y + body.h / 2 - 2} r={34 * frame.scale} fill={PAPER} />
        ) : (
          <>
            {part.frame && (
              <rect
                x={Math.max(3, body.x - 26)}
                y={body.y + body.h / 2 - 15}
                width={Math.min(frame.w - 3, body.x + body.w + 26) - Math.max(3, body.x - 26)}
                height={30}
                rx={part.style === 'blade' ? 5 : 15}
                fill={PAPER}
              />
            )}
            <rect x={body.x} y={body.y} width={body.w} height={body.h} rx={5} fill={PAPER} />
            {part.frame && (
              <circle
                cx={Math.min(frame.w - 14, body.x + body.w + 13)}
                cy={body.y + body.h / 2}
                r={5}
                stroke={LINE}
              />
            )}
          </>
        )}
        {placed.map(({ lug, x, y, side }) => {
          const out = outward[side];
          return part.style === 'rotary' ? null : (
            <path
              key={lug}
              d={`M${x} ${y}L${x - out.x * 8} ${y - out.y * 8}`}
              stroke-width={14}
              stroke={LINE}
              stroke-linecap="butt"
            />
          );
        })}
      </g>
    ),
  };
}

/** Rows as they are; leads leave by the nearest edge, and between the lugs of an outer row where one is in the way. */
function grid(part: Switch, frame: Frame): Placed[] {
  const s = frame.scale;
  const columns = Math.max(...part.rows.map((row) => row.length));
  const rows = part.rows.length;
  const level = columns <= 2 && rows >= 2;
  const pitchX = Math.min(
    (level ? 72 : 36) * s,
    (frame.w - (part.frame ? (rows > 1 ? 96 : 80) : 60)) / Math.max(1, columns - 1),
  );
  const pitchY =
    rows === 1 ? 0 : rows === 2 && !level ? 76 : Math.min((level ? 34 : 44) * s, 150 / (rows - 1));
  const middle = rows === 1 ? frame.h / 2 + 10 : frame.h / 2;
  return part.rows.flatMap((row, r) =>
    row.map((lug, c): Placed => {
      const indent = ((columns - row.length) * pitchX) / 2;
      const side: Side = level
        ? c < row.length / 2
          ? 'left'
          : 'right'
        : rows > 1 && r < rows / 2
          ? 'up'
          : 'down';
      return {
        lug,
        x: frame.w / 2 - ((columns - 1) * pitchX) / 2 + indent + c * pitchX,
        y: middle + (r - (rows - 1) / 2) * pitchY,
        side,
        ...(!level && r > 0 && r < rows - 1 && { dodge: pitchX / 2 }),
      };
    }),
  );
}

/** The first row around the wafer, further rows on smaller rings. */
function ring(part: Switch, frame: Frame): Placed[] {
  return part.rows.flatMap((row, r) => {
    const radius = (r === 0 ? 58 : 58 - 32 * r) * frame.scale;
    return row.map((lug, i): Placed => {
      const turn = row.length === 1 ? Math.PI / 2 : (2 * Math.PI * (i + 0.5)) / row.length;
      const x = frame.w / 2 - Math.sin(turn) * radius;
      const y = frame.h / 2 + Math.cos(turn) * radius;
      const sideways = Math.abs(Math.sin(turn)) > Math.abs(Math.cos(turn));
      const side: Side = sideways
        ? Math.sin(turn) > 0
          ? 'left'
          : 'right'
        : Math.cos(turn) > 0
          ? 'down'
          : 'up';
      const label = point(x + Math.sin(turn) * 20, y - Math.cos(turn) * 18 + 5);
      return { lug, x, y, side, label };
    });
  });
}
