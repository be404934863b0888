/** Goes on in a task of its own, after what the browser has to do meanwhile: it may paint, and take a touch. */
export const nextTask = (): Promise<void> => new Promise((go) => setTimeout(go, 0));
