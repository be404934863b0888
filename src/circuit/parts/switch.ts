import { circuitWords } from '../../words/en/circuit.ts';
import { CircuitError } from '../errors.ts';
import type { Branch, PartKindSpec } from './kind.ts';
import type { Switch } from './part.ts';

/** Every pair of lugs that some position joins, in the order first met, named `A1-AC`. */
export function contacts(
  part: Switch,
): readonly { readonly name: string; readonly a: string; readonly b: string }[] {
  const found = new Map<string, { name: string; a: string; b: string }>();
  for (const position of part.positions)
    for (const [a, b] of position.joins)
      if (!found.has(`${a}-${b}`)) found.set(`${a}-${b}`, { name: `${a}-${b}`, a, b });
  return [...found.values()];
}

/** A table of contacts: position by pole. */
export const switchKind: PartKindSpec<Switch> = {
  lugs: (part) => [...part.rows.flat(), ...(part.frame ? ['frame'] : [])],
  branches(part, setting): readonly Branch[] {
    const name = setting.positions[part.id] ?? part.positions[0]?.name;
    const joins = part.positions.find((position) => position.name === name)?.joins ?? [];
    return contacts(part).map(({ name: contact, a, b }) => ({
      name: contact,
      a,
      b,
      what: { type: 'contact' },
      closed: joins.some(([x, y]) => x === a && y === b),
    }));
  },
  check(part) {
    const lugs = new Set(part.rows.flat());
    if (part.positions.length === 0)
      throw new CircuitError(
        'bad-shape',
        part.title,
        circuitWords().partASwitchNeedsAtLeastOne(part.title),
      );
    if (lugs.size !== part.rows.flat().length)
      throw new CircuitError(
        'duplicate-name',
        part.title,
        circuitWords().partTwoOfItsLugsHaveThe(part.title),
      );
    const names = new Set<string>();
    for (const position of part.positions) {
      if (names.has(position.name))
        throw new CircuitError(
          'duplicate-name',
          part.title,
          circuitWords().partTwoPositionsAreCalled(part.title, position.name),
        );
      names.add(position.name);
      for (const [a, b] of position.joins) {
        for (const lug of [a, b])
          if (!lugs.has(lug))
            throw new CircuitError(
              'unknown-lug',
              `${part.id}.${lug}`,
              circuitWords().partPositionPositionJoins(part.title, position.name, lug),
            );
        if (a === b)
          throw new CircuitError(
            'lead-to-itself',
            `${part.id}.${a}`,
            circuitWords().partPositionPositionJoins2(part.title, position.name, a),
          );
      }
    }
  },
};
