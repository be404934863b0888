import { useEffect, useState } from 'preact/hooks';

/**
 * False until what came with `key` has been painted, then true. What may come a frame later is so kept out of the task that answers
 * the hand; a task that takes long is felt on a slow phone.
 */
export function useAfterPaint(key: string): boolean {
  const [painted, setPainted] = useState<string | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setPainted(key), 0);
    return () => clearTimeout(timer);
  }, [key]);
  return painted === key;
}

/**
 * What `work` gives of one thing in one way, worked out after what came with it was painted, and shown in a task after that; undefined
 * until then. Where the way changes alone, the old one stays until the new one is there. Both must name all that `work` depends on.
 */
export function useAside<Result>(of: string, way: string, work: () => Result): Result | undefined {
  const [made, setMade] = useState<{ readonly of: string; readonly result: Result }>();
  useEffect(() => {
    let timer = setTimeout(() => {
      const result = work();
      timer = setTimeout(() => setMade({ of, result }), 0);
    }, 0);
    return () => clearTimeout(timer);
  }, [of, way]);
  return made?.of === of ? made.result : undefined;
}
