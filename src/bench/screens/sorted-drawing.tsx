import { leadName, type SeenPickup } from '../../circuit/seen-pickup.ts';
import type { Role } from '../../sorter/inside.ts';
import type { Joining } from '../../sorter/joins.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';
import { placeNames } from '../../words/en/places.ts';
import { COPPER, INK, SOFT, STROKE, TEXT, textWidth } from '../drawings/theme.ts';
import { LeadName, leadNameWidth } from './lead-name.tsx';
import { Bobbin } from './sort-drawing.tsx';

const WIDTH = 340;
const ROW = 34;
const COIL_END = 104;
const NAMES = 122;
/** From the longest name to the points where leads meet, and the words beside those. */
const FAN = 44;
const MEETING = 34;

interface Row {
  readonly lead: string;
  readonly role: Role;
  /** The lead with the sign of its end: "+ striped green lead". */
  readonly name: string;
  readonly y: number;
}

/** From top to bottom: the screw coil, what lies between the coils, the slug coil, metal, the rest. */
const order = (role: Role): number =>
  [
    'pair.finish',
    'a.finish',
    'a.open',
    'tap',
    'a.start',
    'link',
    'b.finish',
    'b.open',
    'b.start',
    'pair.start',
    'pair.open',
    'plate',
    'cover',
    'nothing',
  ].indexOf(role);

const sign = (role: Role): string =>
  role.endsWith('.finish') ? '+' : role.endsWith('.start') ? '−' : '';

function rowsOf(seen: SeenPickup, leads: readonly { lead: string; role: Role }[]): readonly Row[] {
  return [...leads]
    .sort((x, y) => order(x.role) - order(y.role))
    .flatMap(({ lead, role }, at) => {
      const told = seen.leads.find(({ id }) => id === lead);
      if (!told) return [];
      const name = [sign(role), called(leadName(told))].join(' ').trim();
      return [{ lead, role, name, y: ROW * (at + 0.75) }];
    });
}

interface SortedDrawingProps {
  readonly seen: SeenPickup;
  readonly leads: readonly { readonly lead: string; readonly role: Role }[];
  /** How the leads are joined; without it each lead stands on its end alone. */
  readonly joining?: Joining;
}

/** The coils with each lead on its end, and where the leads go. */
export function SortedDrawing({ seen, leads, joining }: SortedDrawingProps) {
  const rows = rowsOf(seen, leads);
  const height = Math.max(rows.length * ROW, seen.coils * 50) + 14;
  const meet = NAMES + Math.max(...rows.map(({ name }) => leadNameWidth(name))) + FAN;
  const { hot, joined, ground } = matWords();
  const widest = Math.max(...[hot, joined, ground].map((word) => textWidth(word, TEXT.lead)));
  const width = Math.max(WIDTH, joining ? meet + 12 + 1.15 * widest : 0);
  const middle = (roles: readonly Role[], fallback: number): number => {
    const own = rows.filter(({ role }) => roles.includes(role));
    return own.length > 0 ? own.reduce((sum, { y }) => sum + y, 0) / own.length : fallback;
  };
  const a = middle(['a.finish', 'a.open', 'a.start', 'tap', 'pair.finish'], ROW);
  const b = Math.max(
    a + 38,
    middle(['b.finish', 'b.open', 'b.start', 'pair.start'], a + 1.5 * ROW),
  );
  const metal = rows.filter(({ role }) => role === 'plate' || role === 'cover');
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={
        joining
          ? matWords().joiningWhereEachLeadGoes(joining.title)
          : matWords().eachLeadOnItsEndOfIts
      }
    >
      <Bobbin y={a - 14} place={seen.coils === 1 ? 'single' : 'screw'} lit={false} />
      {seen.coils === 2 && <Bobbin y={b - 14} place="slug" lit={false} />}
      {metal.map(({ lead, role, y }) => (
        <g key={lead}>
          <rect
            x={38}
            y={y - 9}
            width={66}
            height={18}
            fill="none"
            stroke={INK}
            stroke-width={STROKE.hair}
          />
          <text x={71} y={y + 4.5} text-anchor="middle" font-size={TEXT.brief} fill={INK}>
            {placeNames()[role === 'plate' ? 'plate' : 'cover']}
          </text>
        </g>
      ))}
      {rows.map(({ lead, role, name, y }) => {
        const from =
          role === 'plate' || role === 'cover' || role === 'nothing'
            ? y
            : role === 'link' || role === 'pair.open'
              ? (a + b) / 2
              : Math.abs(y - a) <= Math.abs(y - b) || seen.coils === 1
                ? a + Math.max(-9, Math.min(9, y - a))
                : b + Math.max(-9, Math.min(9, y - b));
        const start = role === 'nothing' ? NAMES - 10 : role === 'link' ? COIL_END - 8 : COIL_END;
        return (
          <g key={lead}>
            <path
              d={`M${start} ${from} L${NAMES - 4} ${y}`}
              fill="none"
              stroke={COPPER}
              stroke-width={STROKE.light}
            />
            {role === 'nothing' && (
              <path d={`M${start} ${y - 5} v10`} stroke={COPPER} stroke-width={STROKE.light} />
            )}
            <LeadName x={NAMES} y={y} name={name} />
          </g>
        );
      })}
      {joining && <Ends rows={rows} joining={joining} meet={meet} />}
    </svg>
  );
}

interface EndsProps {
  readonly rows: readonly Row[];
  readonly joining: Joining;
  /** How far to the right leads meet. */
  readonly meet: number;
}

/** Where the leads meet: at the switch, at each other, at ground; a cap for those taped alone. A lead leaves its row only past all names. */
function Ends({ rows, joining, meet }: EndsProps) {
  const { hot, together, ground, apart } = joining;
  const past = meet - FAN + 4;
  const groups = [
    { says: matWords().hot, leads: hot },
    { says: matWords().joined, leads: together },
    { says: matWords().ground, leads: ground },
  ]
    .map(({ says, leads }) => ({ says, own: rows.filter(({ lead }) => leads.includes(lead)) }))
    .filter(({ own }) => own.length > 0)
    .map((group) => ({
      ...group,
      middle: group.own.reduce((sum, { y }) => sum + y, 0) / group.own.length,
    }))
    .sort((x, y) => x.middle - y.middle);
  // As near to their leads as they can be with room between them, and in the middle of the drawing together.
  const least = groups.map(({ middle }, at) => middle - MEETING * at);
  const from = least.map((_, at) => Math.max(...least.slice(0, at + 1)));
  const over = Math.max(...from.map((y, at) => y - (least[at] as number))) / 2;
  return (
    <>
      {groups.map(({ says, own }, at) => {
        const y = (from[at] as number) + MEETING * at - over;
        return (
          <g key={says}>
            {own.map((row) => (
              <path
                key={row.lead}
                d={`M${NAMES + leadNameWidth(row.name) + 4} ${row.y} L${past} ${row.y} L${meet} ${y}`}
                fill="none"
                stroke={INK}
                stroke-width={STROKE.light}
              />
            ))}
            <circle cx={meet} cy={y} r={5} fill={COPPER} />
            <text x={meet + 10} y={y + 5} font-size={TEXT.lead} font-weight="600" fill={INK}>
              {says}
            </text>
          </g>
        );
      })}
      {rows
        .filter(({ lead }) => apart.includes(lead))
        .map(({ lead, name, y }) => (
          <path
            key={lead}
            d={`M${NAMES + leadNameWidth(name) + 4} ${y} h12 m0 -5 v10`}
            stroke={SOFT}
            stroke-width={STROKE.light}
          />
        ))}
    </>
  );
}
