import { fileURLToPath } from 'node:url';

/** The project's own folder, by its absolute path. */
export const root = fileURLToPath(new URL('..', import.meta.url));
/** Where the built app lies. */
export const dist = fileURLToPath(new URL('../dist', import.meta.url));
