import { options } from 'preact';

/**
 * Screens are drawn in a task of their own after the one that answers the hand or the engine: together they would hold up what is touched
 * next for as long as both take on a slow phone.
 */
export function renderApart(): void {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  options.debounceRendering = (render) => {
    waiting.push(render);
    port2.postMessage(null);
  };
}
