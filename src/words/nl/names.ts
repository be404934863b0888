import type { nameWords as English } from '../en/names.ts';
import { naam } from './nouns.ts';

export const names: ReturnType<typeof English> = {
  called: naam,
};
