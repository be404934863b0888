import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { checkSetting } from '../circuit/check.ts';
import { listeningPlaces, stringTouch } from './symptom.ts';

describe('what can be told before the meter comes out', () => {
  it.each(startingWirings.map(({ title, build }) => [title, build()] as const))(
    'asks in settings that the guitar has, full up and plugged in: %s',
    (_title, circuit) => {
      const asks = [...listeningPlaces(circuit).map(({ ask }) => ask), stringTouch(circuit)!];
      for (const { setting } of asks) {
        checkSetting(circuit, setting);
        expect(setting.plug).toBe('in');
        expect(new Set(Object.values(setting.knobs))).toEqual(new Set([10]));
      }
    },
  );
  it('asks once for each position of the selector', () => {
    const five = startingWirings.find(({ id }) => id === 'three-singles-five-position')!.build();
    const places = listeningPlaces(five);
    expect(places).toHaveLength(5);
    expect(new Set(places.map(({ ask }) => JSON.stringify(ask))).size).toBe(5);
  });
  it('asks once where there is no selector', () => {
    const one = startingWirings.find(({ id }) => id === 'one-humbucker-one-knob')!.build();
    expect(listeningPlaces(one).map(({ title }) => title)).toEqual(['the guitar']);
  });
});
