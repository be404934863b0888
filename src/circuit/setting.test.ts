import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { threeSinglesFivePosition } from './catalog/three-singles-five-position.ts';
import { twoPickupsSharedControls } from './catalog/two-pickups-shared-controls.ts';
import { checkSetting } from './check.ts';
import type { Circuit } from './circuit.ts';
import { potsOf, restingSetting, settingKey, switchSettings, withKnob } from './setting.ts';

describe('restingSetting', () => {
  it('has every knob at 10, the first position, nothing lifted, no plug', () => {
    expect(restingSetting(threeSinglesFivePosition())).toEqual({
      positions: { selector: '1' },
      knobs: { volume: 10, neckTone: 10, middleTone: 10 },
      plug: 'out',
      lifted: [],
    });
  });

  it.each(startingWirings.map(({ id, build }) => [id, build] as const))(
    'suits %s',
    (_id, build) => {
      const circuit = build();
      expect(() => checkSetting(circuit, restingSetting(circuit))).not.toThrow();
      expect(Object.keys(restingSetting(circuit).knobs)).toEqual(
        potsOf(circuit).map(({ id }) => id),
      );
    },
  );
});

describe('switchSettings', () => {
  it('goes through the lever from end to end', () => {
    expect(
      switchSettings(threeSinglesFivePosition()).map(({ positions }) => positions['selector']),
    ).toEqual(['1', '2', '3', '4', '5']);
  });

  it('combines two switches, the first moving slowest', () => {
    const one = twoPickupsSharedControls();
    const button = {
      kind: 'switch',
      id: 'kill',
      title: 'kill button',
      style: 'button',
      frame: false,
      rows: [['1', '2']],
      positions: [
        { name: 'out', title: 'out', joins: [] },
        { name: 'in', title: 'in', joins: [['1', '2']] },
      ],
    } as const;
    const circuit: Circuit = { ...one, parts: [...one.parts, button] };
    expect(
      switchSettings(circuit).map(
        ({ positions }) => `${positions['selector']} ${positions['kill']}`,
      ),
    ).toEqual(['neck out', 'neck in', 'both out', 'both in', 'bridge out', 'bridge in']);
  });

  it('of a guitar without switches is the resting setting alone', () => {
    const one = startingWirings.find(({ id }) => id === 'one-humbucker-one-knob')!.build();
    expect(switchSettings(one)).toEqual([restingSetting(one)]);
  });
});

describe('withKnob and settingKey', () => {
  const rest = restingSetting(threeSinglesFivePosition());

  it('moves one knob and leaves the setting it came from alone', () => {
    const moved = withKnob(rest, 'volume', 3);
    expect(moved.knobs).toEqual({ volume: 3, neckTone: 10, middleTone: 10 });
    expect(rest.knobs['volume']).toBe(10);
    expect(withKnob(rest, 'volume', 3)).toBe(moved);
    expect(withKnob(rest, 'volume', 10)).toBe(rest);
  });

  it('gives equal keys to equal settings, whatever the order of their names', () => {
    expect(
      settingKey({
        ...rest,
        knobs: { middleTone: 10, volume: 10, neckTone: 10 },
        lifted: ['b', 'a'],
      }),
    ).toBe(settingKey({ ...rest, lifted: ['a', 'b'] }));
  });

  it('gives another key to whatever is set otherwise', () => {
    const others = [
      rest,
      withKnob(rest, 'volume', 9),
      { ...rest, positions: { selector: '2' } },
      { ...rest, plug: 'in' as const },
      { ...rest, lifted: ['bridgeHot@to'] },
    ].map(settingKey);
    expect(new Set(others).size).toBe(others.length);
  });
});
