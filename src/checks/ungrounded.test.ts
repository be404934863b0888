import { expect, it } from 'vitest';
import { acted, told, twoPickups } from './wiring.fixture.ts';

it.each([
  ['strings', 'stringGround', 'strings.metal: The strings and bridge has no ground. It can hum.'],
  [
    'a frame',
    'selectorGround',
    'selector.frame: The frame of the selector has no ground. It can hum.',
  ],
  [
    'a cover on the braid',
    'neckPlateLink',
    'neckPlate.metal: The base plate and cover of the neck pickup has no ground. It can hum.',
  ],
])('%s without its wire', (_, lead, sentence) => {
  expect(told(acted(twoPickups, { do: 'cut', lead }), 'ungrounded')).toEqual([sentence]);
});

it('a pot case that is soldered to hot says that it hums under the hand', () => {
  const wired = acted(
    twoPickups,
    { do: 'cut', lead: 'caseLink' },
    { do: 'cut', lead: 'toneGround' },
    { do: 'cut', lead: 'stringGround' },
    { do: 'join', lead: 'slip', from: 'tone.case', to: 'jack.tip' },
  );
  expect(told(wired, 'ungrounded')).toContain(
    'tone.case: The case of the tone has no ground. It is on hot: it hums when you touch it.',
  );
});
