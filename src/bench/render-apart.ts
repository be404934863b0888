import { options } from 'preact';

/** Told before anything is changed by them: what was typed or chosen does not stand in the page yet. */
const HANDS = ['pointerdown', 'keydown', 'beforeinput'] as const;

/**
 * Screens are drawn in a task of their own after the one that answers the hand or the engine: together they would hold up what is touched
 * next for as long as both take on a slow phone. What the hand does next finds them drawn: else a key pressed at once would act on
 * what stood there before the last one.
 */
export function renderApart(): void {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  options.debounceRendering = (render) => {
    waiting.push(render);
    port2.postMessage(null);
  };
  const drawAll = () => {
    for (let render = waiting.shift(); render; render = waiting.shift()) render();
  };
  for (const hand of HANDS) addEventListener(hand, drawAll, { capture: true });
}
