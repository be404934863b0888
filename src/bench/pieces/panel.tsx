import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';

interface PanelProps {
  readonly title: string;
  onClose(): void;
  readonly children?: ComponentChildren;
}

/** What lies open beside the drawing. Its title takes the focus; Escape closes it. */
export function Panel({ title, onClose, children }: PanelProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    panel.current?.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [title]);
  return (
    <section
      ref={panel}
      class="panel"
      aria-label={title}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <div class="panel-head">
        <h2 ref={heading} tabIndex={-1}>
          {title}
        </h2>
        <button type="button" class="quiet" onClick={onClose}>
          {pieceWords().close}
        </button>
      </div>
      {children}
    </section>
  );
}
