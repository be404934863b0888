import { useEffect, useRef, useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';

/** Why a reading is asked. Where it would push the drawing away it is cut short, with "more" beside it. */
export function Why({ children }: { children: string }) {
  const words = useRef<HTMLParagraphElement>(null);
  const [cut, setCut] = useState(false);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    const element = words.current;
    if (!element) return;
    const look = () => setCut(element.scrollHeight > element.clientHeight + 1);
    const observer = new ResizeObserver(look);
    observer.observe(element);
    return () => observer.disconnect();
  }, [children]);
  return (
    <div class="why">
      <p ref={words} class={open ? 'soft' : 'soft why-short'}>
        {children}
      </p>
      {(cut || open) && (
        <button
          type="button"
          class="quiet why-more"
          aria-expanded={open}
          aria-label={open ? pieceWords().lessOfWhy : pieceWords().moreOfWhy}
          onClick={() => setOpen(!open)}
        >
          {open ? pieceWords().less : pieceWords().more}
        </button>
      )}
    </div>
  );
}
