import type { Circuit } from '../circuit/circuit.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, Remedy } from './fault.ts';

/**
 * Which way round all coils stand together cannot be heard or measured: where the coils are two groups, and one of them is
 * turned, turning the other mends it as well. Such faults get one remedy. (Follows from the signs; nothing else changes.)
 */
export function eitherWillDo(circuit: Circuit, faults: readonly Fault[]): readonly Fault[] {
  const all = circuit.pickups.flatMap(({ coils }) => coils);
  const turned = (fault: Fault): readonly string[] | null => {
    const [act, id] = fault.remedy.key.split(':') as [string, string];
    if (act !== 'turn' && act !== 'magnet') return null;
    return circuit.pickups.find((pickup) => pickup.id === id)?.coils ?? [id];
  };
  const partnerOf = (fault: Fault): Fault | undefined => {
    const own = turned(fault);
    if (!own || own.length === all.length) return undefined;
    const [act] = fault.remedy.key.split(':');
    return faults.find((other) => {
      const theirs = other.remedy.key.startsWith(`${act}:`) ? turned(other) : null;
      return (
        theirs?.length === all.length - own.length && theirs.every((coil) => !own.includes(coil))
      );
    });
  };
  const pairs = new Map<Fault, Remedy>();
  for (const fault of faults) {
    const partner = partnerOf(fault);
    if (!partner || pairs.has(fault)) continue;
    const remedy = common(fault.remedy, partner.remedy, nameOf(circuit, partner));
    pairs.set(fault, remedy);
    pairs.set(partner, remedy);
  }
  return faults.map((fault) => ({ ...fault, remedy: pairs.get(fault) ?? fault.remedy }));
}

function nameOf({ pickups, parts }: Circuit, { remedy }: Fault): string {
  const id = remedy.key.slice(remedy.key.indexOf(':') + 1);
  return (
    (pickups.find((pickup) => pickup.id === id) ?? parts.find((part) => part.id === id))?.title ??
    id
  );
}

function common(one: Remedy, other: Remedy, name: string): Remedy {
  return {
    key: `${one.key} or ${other.key.slice(other.key.indexOf(':') + 1)}`,
    title: faultWords().oneOrOfTheName(one.title, name),
    steps: [faultWords().eitherOfTheTwoWillDoBut, ...one.steps],
    proof: one.proof,
  };
}
