import { expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { restingSetting } from '../circuit/setting.ts';
import type { Question } from '../flows/index.ts';
import { askText } from '../readings/index.ts';
import type { Ask } from '../readings/reading.ts';
import { questionWords } from './words.ts';

const circuit = oneHumbuckerOneKnob();
const setting = { ...restingSetting(circuit), plug: 'in' as const };

it.each<Ask>([
  { kind: 'listen', setting },
  { kind: 'touch', metal: 'strings.metal', setting },
])('a reading of one’s own by ear is asked as the engine asks it: $kind', (ask) => {
  const own: Question = {
    purpose: 'own',
    ask,
    askText: '',
    why: '',
    expected: { text: '' },
  } as never;
  expect(questionWords(circuit, own)).toBe(askText(layoutOf(circuit), ask));
});
