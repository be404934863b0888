import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { modifications } from '../circuit/catalog/modifications/index.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { CircuitError } from '../circuit/errors.ts';
import { acted, twoLugs, twoPickups } from './wiring.fixture.ts';
import { wiringWarnings } from './wiring-warnings.ts';

const sentences = (circuit: Circuit) => wiringWarnings(circuit).map(({ sentence }) => sentence);

describe.each(startingWirings.map(({ id, build }) => [id, build] as const))('%s', (_, build) => {
  const base = build();
  it('stands out in nothing', () => {
    expect(sentences(base)).toEqual([]);
  });
  it.each(modifications.map((one) => [one.id, one] as const))('with %s neither', (_id, one) => {
    for (const place of one.applies(base).filter((at) => one.conflict(base, at) === null)) {
      // What carries a switch alters no contact: one carrier stands for all.
      const choices = one
        .choices(base, place)
        .map(({ id, options }) =>
          options
            .filter((option, at) => id !== 'carrier' || at === 0 || option.id === 'fixed')
            .map((option) => [id, option.id] as const),
        );
      let ways: (readonly (readonly [string, string])[])[] = [[]];
      for (const options of choices)
        ways = ways.flatMap((way) => options.map((option) => [...way, option]));
      for (const way of ways) {
        const chosen = Object.fromEntries(way);
        expect([chosen, sentences(one.apply(base, place, chosen))]).toEqual([chosen, []]);
      }
    }
  });
});

it('what cannot be at all is refused with a sentence that names the lug', () => {
  const lead = { id: 'slip', kind: 'wire', from: 'volume.2', to: 'volume.9' } as const;
  const check = () => wiringWarnings({ ...twoPickups, leads: [...twoPickups.leads, lead] });
  expect(check).toThrow(CircuitError);
  expect(check).toThrow('lead slip ends on volume.9, which is no lug of this guitar');
});

it('a wiring without a jack or a pickup says so', () => {
  const bare = acted(
    twoPickups,
    { do: 'remove', part: 'jack' },
    { do: 'remove', part: 'neckCoil' },
  );
  expect(sentences(bare)[0]).toBe(
    'There is no output jack: add one to say where the sound comes out.',
  );
  const silent = acted(bare, { do: 'remove', part: 'bridgePlate' });
  expect(sentences(silent)[1]).toBe('There is no pickup.');
});

it('six three-position toggles and a selector are gone through in good time, and more than can be are sampled', () => {
  const many = (count: number): Circuit =>
    Array.from({ length: count }, (_, at) => `toggle${at}`).reduce(
      (circuit, id) =>
        acted(
          circuit,
          {
            do: 'add',
            parts: [twoLugs(id, id, 'mini-toggle', false, true, false)],
            leads: [],
          },
          { do: 'join', lead: `${id}Hot`, from: `${id}.1`, to: 'neckCoil.finish' },
          { do: 'join', lead: `${id}Cold`, from: `${id}.2`, to: 'selector.B' },
        ),
      twoPickups,
    );
  for (const count of [6, 9]) {
    const began = performance.now();
    expect(sentences(many(count))).toEqual([]);
    expect(performance.now() - began).toBeLessThan(3000);
  }
});
