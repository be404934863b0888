import { keepingWords } from '../words/en/keeping.ts';
/** What went wrong in a sentence fit to show; `otherwise` where nothing was said. */
export const failureOf = (error: unknown, otherwise = keepingWords().noReason): string =>
  error instanceof Error ? error.message : otherwise;
