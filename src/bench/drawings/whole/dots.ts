import type { SiteId } from '../../../circuit/edit.ts';
import type { LugName, PartId } from '../../../circuit/parts/part.ts';
import { along, type Box, boxesOverlap, distance, type Point, point } from '../geometry.ts';
import { textWidth } from '../theme.ts';
import { bodyBox } from './body-box.ts';
import type { LeadPath, Standing } from './route-leads.ts';

/** Shares of suspicion by place, 0..1. */
export type Suspicion = Readonly<Record<SiteId | PartId, number>>;

/** A place in the wiring as a dot. `share` is 0..1. */
export interface Dot {
  readonly site: SiteId | PartId;
  readonly at: Point;
  readonly share: number;
  /** The joint has a blob of solder of its own, on metal. */
  readonly blob: boolean;
}

/** Below this share, wires and the insides of parts have no dot; joints always do. */
export const WORTH_SHOWING = 0.003;

/** Radius in layout units: the area grows with the share, above a floor that can still be seen. */
export const dotRadius = (share: number): number =>
  3 + 10 * Math.sqrt(Math.min(1, Math.max(0, share)));

interface Drawn {
  readonly stands: readonly Standing[];
  readonly leads: readonly LeadPath[];
}

/** A dot on every joint, and on each wire and inside of a part that is suspected; the largest last, to lie on top. */
export function dotsOf({ stands, leads }: Drawn, suspicion: Suspicion): readonly Dot[] {
  const share = (site: string): number => suspicion[site] ?? 0;
  const ofLeads = leads.flatMap(({ lead, points, dots, blobs }): Dot[] => [
    ...(['from', 'to'] as const).map((end) => ({
      site: `${lead.id}@${end}`,
      at: dots[end],
      share: share(`${lead.id}@${end}`),
      blob: blobs[end],
    })),
    ...(share(lead.id) > WORTH_SHOWING
      ? [{ site: lead.id, at: midway(points), share: share(lead.id), blob: false }]
      : []),
  ]);
  const drawn = new Set(leads.flatMap(({ lead: { id } }) => [id, `${id}@from`, `${id}@to`]));
  const corners = new Map<PartId, number>();
  const inside = Object.entries(suspicion).flatMap(([site, of]): Dot[] => {
    if (drawn.has(site) || of <= WORTH_SHOWING) return [];
    const [part, name] = site.split(/[:.@]/) as [string, string | undefined];
    const stand = stands.find(({ footprint }) =>
      footprint.stand.parts.some(({ id }) => id === part),
    );
    if (!stand) return [];
    const at = insideAt(stand, part, name) ?? cornerOf(stand, corners);
    return [{ site, at, share: of, blob: false }];
  });
  return [...ofLeads, ...inside].sort((a, b) => a.share - b.share);
}

/** Where the dot of a place is; null where it has none. */
export const spotOf = (drawn: Drawn, suspicion: Suspicion, site: SiteId | PartId): Point | null =>
  dotsOf(drawn, suspicion).find((dot) => dot.site === site)?.at ?? null;

/** The middle of the longest stretch, where a dot is clear of bends. */
function midway(points: readonly Point[]): Point {
  let best = points[0] ?? point(0, 0);
  let longest = -1;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    if (distance(a, b) <= longest) continue;
    longest = distance(a, b);
    best = point((a.x + b.x) / 2, (a.y + b.y) / 2);
  }
  return best;
}

/** Units from the lugs to what lies between them and the middle of the part. */
const INWARD = 13;

