import { signal } from '@preact/signals';

const spoken = signal('');

/** Says a sentence to a screen reader without moving the focus. */
export function announce(sentence: string): void {
  spoken.value = sentence;
}

export const Announcer = () => (
  <p class="unseen announcer" role="status" aria-live="polite">
    {spoken.value}
  </p>
);
