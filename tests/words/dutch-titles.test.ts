import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { tray } from '../../src/circuit/editing/tray/index.ts';
import { de, found, naam } from '../../src/words/nl/nouns.ts';

const titlesOf = ({ title, parts, pickups }: Circuit): readonly string[] => [
  title,
  ...pickups.map((pickup) => pickup.title),
  ...parts.flatMap((part) => [
    part.title,
    ...(part.kind === 'switch' ? part.positions.map((position) => position.title) : []),
  ]),
];

/** A value with its unit, a plain figure and a name of letters and digits are the same everywhere. */
const sameEverywhere = (title: string) => /^[\d.]+ ?(?:[kM]?Ω|[pn]F)$|^[A-Z]?\d+$/.test(title);
const unknown = (titles: Iterable<string>) =>
  [...new Set(titles)].filter((title) => !sameEverywhere(title) && found(title) === undefined);

describe('titles that are data of the app', () => {
  it.each(startingWirings.map((wiring) => [wiring.id, wiring] as const))(
    'have a Dutch form in %s with every change at every place',
    (_, { build }) => {
      const base = build();
      const titles = new Set(titlesOf(base));
      const add = (...more: readonly string[]) => {
        for (const title of more) titles.add(title);
      };
      for (const change of modifications)
        for (const place of change.applies(base)) {
          add(change.title, change.does, place.title);
          const conflict = change.conflict(base, place);
          if (conflict !== null) add(conflict);
          const ways = change.choices(base, place).flatMap((choice) => {
            add(choice.title, ...choice.options.map(({ title }) => title));
            return choice.options.map(({ id }) => ({ [choice.id]: id }));
          });
          for (const chosen of [{}, ...ways]) {
            add(change.named(place, chosen));
            if (conflict === null) add(...titlesOf(change.apply(base, place, chosen)));
          }
        }
      expect(unknown(titles)).toEqual([]);
    },
  );

  it('have a Dutch form in the tray, with every choice', () => {
    const empty: Circuit = { id: 'x', title: 'one humbucker', parts: [], leads: [], pickups: [] };
    const titles = tray.flatMap((item) => [
      item.title,
      ...item.choices(empty, {}).flatMap((choice) => [
        choice.title,
        ...choice.options.flatMap(({ id, title }) => {
          const { parts, pickup } = item.make(empty, { [choice.id]: id });
          return [title, ...titlesOf({ ...empty, parts, pickups: pickup ? [pickup] : [] })];
        }),
      ]),
    ]);
    expect(unknown(titles)).toEqual([]);
  });

  it('take their article in a sentence, and a name of somebody’s own stays as it is', () => {
    expect(de('neck pickup')).toBe('het halselement');
    expect(naam('neck pickup')).toBe('halselement');
    expect(de("bridge pickup's screw coil")).toBe('de schroefspoel van het brugelement');
    expect(de('Bertha')).toBe('Bertha');
    expect(naam('old one')).toBe('old one');
    expect(de('element op de mat')).toBe('het element op de mat');
    expect(de('striped groen lead')).toBe('de draad (groen, gestreept)');
    expect(de('joined pair wit')).toBe('het verbonden paar (wit)');
  });
});
