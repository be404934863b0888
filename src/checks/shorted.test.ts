import { expect, it } from 'vitest';
import { acted, told, twoLugs, twoPickups, wiredUp } from './wiring.fixture.ts';

const across = [
  ['kill.1', 'jack.tip'],
  ['kill.2', 'jack.sleeve'],
] as const;

it('a toggle across the jack is told, with the position and both lugs', () => {
  const kill = twoLugs('kill', 'mini toggle', 'mini-toggle', false, true);
  expect(told(wiredUp(twoPickups, [kill], ...across), 'shorted')).toEqual([
    'kill.1 kill.2: Hot is joined to ground with the mini toggle at "2", by lug 1 of the mini toggle and lug 2 of the mini toggle: the guitar is silent there.',
  ]);
});

it('a button across the jack is silent on purpose while it is held; one that breaks is not', () => {
  const make = twoLugs('kill', 'button', 'button', false, true);
  expect(told(wiredUp(twoPickups, [make], ...across), 'shorted')).toEqual([]);
  const breaks = twoLugs('kill', 'button', 'button', true, false);
  expect(told(wiredUp(twoPickups, [breaks], ...across), 'shorted')).toHaveLength(1);
});

it('a wire from hot to ground silences everything', () => {
  const wire = acted(twoPickups, { do: 'join', lead: 'slip', from: 'volume.2', to: 'volume.case' });
  expect(told(wire, 'shorted')).toEqual([
    'jack.tip jack.sleeve: Hot and ground are joined by wires alone: the guitar is silent in every setting.',
  ]);
});

it('a selector lug on ground shorts the positions that use it', () => {
  const wire = acted(twoPickups, {
    do: 'join',
    lead: 'slip',
    from: 'selector.A',
    to: 'volume.case',
  });
  expect(told(wire, 'shorted')).toEqual([
    'volume.2 volume.3 selector.A selector.C: Hot is joined to ground with the selector at "neck", by lug A of the selector and lug C of the selector: the guitar is silent there.',
  ]);
});

it('a volume with its end lugs exchanged is silent full up; as it should be, only at 0', () => {
  const exchanged = acted(
    twoPickups,
    { do: 'cut', lead: 'volumeGround' },
    { do: 'cut', lead: 'selectorOut' },
    { do: 'cut', lead: 'capHotLeg' },
    { do: 'join', lead: 'w1', from: 'volume.3', to: 'volume.case' },
    { do: 'join', lead: 'w2', from: 'volume.1', to: 'selector.C' },
    { do: 'join', lead: 'w3', from: 'volume.1', to: 'toneCap.a' },
  );
  expect(told(exchanged, 'shorted')).toEqual([
    'volume.2 volume.3: Hot is joined to ground with every knob full up, by lug 2 of the volume and lug 3 of the volume: the guitar is silent there.',
  ]);
  expect(told(twoPickups, 'shorted')).toEqual([]);
});
