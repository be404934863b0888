import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { useAfterPaint } from './after-paint.ts';

interface KeysRoomProps {
  /** Another one for every question. */
  readonly question: string;
  readonly kind: string;
  readonly children: ComponentChildren;
}

/** How high the keys of each kind of reading stood last, CSS pixels. */
const heights = new Map<string, number>();

/** The keys of a reading, a frame after its words. Their room is kept, so that nothing jumps. */
export function KeysRoom({ question, kind, children }: KeysRoomProps) {
  const there = useAfterPaint(question);
  const room = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!there || !room.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) heights.set(kind, entry.contentRect.height);
    });
    observer.observe(room.current);
    return () => observer.disconnect();
  }, [there, kind]);
  const height = heights.get(kind);
  return (
    <div
      ref={room}
      class="asking-enter"
      style={there || height === undefined ? undefined : { minBlockSize: `${height}px` }}
    >
      {there && children}
    </div>
  );
}
