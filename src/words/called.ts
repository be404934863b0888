import { nameWords } from './en/names.ts';

/**
 * A title out of a wiring, the tray or the list of changes, as it is shown: those that are data of the app in the person's language, the
 * person's own as they typed them.
 */
export const called = (title: string): string => nameWords().called(title);

/** "tone" of "tone capacitor of the tone" beside its owner: a title without the owner that is told anyway. */
export const withoutOwner = (title: string, owner: string): string =>
  called(title.replace(` of the ${owner}`, ''));

/** What a title names, without whose it is. */
export const headOf = (title: string): string => called(title.split(' of the ')[0] ?? title);
