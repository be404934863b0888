import type { JointId } from '../../../circuit/circuit.ts';
import { along, distance, type Point, point, roundedPath } from '../geometry.ts';
import { COPPER, INK, PAPER, SOFT } from '../theme.ts';
import { insulationOf } from './insulation.ts';
import type { LeadPath } from './route-leads.ts';

/** Radius of a bend, units. */
const BEND = 7;

/** A lead in the colour it was entered with, edged so that it shows on any paper; grounds lighter than the rest. */
export function LeadDrawing({
  path,
  ground,
  strong,
  picked,
  lifted,
}: {
  path: LeadPath;
  ground: boolean;
  strong: boolean;
  picked: boolean;
  lifted: ReadonlySet<JointId>;
}) {
  const { lead, points } = path;
  const [from, to] = (['from', 'to'] as const).map((end) => lifted.has(`${lead.id}@${end}`));
  const shown = lifting(points, Boolean(from), Boolean(to));
  const d = roundedPath(shown, BEND);
  const insulation = insulationOf(lead.colour);
  const line = strong ? COPPER : ground ? SOFT : INK;
  const width = strong ? 3 : ground ? 1.5 : 2;
  return (
    <g>
      <path d={d} stroke={PAPER} stroke-width={insulation ? 8 : 6} />
      {picked && <path d={d} stroke={COPPER} stroke-opacity={0.35} stroke-width={9} />}
      {insulation ? (
        <>
          <path d={d} stroke={line} stroke-width={4.5} />
          <path d={d} stroke={insulation} stroke-width={2.5} />
        </>
      ) : (
        <path
          d={d}
          stroke={line}
          stroke-width={width}
          stroke-dasharray={lead.kind === 'mount' ? '2 5' : undefined}
        />
      )}
    </g>
  );
}

/** Units by which the bare end of a lifted lead stands off its lug. */
const LIFT = 24;

/** The lead without its first stretch where an end is unsoldered. */
function lifting(points: readonly Point[], from: boolean, to: boolean): readonly Point[] {
  let shown = points;
  if (from) shown = shorter(shown);
  if (to)
    shown = shorter([...shown].reverse())
      .slice()
      .reverse();
  return shown;
}

function shorter(points: readonly Point[]): readonly Point[] {
  let left = LIFT;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const long = distance(a, b);
    if (long > left)
      return [along(a, point((b.x - a.x) / long, (b.y - a.y) / long), left), ...points.slice(i)];
    left -= long;
  }
  return points.slice(-2);
}
