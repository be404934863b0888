import type { Rests } from '../diagnosis/rests.ts';

/** Goes on in a task of its own, after what the browser has to do meanwhile: it may paint, and take a touch. */
export const nextTask = (): Promise<void> => new Promise((go) => setTimeout(go, 0));

/** Does work that rests here and there, going on after each rest in a task of its own. */
export async function endedAside<Result>(work: Rests<Result>): Promise<Result> {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    await nextTask();
  }
}
