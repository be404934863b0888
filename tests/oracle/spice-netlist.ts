import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import type { Part, PartId } from '../../src/circuit/parts/part.ts';
import { alterWiring, OracleError } from './altered-wiring.ts';
import { bareEndsOf, lugsOf } from './lugs.ts';
import { trackHalves } from './taper.ts';

/**
 * The wiring as a general circuit simulator sees it. Written from the words of the circuit model alone, without
 * the project's own netlist or solver, so that the two can be held against each other.
 */
export type SpiceElement =
  /** Joined without resistance. */
  | { readonly kind: 'ideal'; readonly name: string; readonly a: string; readonly b: string }
  | {
      readonly kind: 'resistor';
      readonly name: string;
      readonly a: string;
      readonly b: string;
      readonly ohms: number;
    }
  | {
      readonly kind: 'capacitor';
      readonly name: string;
      readonly a: string;
      readonly b: string;
      readonly farads: number;
      /** Loss as a share of the reactance. */
      readonly lossTangent: number;
      /** A winding that is broken: half of its EMF is in series with what its turns have between them. */
      readonly halfEmfOf?: PartId;
    }
  /** Resistance, inductance and an EMF in series; the EMF lifts `finish` above `start`. */
  | {
      readonly kind: 'winding';
      readonly name: PartId;
      readonly start: string;
      readonly finish: string;
      readonly ohms: number;
      readonly henries: number;
      /** Across the inductance alone. */
      readonly coreOhms: number;
    };

/** A coil alone resonates with a Q of 6; a film capacitor loses half a per cent (common practice, no source). */
const freeQ = 6;
const filmLoss = 0.005;

export interface SpiceNetlist {
  /** Every lug and every bare end, by name. */
  readonly nodes: readonly string[];
  readonly elements: readonly SpiceElement[];
}

export interface RealParts {
  /** Real values in place of the printed ones (ohms or farads, by part), before any `scale` edit. */
  readonly values?: Readonly<Record<PartId, number>>;
  /** Real share of a pot's track that stays at each end; 0.1 % where it is not given. */
  readonly endOhms?: Readonly<Record<PartId, number>>;
  /** Coils and capacitors without losses of their own. */
  readonly lossless?: boolean;
}

