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

/** The keys of a reading, a frame after its words where it is known what room they need, so that nothing jumps; else with them. */
export function KeysRoom({ question, kind, children }: KeysRoomProps) {
  const painted = useAfterPaint(question);
  const height = heights.get(kind);
  // Once there they stay: their height is told while they stand.
  const begun = useRef({ question: '', whole: false });
  if (begun.current.question !== question)
    begun.current = { question, whole: height === undefined };
  const there = painted || begun.current.whole;
  const room = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!there || !room.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.height > 0) heights.set(kind, entry.contentRect.height);
    });
    observer.observe(room.current);
    return () => observer.disconnect();
  }, [there, kind]);
  return (
    <div
      ref={room}
      class="asking-enter"
      style={there ? undefined : { minBlockSize: `${height}px` }}
    >
      {there && children}
    </div>
  );
}
