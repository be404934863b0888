import { type Point, point, type Side } from './geometry.ts';
import type { Frame, Portrait, Spot } from './portrait.ts';

/** A point of a picture that is laid the other way. */
export const turnedAbout = ({ x, y }: Point, { w, h }: Pick<Frame, 'w' | 'h'>): Point =>
  point(w - x, h - y);

const opposite: Readonly<Record<Side, Side>> = {
  up: 'down',
  down: 'up',
  left: 'right',
  right: 'left',
};
const otherAnchor = { start: 'end', middle: 'middle', end: 'start' } as const;

/** From the middle of a lug's name down to the line it stands on, twice: names stay upright. */
const TWICE_HALF_LETTER = 10;

/** The part as seen from the other side of the bench: turned by half a turn, its words upright. */
export function turnedPortrait(portrait: Portrait, frame: Frame): Portrait {
  const { count: _, brief: __, turned, body, spots, ...rest } = portrait;
  return {
    ...rest,
    // What is counted the other way round says so; letters of a switch stay the letters of their lugs.
    ...(turned ?? (portrait.brief !== undefined && { brief: portrait.brief })),
    ...(!turned && portrait.count !== undefined && { count: portrait.count }),
    body: <g transform={`rotate(180 ${frame.w / 2} ${frame.h / 2})`}>{body}</g>,
    spots: new Map([...spots].map(([ref, spot]) => [ref, turnedSpot(spot, frame)])),
  };
}

function turnedSpot(spot: Spot, frame: Frame): Spot {
  const label = turnedAbout(spot.labelAt, frame);
  return {
    ...spot,
    at: turnedAbout(spot.at, frame),
    side: opposite[spot.side],
    labelAt: point(label.x, label.y + TWICE_HALF_LETTER),
    anchor: otherAnchor[spot.anchor],
    ...(spot.dodge !== undefined && { dodge: -spot.dodge }),
  };
}