/** Where something inside a part is: a winding between its ends, a track and a contact beside the lugs they join. */
function insideAt(
  { at, footprint }: Standing,
  part: PartId,
  name: string | undefined,
): Point | undefined {
  const lug = (of: LugName): Point | undefined =>
    footprint.lugs.find(({ ref }) => ref === `${part}.${of}`)?.at;
  const between = (names: readonly LugName[], inward: number): Point | undefined => {
    const found = names.flatMap((of) => lug(of) ?? []);
    if (found.length < names.length || found.length === 0) return undefined;
    const x = found.reduce((sum, one) => sum + one.x, 0) / found.length;
    const y = found.reduce((sum, one) => sum + one.y, 0) / found.length;
    const away = Math.hypot(x, y);
    const toMiddle = away > 0 ? point(-x / away, -y / away) : point(0, 0);
    const moved = along(point(x, y), toMiddle, Math.min(inward, away));
    return point(at.x + moved.x, at.y + moved.y);
  };
  switch (name) {
    case 'winding':
      return between(['start', 'finish'], 0);
    case 'body':
      return at;
    case 'lower':
      return between(['1', '2'], INWARD);
    case 'upper':
      return between(['2', '3'], INWARD);
    case 'wiper':
      return between(['2'], INWARD);
    default:
      return name === undefined ? undefined : between(name.split('-'), INWARD);
  }
}

/** The next free corner of a part's body, for what is the whole part; on a pot's round case, on its rim. */
function cornerOf(stand: Standing, taken: Map<PartId, number>): Point {
  const { id, parts } = stand.footprint.stand;
  const n = taken.get(id) ?? 0;
  taken.set(id, n + 1);
  const [first] = parts;
  // The names of a jack's lugs stand at its upper corners.
  const [right, down] = CORNERS[(n + (first?.kind === 'jack' ? 2 : 0)) % 4]!;
  const layer = Math.floor(n / 4);
  if (first?.kind === 'pot') {
    const out = POT_RIM * Math.SQRT1_2 + 6 * layer;
    return point(stand.at.x + (right ? out : -out), stand.at.y + (down ? out : -out));
  }
  const { x, y, w, h } = bodyBox(stand);
  const inset = 6 + 6 * layer;
  return point(x + right * w + (right ? -inset : inset), y + down * h + (down ? -inset : inset));
}

const CORNERS = [
  [1, 0],
  [0, 0],
  [1, 1],
  [0, 1],
] as const;
/** Radius of a pot's case in the whole drawing, units. */
const POT_RIM = 36;

/** A figure beside a dot. */
export interface DotFigure {
  readonly site: SiteId | PartId;
  readonly text: string;
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Share from which a dot also says its figure, room allowing. */
export const SAY_FIGURE = 0.1;
export const FIGURE_SIZE = 14;

/** Figures of the largest dots, each on the side where it hides neither another figure nor another large dot; without such a side, none. */
export function figuresOf(dots: readonly Dot[], box: Box): readonly DotFigure[] {
  const large = dots.filter(({ share }) => share >= SAY_FIGURE).sort((a, b) => b.share - a.share);
  const taken: { site: string; box: Box }[] = large.map(({ site, at, share }) => {
    const r = dotRadius(share) + 3;
    return { site, box: { x: at.x - r, y: at.y - r, w: 2 * r, h: 2 * r } };
  });
  return large.flatMap(({ site, at, share }): DotFigure[] => {
    const text = `${Math.round(share * 100)}\u00a0%`;
    const w = textWidth(text, FIGURE_SIZE);
    const r = dotRadius(share) + 5;
    const sides: readonly (DotFigure & { box: Box })[] = [
      { at: point(at.x + r, at.y + 5), anchor: 'start' as const, left: at.x + r },
      { at: point(at.x - r, at.y + 5), anchor: 'end' as const, left: at.x - r - w },
      { at: point(at.x, at.y - r), anchor: 'middle' as const, left: at.x - w / 2 },
      { at: point(at.x, at.y + r + 11), anchor: 'middle' as const, left: at.x - w / 2 },
    ].map((side) => ({
      site,
      text,
      at: side.at,
      anchor: side.anchor,
      box: { x: side.left, y: side.at.y - 11, w, h: 13 },
    }));
    const free = sides.find(
      ({ box: room }) =>
        room.x > box.x &&
        room.x + room.w < box.x + box.w &&
        room.y > box.y &&
        room.y + room.h < box.y + box.h &&
        !taken.some((other) => other.site !== site && boxesOverlap(other.box, room)),
    );
    if (!free) return [];
    const { box: room, ...figure } = free;
    taken.push({ site: `${site} figure`, box: room });
    return [figure];
  });
}
