/** Goes on in a task of its own, after what the browser has to do meanwhile: it may paint, and take a touch. */
export const nextTask = (): Promise<void> => new Promise((go) => setTimeout(go, 0));

/** Work that rests here and there, done at once. */
export function finished<Result>(steps: Generator<void, Result>): Result {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same, going on after each rest in a task of its own. */
export async function finishedAside<Result>(steps: Generator<void, Result>): Promise<Result> {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    await nextTask();
  }
}
