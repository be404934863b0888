import { area } from '../area.ts';

/** What a wiring calls its parts, pickups, positions and itself is English as it is stored. */
const names = {
  called: (title: string) => title,
};

export const nameWords = area('names', names);
