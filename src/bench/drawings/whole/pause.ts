/** Lets the page do what waits, as to paint or to answer a touch: what comes after is a task of its own. */
export const pause = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
