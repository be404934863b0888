import { Groups } from './groups.ts';
import type { SpiceNetlist } from './spice-netlist.ts';

/**
 * How an ideal join is written. `merged`: both ends bear one node name, which is exact and leaves a small matrix.
 * `sources`: a 0 V source, so that the simulator does the joining; a source that closes a loop of such sources has
 * no definite current and no effect on any voltage, so it is left out. (A resistor of a microohm would not do: 1e6 S
 * and 1e-6 S in one sum lose twelve of sixteen digits.)
 */
export type Joins = 'merged' | 'sources';

/** One netlist, written as one of several copies in a deck. */
export interface WrittenCopy {
  readonly lines: readonly string[];
  /** Spice name of each node that this netlist names. */
  readonly nodeName: ReadonlyMap<string, string>;
  /** Spice name of the EMF in series with each winding that is whole, and, with reactance, of half of it where the winding is broken. */
  readonly emfName: ReadonlyMap<string, string>;
  readonly halved: ReadonlySet<string>;
  /** Resistors across capacitors whose ohms depend on the frequency: ohms times hertz. */
  readonly losses: readonly { readonly name: string; readonly ohmHertz: number }[];
  /** For each node the spice name of the one that stands for its island: all that direct current can reach. */
  readonly island: ReadonlyMap<string, string>;
}

/** @param withReactance false leaves capacitors and inductors out: the same steady state, fewer unknowns */
export function writeCopy(
  netlist: SpiceNetlist,
  copy: number,
  options: { readonly withReactance: boolean; readonly joins: Joins },
): WrittenCopy {
  const index = new Map(netlist.nodes.map((node, at) => [node, at]));
  const merged = new Groups(netlist.nodes.length);
  const reached = new Groups(netlist.nodes.length);
  const loopClosers = new Set<number>();
  netlist.elements.forEach((element, at) => {
    if (element.kind === 'capacitor') return;
    const [from, to] =
      element.kind === 'winding' ? [element.start, element.finish] : [element.a, element.b];
    reached.join(index.get(from)!, index.get(to)!);
    if (element.kind === 'ideal' && !merged.join(index.get(from)!, index.get(to)!))
      loopClosers.add(at);
  });
  const spell = (at: number) => `n${copy}_${options.joins === 'merged' ? merged.find(at) : at}`;
  const name = (node: string) => spell(index.get(node)!);
  const emfName = new Map<string, string>();
  const lines: string[] = [];
  const halved = new Set<string>();
  const losses: { name: string; ohmHertz: number }[] = [];
  netlist.elements.forEach((element, at) => {
    const id = `${copy}_${at}`;
    switch (element.kind) {
      case 'ideal':
        if (options.joins === 'sources' && !loopClosers.has(at))
          lines.push(`vj${id} ${name(element.a)} ${name(element.b)} 0`);
        break;
      case 'resistor':
        lines.push(`r${id} ${name(element.a)} ${name(element.b)} ${element.ohms}`);
        break;
      case 'capacitor':
        if (!options.withReactance) break;
        if (element.halfEmfOf !== undefined) {
          lines.push(`c${id} ${name(element.a)} e${id} ${element.farads}`);
          lines.push(`ve${id} ${name(element.b)} e${id} 0`);
          emfName.set(element.halfEmfOf, `ve${id}`);
          halved.add(element.halfEmfOf);
        } else lines.push(`c${id} ${name(element.a)} ${name(element.b)} ${element.farads}`);
        if (element.lossTangent > 0) {
          const ohmHertz = 1 / (2 * Math.PI * element.farads * element.lossTangent);
          lines.push(`rd${id} ${name(element.a)} ${name(element.b)} ${ohmHertz / 1000}`);
          losses.push({ name: `rd${id}`, ohmHertz });
        }
        break;
      case 'winding': {
        const inner = options.withReactance ? `m${id}` : `e${id}`;
        lines.push(`r${id} ${name(element.start)} ${inner} ${element.ohms}`);
        if (options.withReactance) {
          lines.push(`l${id} ${inner} e${id} ${element.henries}`);
          lines.push(`rc${id} ${inner} e${id} ${element.coreOhms}`);
        }
        lines.push(`ve${id} ${name(element.finish)} e${id} 0`);
        emfName.set(element.name, `ve${id}`);
        break;
      }
    }
  });
  return {
    lines,
    nodeName: new Map(netlist.nodes.map((node) => [node, name(node)])),
    emfName,
    halved,
    losses,
    island: new Map(netlist.nodes.map((node, at) => [node, spell(reached.find(at))])),
  };
}
