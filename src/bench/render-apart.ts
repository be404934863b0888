import { options } from 'preact';

/** Told before anything is changed by them: what was typed or chosen does not stand in the page yet. */
const HANDS = ['pointerdown', 'keydown', 'beforeinput'] as const;
/** What stands in the page already, and may have come without one of the former: from a list of the browser's own, from what fills forms in, from a screen reader. */
const DONE = ['click', 'input', 'change'] as const;

/**
 * Screens are drawn in a task of their own after the one that answers the hand or the engine: together they would hold up what is touched
 * next for as long as both take on a slow phone. What the hand does next finds them drawn: else a key pressed at once would act on
 * what stood there before the last one, and of two fields filled in at once the first would be lost.
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
  const drawAround = ({ target }: Event) => {
    if (waiting.length === 0) return;
    const given = givenBy(target);
    drawAll();
    if (given) keep(target as Field, given);
  };
  for (const done of DONE) addEventListener(done, drawAround, { capture: true });
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
interface Given {
  readonly value: string;
  readonly checked: boolean | undefined;
}

/** What the hand put into a field, which a drawing that does not know of it yet would put back. */
function givenBy(target: EventTarget | null): Given | null {
  const isField =
    target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement;
  if (!isField) return null;
  return { value: target.value, checked: 'checked' in target ? target.checked : undefined };
}

function keep(field: Field, { value, checked }: Given): void {
  if (field.value !== value) field.value = value;
  if ('checked' in field && checked !== undefined && field.checked !== checked)
    field.checked = checked;
}
