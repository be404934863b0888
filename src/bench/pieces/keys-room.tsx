import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { useAfterPaint } from './after-paint.ts';

interface KeysRoomProps {
  readonly there: boolean;
  readonly kind: string;
  readonly children: ComponentChildren;
}

/** Kinds of reading that are entered with more than a few keys. */
const PADS: ReadonlySet<string> = new Set(['ohms', 'farads', 'hum']);
/** How high the keys of each kind of reading stood last, CSS pixels. */
const heights = new Map<string, number>();

/**
 * Words and keys of a reading: the words first where it is known what room the keys need, so that nothing jumps. Else what they stand
 * in, and the keys a frame later, whose lower edge stands where it stands; words come with them where the keys are few, and a frame
 * after a whole pad, which takes long enough alone. `after` is how many frames more what comes later has to wait.
 */
export function useWordsAndKeys(question: string, kind: string) {
  const painted = useAfterPaint(question);
  const paintedTwice = useAfterPaint(question, 1);
  // Once begun it stays so: the height is told while the keys stand.
  const begun = useRef({ question: '', keysFirst: false });
  if (begun.current.question !== question)
    begun.current = { question, keysFirst: !heights.has(kind) };
  const { keysFirst } = begun.current;
  return keysFirst
    ? { words: PADS.has(kind) ? paintedTwice : painted, keys: painted, after: 1 }
    : { words: true, keys: painted, after: 0 };
}

/** The keys of a reading, or the room that they will need. */
export function KeysRoom({ there, kind, children }: KeysRoomProps) {
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
      style={there ? undefined : { minBlockSize: `${heights.get(kind)}px` }}
    >
      {there && children}
    </div>
  );
}
