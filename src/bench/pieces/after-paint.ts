import { useEffect, useState } from 'preact/hooks';
import type { Rests } from '../../diagnosis/rests.ts';

/** Where no frame comes, as in a tab behind others, nothing waits for one longer than this, milliseconds. */
const NO_FRAME = 100;

/**
 * Calls `act` in a task of its own once what an effect belongs to, and `more` frames after it, were painted.
 * @returns what calls it off
 */
function afterFrames(more: number, act: () => void): () => void {
  let timer: ReturnType<typeof setTimeout>;
  let frame = 0;
  const wait = (left: number) => {
    clearTimeout(timer);
    cancelAnimationFrame(frame);
    if (left <= 0) {
      timer = setTimeout(act, 0);
      return;
    }
    const next = () => wait(left - 1);
    frame = requestAnimationFrame(() => {
      clearTimeout(timer);
      timer = setTimeout(next, 0);
    });
    timer = setTimeout(next, NO_FRAME);
  };
  wait(more);
  return () => {
    clearTimeout(timer);
    cancelAnimationFrame(frame);
  };
}

/** Once what is about to be drawn, in a task of its own, has been painted. */
export const painted = (): Promise<void> =>
  new Promise((go) => {
    afterFrames(2, go);
  });

/**
 * False until what came with `key` has been painted, then true. What may come a frame later is so kept out of the task that answers
 * the hand; a task that takes long is felt on a slow phone.
 * @param more frames that are waited for besides: pieces that come with the same key each have a frame of their own
 */
export function useAfterPaint(key: string, more = 0): boolean {
  const [painted, setPainted] = useState<string | null>(null);
  useEffect(() => afterFrames(more, () => setPainted(key)), [key, more]);
  return painted === key;
}

/**
 * What `work` gives of one thing in one way, worked out after what came with it, and `more` frames after that, were painted: each step
 * in a task of its own, and shown in one after the last; undefined until then. Where the way changes alone, the old one stays until the
 * new one is there. Both must name all that `work` depends on.
 */
export function useAside<Result>(
  of: string,
  way: string,
  work: () => Rests<Result>,
  more = 0,
): Result | undefined {
  const [made, setMade] = useState<{ readonly of: string; readonly result: Result }>();
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    const steps = work();
    const step = () => {
      const { done, value } = steps.next();
      timer = setTimeout(() => (done ? setMade({ of, result: value }) : step()), 0);
    };
    const callOff = afterFrames(more, step);
    return () => {
      callOff();
      clearTimeout(timer);
    };
  }, [of, way]);
  return made?.of === of ? made.result : undefined;
}
