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
