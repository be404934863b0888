import { useState } from 'preact/hooks';
import type { Check } from '../notebook/shape.ts';
import { dropHalfTold, keepHalfTold, readHalfTold } from './half-told.ts';

export interface HalfTold<Told> {
  readonly told: Told;
  tell(next: Told): void;
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
  const [wasKept, setWasKept] = useState(kept !== null);
  return {
    told,
    tell(next) {
      setTold(next);
      keepHalfTold(place, next);
    },
    done: () => dropHalfTold(place),
    wasKept,
    afresh() {
      setTold(fresh);
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
