/** Where the content lies in the frame: its scale and its upper left corner, CSS pixels. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}
/** Sizes in CSS pixels, the content's at scale 1. */
export interface Held {
  readonly content: { readonly w: number; readonly h: number };
  readonly frame: { readonly w: number; readonly h: number };
}

const LARGEST = 4;

/** The scale at which everything is in view, but never above its own size. */
export const fitScale = ({ content, frame }: Held): number =>
  Math.min(1.25, frame.w / content.w, frame.h / content.h) || 1;

/** The view within its limits: no smaller than what fits, nothing but the content in the frame where it can fill it. */
export function held({ scale, x, y }: View, bounds: Held): View {
  const { content, frame } = bounds;
  const kept = Math.min(LARGEST, Math.max(fitScale(bounds), scale));
  const within = (at: number, size: number, room: number): number =>
    size <= room ? (room - size) / 2 : Math.min(0, Math.max(room - size, at));
  return {
    scale: kept,
    x: within(x, content.w * kept, frame.w),
    y: within(y, content.h * kept, frame.h),
  };
}

/** The least scale at which a place that is looked at can be read. */
const READABLE = 0.9;

/** A point of the content in the middle of the frame, large enough to be read and no smaller than it was. */
export function centred(
  { x, y }: { readonly x: number; readonly y: number },
  bounds: Held,
  before = 0,
): View {
  const { frame } = bounds;
  const scale = Math.max(READABLE, fitScale(bounds), before);
  return held({ scale, x: frame.w / 2 - x * scale, y: frame.h / 2 - y * scale }, bounds);
}

export const moved = ({ scale, x, y }: View, dx: number, dy: number): View => ({
  scale,
  x: x + dx,
  y: y + dy,
});

/** Zooms about a point of the frame, which keeps what is under it. */
export function zoomed(
  { scale, x, y }: View,
  by: number,
  about: { readonly x: number; readonly y: number },
  bounds: Held,
): View {
  const next = Math.min(LARGEST, Math.max(fitScale(bounds), scale * by));
  const share = next / scale;
  return { scale: next, x: about.x - (about.x - x) * share, y: about.y - (about.y - y) * share };
}
