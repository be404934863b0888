import type { LugName, Switch } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { COPPER, INK, PAPER, SOFT, STROKE } from '../drawings/theme.ts';
import { capital } from '../words.ts';

/** From lug to lug along a row, and from row to row; a name of four letters is as wide as the one. CSS pixels. */
const STEP = { x: 38, y: 44 };
const NARROW = 26;
/** Lugs in a row from which they stand closer, so that twelve still fit on a screen of 320. */
const MANY = 6;
const ROOM = { side: 18, above: 24, below: 26 };
/** Room to the right of the last spots for a name of three signs. */
const NAME_ROOM = 34;
const RADIUS = 5;
/** How far a line bows for each lug that it passes, and at most: lines of one end lie inside each other and below the names above. */
const BOW = { each: 7, most: 20 };
const NAME_SIZE = 12.5;

interface Spot {
  readonly lug: LugName;
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
}

function spotsOf({ rows }: Pick<Switch, 'rows'>): readonly Spot[] {
  const widest = Math.max(1, ...rows.map((row) => row.length));
  const step = widest > MANY ? NARROW : STEP.x;
  return rows.flatMap((lugs, row) =>
    lugs.map((lug, column) => ({
      lug,
      row,
      column,
      x: ROOM.side + column * step,
      y: ROOM.above + row * STEP.y,
    })),
  );
}

/** Whether lines run from row to row: then names stand beside their spots, and else below them. */
function runsDown({ positions }: Switch, spots: readonly Spot[]): boolean {
  const row = new Map(spots.map((spot) => [spot.lug, spot.row]));
  return positions.some(({ joins }) => joins.some(([a, b]) => row.get(a) !== row.get(b)));
}

/** Straight between neighbours, bowed where another lug would lie in the way. */
function lineBetween(a: Spot, b: Spot): string {
  const apart = Math.max(Math.abs(a.row - b.row), Math.abs(a.column - b.column));
  if (apart < 2) return `M${a.x} ${a.y}L${b.x} ${b.y}`;
  const bow = 2 * Math.min(BOW.most, BOW.each * apart);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const away =
    a.row === b.row ? { x: 0, y: -1 } : { x: (b.y - a.y) / length, y: -(b.x - a.x) / length };
  const middle = { x: (a.x + b.x) / 2 + away.x * bow, y: (a.y + b.y) / 2 + away.y * bow };
  return `M${a.x} ${a.y}Q${middle.x} ${middle.y} ${b.x} ${b.y}`;
}

/** Which lugs a switch joins, a picture for each position, as its soldering side is seen. */
export function ContactPictures({ part }: { part: Switch }) {
  const spots = spotsOf(part);
  const beside = runsDown(part, spots);
  return (
    <div class="contact-pictures">
      <p class="soft">{editorWords().joinedLugsSeenFromBehind}</p>
      <ul>
        {part.positions.map(({ name, title, joins }) => (
          <li key={name}>
            <ContactPicture spots={spots} title={title} joins={joins} beside={beside} />
            <span>{capital(called(title))}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

interface PictureProps {
  readonly spots: readonly Spot[];
  readonly title: string;
  readonly joins: Switch['positions'][number]['joins'];
  /** Names stand beside their spots. */
  readonly beside: boolean;
}

function ContactPicture({ spots, title, joins, beside }: PictureProps) {
  const of = new Map(spots.map((spot) => [spot.lug, spot]));
  const joined = new Set(joins.flat());
  const width = Math.max(...spots.map(({ x }) => x)) + (beside ? NAME_ROOM : ROOM.side);
  const height = Math.max(...spots.map(({ y }) => y)) + (beside ? ROOM.side : ROOM.below);
  return (
    <svg
      role="img"
      aria-label={editorWords().joinedInPosition(
        called(title),
        joins.map(([a, b]) => `${a} – ${b}`),
      )}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
    >
      {joins.map(([a, b]) => {
        const [from, to] = [of.get(a), of.get(b)];
        return from && to ? (
          <path
            key={`${a} ${b}`}
            d={lineBetween(from, to)}
            fill="none"
            stroke={COPPER}
            stroke-width={STROKE.strong}
            stroke-linecap="round"
          />
        ) : null;
      })}
      {spots.map(({ lug, x, y }) => (
        <g key={lug}>
          <circle
            cx={x}
            cy={y}
            r={RADIUS}
            fill={joined.has(lug) ? COPPER : PAPER}
            stroke={joined.has(lug) ? COPPER : SOFT}
            stroke-width={STROKE.light}
          />
          <text
            x={beside ? x + RADIUS + 4 : x}
            y={beside ? y + 0.36 * NAME_SIZE : y + RADIUS + NAME_SIZE + 1}
            text-anchor={beside ? 'start' : 'middle'}
            font-size={NAME_SIZE}
            font-weight={joined.has(lug) ? 700 : 400}
            fill={joined.has(lug) ? INK : SOFT}
          >
            {lug}
          </text>
        </g>
      ))}
    </svg>
  );
}
