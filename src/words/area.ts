import type { Tongue } from './tongue.ts';

/** The messages of one language, area by area. */
type Messages = Readonly<Record<string, object>>;

let spoken: Tongue = { language: 'en', locale: 'en' };
let translated: Messages = {};

/** What is spoken now. */
export const tongue = (): Tongue => spoken;

/** Takes another tongue and its messages; without messages it is the language spoken already. */
export function hold(wanted: Tongue, messages: Messages = translated): void {
  spoken = wanted;
  translated = messages;
}

/**
 * The messages of an area, as they are spoken when they are asked for: so never keep one in a constant of a module.
 * @param name of the area, the same in every language
 */
export const area =
  <Area extends object>(name: string, english: Area) =>
  (): Area =>
    (translated[name] as Area | undefined) ?? english;
