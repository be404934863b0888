import { begun, type History, redid, replayed } from '../../circuit/editing/history.ts';
import { restoredDraft, type WiringDraft } from '../../notebook/draft.ts';
import { afterSketchAct, drawnFrom, type Sketch, type SketchAct, sketchFrom } from './sketch.ts';

type Board = History<Sketch, SketchAct>;

/** Milliseconds that a history may take to be done again; a file can hold one that never ends. */
const PATIENCE = 700;

/**
 * The board as the draft left it, undo and redo with it. The last state alone where an act of an older app no longer fits, or where
 * acts that came in a file do what none of ours does: acts are not checked at the door as the wiring is.
 */
export function boardFrom(draft: WiringDraft): Board {
  const { start, done, undone, now } = draft;
  const until = performance.now() + PATIENCE;
  const step = (sketch: Sketch, act: SketchAct): Sketch => {
    const next = afterSketchAct(sketch, act);
    if (performance.now() > until || !restoredDraft({ ...draft, now: drawnFrom(next) }))
      throw new RangeError('An act of the draft does not fit.');
    return next;
  };
  try {
    const board = replayed(
      sketchFrom(start),
      done as readonly SketchAct[],
      undone as readonly SketchAct[],
      step,
    );
    // What can be done again must fit as well.
    for (let again = board; again.undone.length > 0; ) again = redid(again, step);
    return board;
  } catch {
    return begun(sketchFrom(now));
  }
}
