import { flowWords } from '../words/en/flows.ts';

/** What went wrong in an actor, as a sentence fit to show. */
export const sentenceOf = (error: unknown): string =>
  error instanceof Error && error.message ? error.message : flowWords().noReasonWasGiven;

/** In place of an actor that whoever starts the machine must provide. */
export const unprovided = (machine: string, actor: string) => () =>
  Promise.reject(new Error(`The ${machine} was started without "${actor}".`));
