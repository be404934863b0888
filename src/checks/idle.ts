import type { Circuit } from '../circuit/circuit.ts';
import type { Pot } from '../circuit/parts/part.ts';
import { checkWords } from '../words/en/checks.ts';
import type { Heard } from './heard.ts';
import type { Network, Stand } from './network.ts';
import type { Warning } from './warning.ts';

/** Controls that change nothing at the output, whatever the others do. `heard` goes stand by stand with `stands`. */
export function idleControls(
  circuit: Circuit,
  network: Network,
  stands: readonly Stand[],
  heard: readonly Heard[],
): readonly Warning[] {
  // Where nothing is heard at all, no control is to blame.
  if (!heard.some(({ edges }) => edges.length > 0)) return [];
  const led = new Set(circuit.leads.flatMap(({ from, to }) => [from, to]));
  const warn = (
    part: { readonly id: string; readonly title: string },
    lugs: readonly string[],
    act: 'turningChangesNothing' | 'pressingChangesNothing' | 'movingChangesNothing',
  ): Warning => {
    const refs = lugs.map((lug) => `${part.id}.${lug}`);
    const used = refs.filter((lug) => led.has(lug));
    return {
      kind: 'idle',
      lugs: used.length > 0 ? used : refs,
      parts: [part.id],
      sentence: checkWords()[act](part.title),
    };
  };
  const wired = (id: string) => [...led].some((lug) => lug.startsWith(`${id}.`));
  const pots = circuit.parts.flatMap((part): Warning[] =>
    part.kind === 'pot' && wired(part.id) && !heard.some((one) => turns(network, one, part))
      ? [warn(part, ['2', '3', '1'], 'turningChangesNothing')]
      : [],
  );
  const switches = network.switches.flatMap((part, at): Warning[] =>
    wired(part.id) && !throwsAnything(stands, heard, at)
      ? [
          warn(
            part,
            part.rows.flat(),
            part.style === 'button' ? 'pressingChangesNothing' : 'movingChangesNothing',
          ),
        ]
      : [],
  );
  return [...pots, ...switches];
}

/**
 * A pot acts where a piece of its track is heard, unless both are and nothing goes on from the wiper: the two pieces then
 * stand in series, and their sum stays.
 */
function turns(network: Network, { edges, sets }: Heard, pot: Pot): boolean {
  const own = edges.filter(({ part }) => part.id === pot.id);
  if (own.length < 2) return own.length === 1;
  const wiper = sets.root(network.pointOf(`${pot.id}.2`));
  const { jack } = network;
  if (jack && [jack.tip, jack.sleeve].some((point) => sets.root(point) === wiper)) return true;
  return edges.some(
    ({ part, a, b }) => part.id !== pot.id && (sets.root(a) === wiper || sets.root(b) === wiper),
  );
}

/** Whether two stands that differ in this switch alone sound different. */
function throwsAnything(stands: readonly Stand[], heard: readonly Heard[], at: number): boolean {
  const patterns = new Map<string, string>();
  return stands.some((stand, index) => {
    const rest = stand.map((position, one) => (one === at ? '' : position)).join();
    const pattern = heard[index]?.pattern ?? '';
    const before = patterns.get(rest);
    patterns.set(rest, before ?? pattern);
    return before !== undefined && before !== pattern;
  });
}
