import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { drawingWords } from '../../../words/en/drawings.ts';
import { centred, type Held, held, moved, type View, zoomed } from './zoom.ts';

/** A finger that moved less than this tapped, CSS pixels. */
const STILL = 6;
const STEP = 1.4;
const PAN = 48;

/**
 * A window onto something larger: drag to move, two fingers or the buttons to zoom, arrows and + - 0 by keyboard.
 * `w` and `h` are the size of the content at scale 1; it is laid out at the size it is shown at, so lines stay sharp.
 */
export function ZoomFrame({
  w,
  h,
  label,
  look,
  children,
}: {
  w: number;
  h: number;
  /** What is in the window, for those who do not see it. */
  label: string;
  /** A point of the content to go near to; without one the window is back where it was. */
  look?: { readonly x: number; readonly y: number } | null | undefined;
  children: ComponentChildren;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState({ w: 0, h: 0 });
  const [own, setOwn] = useState<View | null>(null);
  const [near, setNear] = useState<View | null>(null);
  const [view, setView] = look ? [near, setNear] : [own, setOwn];
  const fingers = useRef(new Map<number, { x: number; y: number }>());
  const dragged = useRef(false);
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const measure = () => setSize({ w: element.clientWidth, h: element.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  const bounds: Held = { content: { w, h }, frame: size };
  useEffect(() => {
    setNear(look && size.w > 0 ? centred(look, bounds, (near ?? own)?.scale) : null);
  }, [look?.x, look?.y, size.w, size.h]);
  const now = held(view ?? { scale: 0, x: 0, y: 0 }, bounds);
  const change = (next: (before: View) => View) =>
    setView((before) => held(next(held(before ?? { scale: 0, x: 0, y: 0 }, bounds)), bounds));
  const middle = { x: size.w / 2, y: size.h / 2 };
  const zoom = (by: number) => change((before) => zoomed(before, by, middle, bounds));

  const at = (event: PointerEvent) => {
    const { left, top } = frame.current!.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const down = (event: PointerEvent) => {
    // The first finger down: one whose lifting was never told is not there any more.
    if (event.isPrimary) fingers.current.clear();
    if (fingers.current.size === 0) dragged.current = false;
    fingers.current.set(event.pointerId, at(event));
  };
  const move = (event: PointerEvent) => {
    const before = fingers.current.get(event.pointerId);
    if (!before) return;
    const here = at(event);
    const others = [...fingers.current].filter(([id]) => id !== event.pointerId);
    const other = others[0]?.[1];
    if (!dragged.current && !other && Math.hypot(here.x - before.x, here.y - before.y) < STILL)
      return;
    if (!dragged.current) {
      dragged.current = true;
      frame.current?.setPointerCapture(event.pointerId);
    }
    fingers.current.set(event.pointerId, here);
    if (!other) return change((view) => moved(view, here.x - before.x, here.y - before.y));
    const apart = (a: { x: number; y: number }) => Math.hypot(a.x - other.x, a.y - other.y);
    const centre = { x: (here.x + other.x) / 2, y: (here.y + other.y) / 2 };
    change((view) =>
      moved(
        zoomed(view, apart(here) / Math.max(1, apart(before)), centre, bounds),
        (here.x - before.x) / 2,
        (here.y - before.y) / 2,
      ),
    );
  };
  const up = (event: PointerEvent) => fingers.current.delete(event.pointerId);
  const keys: Readonly<Record<string, () => void>> = {
    '+': () => zoom(STEP),
    '=': () => zoom(STEP),
    '-': () => zoom(1 / STEP),
    '0': () => setView(null),
    ArrowLeft: () => change((view) => moved(view, PAN, 0)),
    ArrowRight: () => change((view) => moved(view, -PAN, 0)),
    ArrowUp: () => change((view) => moved(view, 0, PAN)),
    ArrowDown: () => change((view) => moved(view, 0, -PAN)),
  };
  return (
    <div class="zoom">
      <section
        ref={frame}
        class="zoom-frame"
        aria-label={drawingWords().labelArrowsMoveItAndZoom(label)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is scrolled by keyboard.
        tabIndex={0}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
        onClickCapture={(event) => {
          if (dragged.current && event.detail !== 0) event.stopPropagation();
        }}
        onWheel={(event) => {
          if (!event.ctrlKey) return;
          event.preventDefault();
          const { left, top } = frame.current!.getBoundingClientRect();
          const centre = { x: event.clientX - left, y: event.clientY - top };
          change((view) => zoomed(view, Math.exp(-event.deltaY / 200), centre, bounds));
        }}
        onKeyDown={(event) => {
          const act = keys[event.key];
          if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
          event.preventDefault();
          act();
        }}
      >
        <div
          class="zoom-content"
          style={{
            '--wide': `${w * now.scale}px`,
            '--high': `${h * now.scale}px`,
            '--left': `${now.x}px`,
            '--top': `${now.y}px`,
          }}
        >
          {children}
        </div>
      </section>
      <div class="zoom-keys">
        <button type="button" aria-label={drawingWords().zoomIn} onClick={() => zoom(STEP)}>
          +
        </button>
        <button type="button" aria-label={drawingWords().zoomOut} onClick={() => zoom(1 / STEP)}>
          −
        </button>
        <button type="button" onClick={() => setView(null)}>
          {drawingWords().fit}
        </button>
      </div>
    </div>
  );
}
