/**
 * What is being told on a screen and is in no job yet: sounds of some positions, the leads of a pickup half described. Phones end a
 * page without a word; what was told stands there again. It is written at once, and small: the browser has it when the key is up.
 */

const KEY = 'lugwise-half-told';
/** Places kept at most, the oldest go first; a place left for good would stay for ever otherwise. */
const MOST = 12;
/** Characters of one place; nothing that a hand tells on one screen is near it. */
const LONGEST = 50_000;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Damaged or shut storage holds nothing. */
function all(): Record<string, unknown> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return isObject(kept) ? kept : {};
  } catch {
    return {};
  }
}

function write(kept: Record<string, unknown>): void {
  try {
    if (Object.keys(kept).length === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // A private window, or a full disk: the bar on every screen says so already.
  }
}

/** As it was kept, or undefined; whoever reads it looks whether it makes sense. */
export const readHalfTold = (place: string): unknown => all()[place];

/** @param value plain data */
export function keepHalfTold(place: string, value: unknown): void {
  if (JSON.stringify(value).length > LONGEST) return;
  const { [place]: _, ...others } = all();
  write(Object.fromEntries([...Object.entries(others).slice(1 - MOST), [place, value]]));
}

export function dropHalfTold(place: string): void {
  const { [place]: gone, ...others } = all();
  if (gone !== undefined) write(others);
}
