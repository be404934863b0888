/** Says of the screen that stands that it was answered, and that another one is on its way (WAI-ARIA `aria-busy`). */
export function markAnswered(is: boolean): void {
  const screen = globalThis.document?.querySelector('[data-screen]');
  if (is) screen?.setAttribute('aria-busy', 'true');
  else screen?.removeAttribute('aria-busy');
}