export function spiceNetlist(
  circuit: Circuit,
  setting: Setting,
  edits: readonly Edit[] = [],
  { values = {}, endOhms = {}, lossless = false }: RealParts = {},
): SpiceNetlist {
  const wiring = alterWiring(circuit, setting, edits);
  const nodes = [...lugsOf(circuit), ...bareEndsOf(circuit)];
  const known = new Set(nodes);
  const sites = new Set<string>();
  const elements: SpiceElement[] = [];
  const checked = (node: string) => {
    if (!known.has(node)) throw new OracleError(`no lug or bare end is called ${node}`);
    return node;
  };

  /** A site of `base` ohms: gone if open, with what the edits put in added; 0 ohm is an ideal join. */
  const conduct = (site: string, a: string, b: string, base: number) => {
    sites.add(site);
    if (wiring.open.has(site)) return;
    const ohms = base + (wiring.added.get(site) ?? 0);
    if (ohms === 0) elements.push({ kind: 'ideal', name: site, a: checked(a), b: checked(b) });
    else elements.push({ kind: 'resistor', name: site, a: checked(a), b: checked(b), ohms });
  };
  const realValue = (part: Part, printed: number) =>
    (values[part.id] ?? printed) * (wiring.factor.get(part.id) ?? 1);

  for (const part of circuit.parts) {
    const lug = (name: string) => `${part.id}.${name}`;
    switch (part.kind) {
      case 'coil': {
        const site = `${part.id}:winding`;
        sites.add(site);
        const [start, finish] = [lug('start'), lug('finish')];
        if (!wiring.open.has(site)) {
          const copper = realValue(part, part.ohms.measured ?? part.ohms.nominal);
          const ohms = copper + (wiring.added.get(site) ?? 0);
          elements.push({
            kind: 'winding',
            name: part.id,
            start,
            finish,
            ohms,
            henries: part.henries * (wiring.factor.get(part.id) ?? 1),
            coreOhms: lossless ? 1e12 : freeQ * Math.sqrt(part.henries / part.selfFarads),
          });
        }
        // Turns lie side by side whether the wire is whole or not, so the capacitance stays with an open coil.
        elements.push({
          kind: 'capacitor',
          name: `${part.id}:self`,
          a: start,
          b: finish,
          farads: part.selfFarads,
          lossTangent: 0,
          ...(wiring.open.has(site) && { halfEmfOf: part.id }),
        });
        break;
      }
      case 'pot': {
        const knob = setting.knobs[part.id];
        if (knob === undefined || !(knob >= 0 && knob <= 10))
          throw new OracleError(
            `setting gives ${part.id} the knob figure ${knob}; 0 to 10 was expected`,
          );
        const track = realValue(part, part.ohms.measured ?? part.ohms.nominal);
        const { lower, upper } = trackHalves(part, track, knob, endOhms[part.id]);
        // The wiper's contact lies between the track and lug 2.
        const wiper = `${part.id}~wiper`;
        nodes.push(wiper);
        known.add(wiper);
        conduct(`${part.id}:lower`, lug('1'), wiper, lower);
        conduct(`${part.id}:upper`, wiper, lug('3'), upper);
        // A no-load pot's wiper is on nothing at the end of its turn.
        if (part.noLoad && knob > 9.9) sites.add(`${part.id}:wiper`);
        else conduct(`${part.id}:wiper`, wiper, lug('2'), 0);
        break;
      }
      case 'switch': {
        const name = wiring.stuck.get(part.id) ?? setting.positions[part.id];
        const now = part.positions.find((position) => position.name === name);
        if (!now) throw new OracleError(`switch ${part.id} has no position ${name}`);
        for (const position of part.positions)
          for (const [a, b] of position.joins) sites.add(`${part.id}:${a}-${b}`);
        for (const [a, b] of now.joins) conduct(`${part.id}:${a}-${b}`, lug(a), lug(b), 0);
        break;
      }
      case 'capacitor': {
        const site = `${part.id}:body`;
        sites.add(site);
        if (wiring.open.has(site)) break;
        const farads = realValue(part, part.farads.measured ?? part.farads.nominal);
        const added = wiring.added.get(site) ?? 0;
        let b = lug('b');
        if (added > 0) {
          b = `${part.id}~plate`;
          nodes.push(b);
          known.add(b);
          elements.push({ kind: 'resistor', name: site, a: b, b: lug('b'), ohms: added });
        }
        elements.push({
          kind: 'capacitor',
          name: `${part.id}:plates`,
          a: lug('a'),
          b,
          farads,
          lossTangent: lossless ? 0 : filmLoss,
        });
        break;
      }
      case 'resistor':
        conduct(
          `${part.id}:body`,
          lug('a'),
          lug('b'),
          realValue(part, part.ohms.measured ?? part.ohms.nominal),
        );
        break;
      case 'jack':
      case 'metal':
      case 'splice':
        break;
    }
  }
  for (const { id } of circuit.leads) {
    conduct(`${id}@from`, wiring.landing.get(`${id}@from`)!, `${id}@from`, 0);
    conduct(id, `${id}@from`, `${id}@to`, 0);
    conduct(`${id}@to`, `${id}@to`, wiring.landing.get(`${id}@to`)!, 0);
  }
  wiring.bridges.forEach(({ a, b, ohms }, index) => {
    conduct(`bridge ${index}`, checked(a), checked(b), ohms);
  });

  for (const site of [...wiring.open, ...wiring.added.keys()])
    if (!sites.has(site))
      throw new OracleError(`an edit names the site ${site}, which is not in this circuit`);
  for (const part of [...wiring.factor.keys(), ...wiring.stuck.keys()])
    if (!circuit.parts.some(({ id }) => id === part))
      throw new OracleError(`an edit names the part ${part}, which is not in this circuit`);
  return { nodes, elements };
}
