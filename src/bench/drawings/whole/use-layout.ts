import { useEffect, useState } from 'preact/hooks';
import type { Circuit } from '../../../circuit/circuit.ts';
import { nextTask } from '../../next-task.ts';
import type { Places } from './places.ts';
import { foundLayout, layoutAside, type WholeLayout } from './whole-layout.ts';

/** The layout of a wiring, null until it is worked out; then the screen that asked is drawn again. */
export function useLayout(circuit: Circuit, places?: Places): WholeLayout | null {
  const [, draw] = useState(0);
  const found = foundLayout(circuit, places);
  useEffect(() => {
    if (found) return;
    let isWanted = true;
    // The words of the screen come first.
    const timer = setTimeout(async () => {
      const found = await layoutAside(circuit, places);
      await nextTask();
      if (found && isWanted) draw((count) => count + 1);
    }, 0);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [circuit, places]);
  return found ?? null;
}
