import { expect, it } from 'vitest';
import { acted, told, twoLugs, twoPickups, wiredUp } from './wiring.fixture.ts';

it('a tone whose wiper was left off changes nothing', () => {
  const wired = acted(
    twoPickups,
    { do: 'cut', lead: 'capToneLeg' },
    { do: 'join', lead: 'slip', from: 'toneCap.b', to: 'tone.3' },
  );
  expect(told(wired, 'idle')).toEqual(['tone.3 tone.1: Turning the tone changes nothing.']);
});

it('a tone that is turned between ground and ground changes nothing', () => {
  const wired = acted(twoPickups, { do: 'solder', joint: 'capHotLeg@to', lug: 'volume.case' });
  expect(told(wired, 'idle')).toEqual(['tone.2 tone.1: Turning the tone changes nothing.']);
});

it.each([
  ['a wire across it', [['1', '2']]],
  ['both lugs on ground', []],
] as const)('a switch with %s changes nothing', (_, inside) => {
  const toggle = twoLugs('toggle', 'mini toggle', 'mini-toggle', false, true);
  const wired = wiredUp(
    twoPickups,
    [toggle],
    ['toggle.1', inside.length > 0 ? 'selector.A' : 'volume.case'],
    ['toggle.2', inside.length > 0 ? 'selector.A' : 'jack.sleeve'],
  );
  expect(told(wired, 'idle')).toEqual([
    'toggle.1 toggle.2: Moving the mini toggle changes nothing.',
  ]);
});

it('a button across the jack, a selector, a volume and a tone each change something', () => {
  const kill = twoLugs('kill', 'button', 'button', false, true);
  expect(
    told(wiredUp(twoPickups, [kill], ['kill.1', 'jack.tip'], ['kill.2', 'jack.sleeve']), 'idle'),
  ).toEqual([]);
});

it('a phase switch on the only pickup changes something: which end is hot', () => {
  const phase = {
    ...twoLugs('phase', 'mini toggle', 'mini-toggle', false, true),
    rows: [
      ['A1', 'B1'],
      ['AC', 'BC'],
      ['A2', 'B2'],
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
  } as const;
  const wired = wiredUp(
    acted(twoPickups, { do: 'cut', lead: 'neckHot' }, { do: 'cut', lead: 'neckBraid' }),
    [phase],
    ['neckCoil.finish', 'phase.AC'],
    ['neckCoil.start', 'phase.BC'],
    ['phase.A1', 'selector.A'],
    ['phase.B1', 'volume.case'],
    ['phase.A2', 'volume.case'],
    ['phase.B2', 'selector.A'],
  );
  expect(told(wired, 'idle')).toEqual([]);
  // Its cover hangs on the coil's cold end, and that end is hot when reversed.
  expect(told(wired, 'ungrounded')).toEqual([
    'neckPlate.metal: The base plate and cover of the neck pickup has no ground with the mini toggle at "down". It is on hot: it hums when you touch it.',
  ]);
});
