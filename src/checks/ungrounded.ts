import type { Circuit } from '../circuit/circuit.ts';
import { metalOf } from '../circuit/metal.ts';
import { checkWords } from '../words/en/checks.ts';
import { joinedIn, type Network, type Stand } from './network.ts';
import type { Stands } from './stands.ts';
import type { Warning } from './warning.ts';
import { capital, lugWords, standWords } from './words.ts';

/** Metal that no wire or contact takes to the jack's sleeve, in every setting or in some. */
export function ungroundedMetal(
  circuit: Circuit,
  network: Network,
  { all }: Stands,
): readonly Warning[] {
  const { jack } = network;
  if (!jack) return [];
  const metals = circuit.parts.flatMap((part) => {
    const lug = metalOf(part);
    return lug === null ? [] : [{ part, lug, point: network.pointOf(lug) }];
  });
  const bare = metals.map((): Stand[] => []);
  const hot = new Set<number>();
  for (const stand of all) {
    const sets = joinedIn(network, stand);
    const live = joinedIn(network, stand, true);
    const ground = sets.root(jack.sleeve);
    metals.forEach(({ point }, at) => {
      if (sets.root(point) === ground) return;
      bare[at]?.push(stand);
      if (live.root(point) === live.root(jack.tip)) hot.add(at);
    });
  }
  return metals.flatMap(({ part, lug }, at): Warning[] => {
    const without = bare[at] ?? [];
    const [first] = without;
    if (!first) return [];
    const what = capital(lugWords(network, lug));
    const then = hot.has(at) ? checkWords().itIsOnHot : checkWords().itCanHum;
    const bareThen =
      without.length === all.length
        ? checkWords().noGround(what)
        : checkWords().noGroundWith(
            what,
            standWords(network, first, culprits(all, without, first)),
          );
    const sentence = `${bareThen} ${then}`;
    return [{ kind: 'ungrounded', lugs: [lug], parts: [part.id], sentence }];
  });
}

/** The switches that stand the same wherever the metal is bare: those it depends on. */
function culprits(all: readonly Stand[], bare: readonly Stand[], first: Stand): readonly number[] {
  const fixed = first.flatMap((position, at) =>
    bare.every((stand) => stand[at] === position) && all.some((stand) => stand[at] !== position)
      ? [at]
      : [],
  );
  return fixed.length > 0 ? fixed : first.map((_, at) => at);
}
