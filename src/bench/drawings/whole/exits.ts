import type { LugRef } from '../../../circuit/circuit.ts';
import { outward, type Point, point, type Side } from '../geometry.ts';
import { splitLug } from '../names.ts';
import type { Spot } from '../portrait.ts';
import type { Figure } from './figure.ts';
import { GRID, type Stand, type Turn } from './places.ts';
import { turned, turnedSide } from './turn.ts';

/** A lug as it stands after turning; points from the place of its part. */
export interface Lug {
  readonly ref: LugRef;
  readonly at: Point;
  readonly radius: number;
  readonly shape: Spot['shape'];
  readonly label: string;
  /** Middle of the label. */
  readonly labelAt: Point;
}

export const level = (side: Side): boolean => side === 'left' || side === 'right';
/** Where a point lies along a side. */
export const along = (at: Point, side: Side): number => (level(side) ? at.y : at.x);
const cells = (units: number): number => units / GRID;

/** A way out of a part before it has its place on the side. */
export interface Draft {
  readonly lug: Lug;
  readonly side: Side;
  /** Place along the side, in cells. */
  readonly wanted: number;
  /** Corners between the lug and the port. */
  readonly via: readonly Point[];
  readonly from: Point;
  readonly blob: boolean;
}

/** The ways out for the `count` leads on a lug, by what kind of thing it is; points from the part's place, turned. */
export function draftsOf(
  stand: Stand,
  figure: Figure,
  lug: Lug,
  turn: Turn,
  count: number,
): readonly Draft[] {
  const { part: id, lug: name } = splitLug(lug.ref);
  const part = stand.parts.find((one) => one.id === id);
  const own = (side: Side, at: Point, blob = false, via: readonly Point[] = []): Draft => {
    const [turnedAt, turnedTo] = [turned(at, turn), turnedSide(side, turn)];
    const turnedVia = via.map((corner) => turned(corner, turn));
    return {
      lug,
      side: turnedTo,
      wanted: cells(along(turnedVia.at(-1) ?? turnedAt, turnedTo)),
      via: turnedVia,
      from: turnedAt,
      blob,
    };
  };
  const rim = rimOf(stand, part?.kind, name, count);
  if (rim) return rim.map(({ side, at }) => own(side, at, true));
  if (count === 0) return [];
  // Back to the portrait's own directions.
  const at = turned(lug.at, ((360 - turn) % 360) as Turn);
  const spot = figure.portrait.spots.get(lug.ref)!;
  const gap =
    part?.kind === 'switch' && part.style === 'rotary' && !part.rows[0]?.includes(name)
      ? gapBeside(at, part.rows[0]?.length ?? 1)
      : null;
  const side = gap ? gap.side : sideOf(stand, figure, lug.ref, spot.side);
  const dodge = spot.dodge && side === spot.side ? spot.dodge : 0;
  const out = outward[side];
  const via = gap
    ? gap.via
    : dodge
      ? [point(at.x + dodge, at.y + out.y * 16), point(at.x + dodge, at.y + out.y * 36)]
      : [];
  const main = Array.from({ length: count }, () => own(side, at, false, via));
  return [...main, ...asideOf(part?.kind, name, at, own)];
}

/** Where a portrait says nothing of a whole drawing: coils that are not the last leave at their ends, plates beside them. */
function sideOf(stand: Stand, figure: Figure, ref: LugRef, side: Side): Side {
  const { part: id, lug } = splitLug(ref);
  const coils = stand.parts.filter(({ kind }) => kind === 'coil');
  if (coils.length > 0) {
    const spot = figure.portrait.spots.get(ref)!;
    const ends = spot.at.x < figure.middle.x ? 'left' : 'right';
    return coils.at(-1)!.id === id ? 'down' : ends;
  }
  if (lug === 'frame') return 'left';
  return side;
}

/** From the middle of a rotary switch its leads leave between two lugs of the ring, where the nearest gap is. */
function gapBeside(at: Point, outer: number): { side: Side; via: readonly Point[] } {
  // Angles from straight down; the portrait has its outer lugs half a step from there, so gaps are at whole steps.
  const step = (2 * Math.PI) / outer;
  const angle = Math.round(Math.atan2(-at.x, at.y) / step) * step;
  const on = (radius: number) => point(-Math.sin(angle) * radius, Math.cos(angle) * radius);
  const [x, y] = [-Math.sin(angle), Math.cos(angle)];
  const side: Side = Math.abs(x) > Math.abs(y) ? (x < 0 ? 'left' : 'right') : y > 0 ? 'down' : 'up';
  return { side, via: [on(34), on(64)] };
}

/** A second way out to the side for the outer lugs of a row, so that leads that go up need not go down first. */
function asideOf(
  kind: string | undefined,
  name: string,
  at: Point,
  own: (side: Side, at: Point) => Draft,
): Draft[] {
  if (kind === 'pot' && name === '3') return [own('left', at)];
  if (kind === 'pot' && name === '1') return [own('right', at)];
  if (kind === 'capacitor' || kind === 'resistor')
    return [own(name === 'a' ? 'left' : 'right', at)];
  if (kind === 'splice') return [own('left', at), own('right', at)];
  return [];
}

/** Metal is soldered to anywhere along its rim: more places than leads, of which each lead takes the nearest. */
function rimOf(
  stand: Stand,
  kind: string | undefined,
  name: string,
  count: number,
): { side: Side; at: Point }[] | null {
  const steps = (n: number, step = 12): number[] =>
    Array.from({ length: n }, (_, i) => (i - (n - 1) / 2) * step);
  if (kind === 'pot' && name === 'case') {
    const r = (40 * 36) / 38;
    if (stand.parts.length > 1) {
      const n = Math.max(1, count);
      const step = Math.min(11, 44 / Math.max(1, n - 1));
      return steps(n, step).map((x) => ({
        side: 'up',
        at: point(x - 2, 2 - Math.sqrt(r * r - x * x)),
      }));
    }
    const top = Math.max(5, count - 8);
    return [
      ...steps(top).map((x) => ({
        side: 'up' as const,
        at: point(x, -Math.sqrt(Math.max(100, r * r - x * x))),
      })),
      ...([-1, 1] as const).flatMap((sign) =>
        [-18, -6, 6, 18].map((y) => ({
          side: sign < 0 ? ('left' as const) : ('right' as const),
          at: point(sign * Math.sqrt(r * r - y * y), y),
        })),
      ),
    ];
  }
  const first = stand.parts[0]!;
  if (kind === 'metal' && first.kind === 'metal') {
    const n = Math.max(3, count - 4);
    if (first.role === 'strings')
      return [
        ...steps(n).map((x) => ({ side: 'down' as const, at: point(x, 11) })),
        { side: 'left', at: point(-36, 0) },
        { side: 'right', at: point(36, 0) },
      ];
    return [
      ...(['up', 'down'] as const).flatMap((side) =>
        steps(n, 24).map((x) => ({ side, at: point(x, side === 'up' ? -22 : 22) })),
      ),
      { side: 'left', at: point(-42, 0) },
      { side: 'right', at: point(42, 0) },
    ];
  }
  return null;
}
