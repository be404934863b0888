import { useEffect, useState } from 'preact/hooks';

/**
 * How many of `most` pieces are shown so far: one when the component first stands, one more after each is painted. All of something
 * large in one task would hold up what is touched meanwhile. What is shown once stays, whatever changes later.
 */
export function useGrowing(most: number): number {
  const [shown, setShown] = useState(1);
  useEffect(() => {
    if (shown >= most) return;
    const timer = setTimeout(() => setShown(shown + 1), 0);
    return () => clearTimeout(timer);
  }, [shown, most]);
  return shown;
}
