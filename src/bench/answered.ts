import type { Signal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';

/** Says of the screen that stands that it was answered, and that another one is on its way (WAI-ARIA `aria-busy`). */
export function markAnswered(is: boolean): void {
  const screen = globalThis.document?.querySelector('[data-screen]');
  if (is) screen?.setAttribute('aria-busy', 'true');
  else screen?.removeAttribute('aria-busy');
}

/**
 * Shows where a conversation stands now. Screens are drawn in a task of their own: until then the one that stands says that it
 * was answered, where the conversation went elsewhere; a key typed into it is no answer.
 */
export function show<Snapshot extends { readonly value: unknown }>(
  shown: Signal<Snapshot>,
  next: Snapshot,
): void {
  const [from, to] = [shown.value.value, next.value].map((value) => JSON.stringify(value));
  if (from !== to) markAnswered(true);
  shown.value = next;
}

/** Takes the mark away once what stands here is drawn, and what was answered is no longer `busy` being stored. */
export function useDrawn(snapshot: unknown, busy = false): void {
  useLayoutEffect(() => markAnswered(busy), [snapshot, busy]);
}
