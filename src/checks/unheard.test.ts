import { expect, it } from 'vitest';
import { acted, oneHumbucker, told, twoPickups } from './wiring.fixture.ts';

it('a coil whose hot lead is on a spare lug is heard nowhere', () => {
  const wired = acted(twoPickups, { do: 'solder', joint: 'neckHot@to', lug: 'tone.3' });
  expect(told(wired, 'unheard')).toEqual([]);
  // On the tone's third lug it still comes in over the track; on its own braid it does not.
  const shorted = acted(twoPickups, { do: 'solder', joint: 'neckHot@to', lug: 'tone.case' });
  expect(told(shorted, 'unheard')).toEqual([
    'neckCoil.finish neckCoil.start: The neck pickup reaches the jack in no setting.',
  ]);
});

it('a coil with a wire across it is heard nowhere, the other one of the pickup still is', () => {
  const [cold, hot] = oneHumbucker.pickups[0]?.coils ?? [];
  const wired = acted(oneHumbucker, {
    do: 'join',
    lead: 'across',
    from: `${cold}.finish`,
    to: `${cold}.start`,
  });
  const [sentence, ...more] = told(wired, 'unheard');
  expect(more).toEqual([]);
  expect(sentence).toContain(`${cold}.finish`);
  expect(sentence).not.toContain(`${hot}.`);
});

it('a series capacitor in the way is no reason', () => {
  const wired = acted(
    twoPickups,
    { do: 'cut', lead: 'jackHot' },
    {
      do: 'add',
      parts: [
        {
          kind: 'capacitor',
          id: 'cut',
          title: 'bass cut',
          farads: { nominal: 3.3e-9 as never, tolerance: 0.1 },
        },
      ],
      leads: [],
    },
    { do: 'join', lead: 'in', from: 'cut.a', to: 'volume.2' },
    { do: 'join', lead: 'out', from: 'cut.b', to: 'jack.tip' },
  );
  expect(told(wired, 'unheard')).toEqual([]);
});
