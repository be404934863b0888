import { expect, it } from 'vitest';
import { humbuckerTwoSinglesSplit } from '../circuit/catalog/humbucker-two-singles-split.ts';
import { acted, oneHumbucker, told, twoLugs, twoPickups, wiredUp } from './wiring.fixture.ts';

it.each([
  ['a volume', 'volumeGround', ['volume.1: Lug 1 of the volume has nothing on it.']],
  ['the jack', 'jackGround', ['jack.sleeve: The sleeve lug of the output jack has nothing on it.']],
  ['a coil', 'neckHot', ['neckCoil.finish: The finish of the neck pickup has nothing on it.']],
  [
    'the common lug of a selector',
    'selectorOut',
    ['selector.C: Lug C of the selector has nothing on it.'],
  ],
  [
    'a capacitor',
    'capToneLeg',
    [
      'tone.2 tone.3: Lug 2 of the tone or lug 3 of the tone has nothing on it.',
      'toneCap.b: Leg b of the tone capacitor has nothing on it.',
    ],
  ],
])('a lug of %s without its lead floats', (_, lead, expected) => {
  expect([...told(acted(twoPickups, { do: 'cut', lead }), 'floating')].sort()).toEqual(expected);
});

it('the common of a pole that grounds a link by its in-between positions needs no lead; on a bare pole it does', () => {
  const split = humbuckerTwoSinglesSplit();
  expect(told(split, 'floating')).toEqual([]);
  expect([...told(acted(split, { do: 'cut', lead: 'splitGround' }), 'floating')].sort()).toEqual([
    'selector.BC selector.B2: Lug BC of the selector or lug B2 of the selector has nothing on it.',
    'selector.BC: Lug BC of the selector has nothing on it.',
  ]);
});

it('what is placed and not soldered yet is named once, whatever its lugs', () => {
  expect(
    told(wiredUp(twoPickups, [twoLugs('button', 'button', 'button', false, true)]), 'floating'),
  ).toEqual(['button.1 button.2: Nothing is soldered to the button yet.']);
});

it('a lead that goes on to nothing but a joint in the air leads nowhere', () => {
  const splice = { kind: 'splice', id: 'joint', title: 'twisted joint' } as const;
  const once = wiredUp(
    acted(twoPickups, { do: 'cut', lead: 'jackHot' }),
    [splice],
    ['volume.2', 'joint.joint'],
  );
  expect(told(once, 'floating')).toEqual([
    'jack.tip: The tip lug of the output jack has nothing on it.',
    'joint.joint volume.2: What comes from lug 2 of the volume ends at the twisted joint and leads nowhere.',
  ]);
  expect(
    told(acted(once, { do: 'join', lead: 'on', from: 'joint.joint', to: 'jack.tip' }), 'floating'),
  ).toEqual([]);
});

it('a spare lug, a spare pole and a taped middle lead are no fault', () => {
  const halfUsed = wiredUp(
    twoPickups,
    [
      {
        ...twoLugs('toggle', 'mini toggle', 'mini-toggle', false, true),
        rows: [
          ['A1', 'AC', 'A2'],
          ['B1', 'BC', 'B2'],
        ],
        positions: [
          {
            name: 'up',
            title: 'up',
            joins: [
              ['AC', 'A1'],
              ['BC', 'B1'],
            ],
          },
          {
            name: 'down',
            title: 'down',
            joins: [
              ['AC', 'A2'],
              ['BC', 'B2'],
            ],
          },
        ],
      },
    ],
    ['toggle.AC', 'jack.tip'],
    ['toggle.A2', 'jack.sleeve'],
  );
  expect(told(halfUsed, 'floating')).toEqual([]);
  expect(told(oneHumbucker, 'floating')).toEqual([]);
});
