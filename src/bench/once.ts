import { useRef } from 'preact/hooks';

/**
 * `act` once at a time, and not again from a place that it led away from: what is touched a second time while the first touch is
 * still being stored would be stored twice.
 */
export function useOnce<Args extends readonly unknown[]>(
  act: (...args: Args) => Promise<void>,
): (...args: Args) => Promise<void> {
  const taken = useRef(false);
  return async (...args) => {
    if (taken.current) return;
    taken.current = true;
    const { hash } = window.location;
    try {
      await act(...args);
    } finally {
      taken.current = window.location.hash !== hash;
    }
  };
}
