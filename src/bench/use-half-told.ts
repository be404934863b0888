import { useRef, useState } from 'preact/hooks';
import type { Check } from '../notebook/shape.ts';
import { dropHalfTold, keepHalfTold, readHalfTold } from './half-told.ts';

export interface HalfTold<Told> {
  readonly told: Told;
  /** @param change of what is told by now: two fields can be filled in before the screen is drawn again */
  tell(change: (now: Told) => Told): void;
  /** It is in the notebook now. */
  done(): void;
  /** It stood here before, and was not ended. */
  readonly wasKept: boolean;
  /** As if nothing had been told. */
  afresh(): void;
}

/**
 * What is told on a screen, kept while it is told.
 * @param place of the screen, and of what it is about
 * @param shape of what is told; what was kept in another shape is as if it had never been
 */
export function useHalfTold<Told>(place: string, fresh: () => Told, shape: Check): HalfTold<Told> {
  const [kept] = useState(() => {
    const found = readHalfTold(place);
    return found !== undefined && fits(found, shape) ? (found as Told) : null;
  });
  const [told, setTold] = useState(kept ?? fresh);
  const latest = useRef(told);
  const set = (next: Told) => {
    latest.current = next;
    setTold(next);
  };
  const [wasKept, setWasKept] = useState(kept !== null);
  return {
    told,
    tell(change) {
      set(change(latest.current));
      keepHalfTold(place, latest.current);
    },
    done: () => dropHalfTold(place),
    wasKept,
    afresh() {
      set(fresh());
      setWasKept(false);
      dropHalfTold(place);
    },
  };
}

function fits(value: unknown, shape: Check): boolean {
  try {
    shape(value, '');
    return true;
  } catch {
    return false;
  }
}
