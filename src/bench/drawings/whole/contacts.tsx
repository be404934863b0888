import type { Setting } from '../../../circuit/circuit.ts';
import { type Point, point } from '../geometry.ts';
import { COPPER, STROKE } from '../theme.ts';
import type { Standing } from './route-leads.ts';

/** How far a contact bows, as a share of its length: past lugs that stand in its row. */
const BOW = 0.28;

/** Which lugs a switch joins in this setting, as bows inside its body. */
export function Contacts({ standing, setting }: { standing: Standing; setting: Setting }) {
  const { at, footprint } = standing;
  const spots = new Map(footprint.lugs.map((lug) => [lug.ref, lug.at]));
  const bows = footprint.stand.parts.flatMap((part) => {
    if (part.kind !== 'switch') return [];
    const position = part.positions.find(({ name }) => name === setting.positions[part.id]);
    return (position?.joins ?? []).flatMap(([a, b]) => {
      const [from, to] = [spots.get(`${part.id}.${a}`), spots.get(`${part.id}.${b}`)];
      return from && to ? [{ key: `${part.id} ${a} ${b}`, d: bow(from, to) }] : [];
    });
  });
  return (
    <g
      transform={`translate(${at.x} ${at.y})`}
      fill="none"
      stroke={COPPER}
      stroke-width={STROKE.strong}
      stroke-linecap="round"
    >
      {bows.map(({ key, d }) => (
        <path key={key} d={d} />
      ))}
    </g>
  );
}

/** From lug to lug, bowed towards the part's middle, which lies at the origin. */
function bow(a: Point, b: Point): string {
  const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const normal = point(-(b.y - a.y) / length, (b.x - a.x) / length);
  const inward = normal.x * middle.x + normal.y * middle.y > 0 ? -1 : 1;
  const reach = inward * length * BOW * 2;
  return `M${a.x} ${a.y}Q${middle.x + normal.x * reach} ${middle.y + normal.y * reach} ${b.x} ${b.y}`;
}
