import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { did, presentOf, redid, undid } from '../../circuit/editing/history.ts';
import { CircuitError } from '../../circuit/errors.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import { usePorts } from '../ports.ts';
import { afterSketchAct, drawnFrom, type Sketch, type SketchAct } from './sketch.ts';
import { boardFrom } from './stored-board.ts';

export interface Editor {
  readonly sketch: Sketch;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Names and access as typed so far. */
  readonly draft: WiringDraft;
  /** True where the draft could not be stored: it lasts as long as this page. */
  readonly unsaved: boolean;
  /** Does it, or says why it cannot be done. */
  act(act: SketchAct): string | null;
  undo(): void;
  redo(): void;
  describe(words: Partial<Pick<WiringDraft, 'title' | 'access'>>): void;
}

/** A wiring being drawn, stored after each act. */
export function useEditor(opened: WiringDraft): Editor {
  const ports = usePorts();
  const [board, setBoard] = useState(() => boardFrom(opened));
  // What was done last, drawn or not: a value that takes its time to be worked out is an act on that, not on what stood when it was typed.
  const newest = useRef(board);
  const put = (next: typeof board) => {
    newest.current = next;
    setBoard(next);
  };
  const [words, setWords] = useState({ title: opened.title, access: opened.access });
  const [unsaved, setUnsaved] = useState(false);
  const sketch = presentOf(board);
  const draft: WiringDraft = {
    ...opened,
    ...words,
    start: drawnFrom(board.start),
    done: board.done,
    undone: board.undone,
    now: drawnFrom(sketch),
    changedAt: ports.now(),
  };
  const first = useRef(true);
  // Not after the next frame: by then the board may have been left.
  useLayoutEffect(() => {
    // What was only looked at is stored already.
    if (first.current) first.current = false;
    else ports.drafts.write(draft).then((stored) => setUnsaved(!stored));
  }, [board, words]);
  return {
    sketch,
    draft,
    unsaved,
    canUndo: board.done.length > 0,
    canRedo: board.undone.length > 0,
    act(act) {
      try {
        put(did(newest.current, act, afterSketchAct));
        return null;
      } catch (error) {
        if (error instanceof CircuitError) return error.message;
        throw error;
      }
    },
    undo: () => put(undid(newest.current)),
    redo: () => put(redid(newest.current, afterSketchAct)),
    describe: (more) => setWords((before) => ({ ...before, ...more })),
  };
}
