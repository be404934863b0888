import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { handWords } from '../../words/en/hands.ts';

interface AskingRoomProps {
  readonly name: string;
  readonly kind: string;
  /** Another one for every question: it begins with the drawing. */
  readonly question: string;
  /** How many readings were taken before, said on the screen where a test asks for it. */
  readonly readings?: number;
  readonly children: ComponentChildren;
}

const panes = ['look', 'enter', 'more'] as const;

/**
 * Where one reading is asked. Where type is so large that drawing and keys cannot stand on one screen, they take turns, so that
 * nothing scrolls while both hands are busy.
 */
export function AskingRoom({ name, kind, question, readings, children }: AskingRoomProps) {
  const [chosen, choose] = useState<{ question: string; pane: (typeof panes)[number] }>();
  const pane = chosen?.question === question ? chosen.pane : 'look';
  const words = handWords();
  return (
    <div class="asking-room">
      <main
        class="screen asking"
        data-screen={name}
        data-kind={kind}
        data-pane={pane}
        data-readings={readings}
      >
        {children}
        <nav class="panes" aria-label={words.parts}>
          {panes.map((one) => (
            <button
              key={one}
              type="button"
              class="plain"
              aria-pressed={pane === one}
              onClick={() => choose({ question, pane: one })}
            >
              {words[one]}
            </button>
          ))}
        </nav>
      </main>
    </div>
  );
}
