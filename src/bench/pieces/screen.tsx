import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

interface ScreenProps {
  /** Names the screen for styles and tests. */
  readonly name: string;
  readonly title: ComponentChildren;
  /** The strip above the title. */
  readonly strip?: ComponentChildren;
  readonly children?: ComponentChildren;
  /** The acts at the lower edge, within reach of a thumb. */
  readonly acts?: ComponentChildren;
}

/** One thing to do. Its title takes the focus, so that a screen reader starts there. */
export function Screen({ name, title, strip, children, acts }: ScreenProps) {
  const heading = useHeadingFocus(name);
  const bar = useRef<HTMLDivElement>(null);
  const below = useMoreBelow(bar);
  return (
    <main class={`screen screen-${name}`} data-screen={name}>
      {strip}
      <div class="screen-body">
        <h1 ref={heading} tabIndex={-1} class={isLong(title) ? 'long' : undefined}>
          {title}
        </h1>
        {children}
      </div>
      {acts && (
        <div ref={bar} class={below ? 'acts acts-over' : 'acts'}>
          {acts}
        </div>
      )}
    </main>
  );
}

/** Nearer to its end than this a page counts as read, CSS pixels. */
const NEAR_END = 12;

/**
 * Whether the page goes on below the screen's edge, so that nothing runs off it in silence. What takes the focus is scrolled clear of the
 * acts and of the fade above them, which lie over the page: WCAG 2.2, 2.4.11.
 */
function useMoreBelow(bar: RefObject<HTMLElement | null>): boolean {
  const [below, setBelow] = useState(false);
  useEffect(() => {
    const look = () => {
      const { scrollHeight, clientHeight, scrollTop } = document.documentElement;
      setBelow(scrollHeight - clientHeight - scrollTop > NEAR_END);
    };
    const { style } = document.documentElement;
    const observer = new ResizeObserver(() => {
      look();
      style.scrollPaddingBlockEnd = bar.current
        ? `calc(${bar.current.offsetHeight}px + var(--fade))`
        : '';
    });
    observer.observe(document.body);
    if (bar.current) observer.observe(bar.current);
    window.addEventListener('scroll', look, { passive: true });
    window.addEventListener('resize', look);
    return () => {
      observer.disconnect();
      style.scrollPaddingBlockEnd = '';
      window.removeEventListener('scroll', look);
      window.removeEventListener('resize', look);
    };
  }, []);
  return below;
}

const isLong = (title: ComponentChildren): boolean =>
  typeof title === 'string' && title.length > 70;

/** A heading that takes the focus whenever `key` changes; not from a field that somebody is in by the time it is painted. */
export function useHeadingFocus(key: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    const { activeElement } = document;
    if (activeElement instanceof HTMLInputElement && activeElement.isConnected) return;
    heading.current?.focus({ preventScroll: true });
  }, [key]);
  return heading;
}
