import type { Point } from '../geometry.ts';
import { COPPER } from '../theme.ts';

/** A place that takes the focus and the keys; taps are the whole drawing's, for the nearest place. */
export function Target({
  words,
  at,
  pressed,
  act,
}: {
  words: string;
  at: Point;
  pressed: boolean;
  act(): void;
}) {
  return (
    // On SVG an attribute is taken letter by letter: tabIndex would give no focus.
    // biome-ignore lint/a11y/useSemanticElements: SVG has no button element; role, focus and keys stand in.
    <g
      role="button"
      tabindex={0}
      class="whole-target"
      aria-label={words}
      aria-pressed={pressed}
      onClick={(event) => {
        // A press that comes from no pointer has no place of its own.
        if (event.detail === 0) act();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        act();
      }}
    >
      <circle cx={at.x} cy={at.y} r={12} fill="transparent" stroke={COPPER} />
    </g>
  );
}
