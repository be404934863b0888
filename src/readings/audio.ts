import { nodeAt } from '../circuit/netlist.ts';
import type { Coil } from '../circuit/parts/part.ts';
import { Ac, type Complex, type Load } from '../solver/index.ts';
import { jackOf } from './points.ts';
import type { View } from './view.ts';

/** What hangs on the jack: an amplifier's input, and the capacitance of the cable to it. */
export interface AudioLoad {
  readonly ohms: number;
  readonly farads: number;
}

/** A usual input of 1 Mohm, and 4.5 m of cable at 100 pF a metre, the lower end of the trade's 100 to 330 (field figure). */
export const usualLoad: AudioLoad = { ohms: 1e6, farads: 450e-12 };

/** The guitar at audio frequencies, driven at its jack: by reciprocity one solution tells what each coil brings there. */
export function acAtJack(view: View, load: AudioLoad, strays: readonly Load[] = [], more = 0): Ac {
  const { layout, wired } = view;
  const { tip, sleeve } = jackOf(layout);
  const [from, to] = [nodeAt(layout, tip), nodeAt(layout, sleeve)];
  const { nodeCount: nodes, a, b, ohms, farads, henries, coreOhms, lossTangent } = wired;
  return new Ac(
    { nodes, a, b, ohms, farads, henries, coreOhms, lossTangent },
    [{ from, to, ...load }, ...strays],
    from,
    to,
    more,
  );
}

/** A coil in the signal's way. */
export interface CoilHeard {
  readonly coil: Coil;
  /** Volts at the jack per volt of EMF that lifts the finish above the start. */
  readonly volts: Complex;
  /** Sign of the string's EMF: winding times magnet. */
  readonly signal: 1 | -1;
  /** Sign of the EMF of hum, which needs no magnet. */
  readonly hum: 1 | -1;
}

/**
 * What each coil brings to the jack at the frequency last solved. A broken winding still drives through its own capacitance: turns lie on
 * both sides of the break, on average half of them on either, so half of the EMF counts.
 */
export function coilsHeard(view: View, ac: Ac): readonly CoilHeard[] {
  const { layout, wired } = view;
  const heard: CoilHeard[] = [];
  for (const coil of layout.circuit.parts) {
    if (coil.kind !== 'coil') continue;
    const site = layout.siteIndex.get(`${coil.id}:winding`) as number;
    const open = wired.ohms[site] === Number.POSITIVE_INFINITY;
    const [re, im] = open ? ac.throughFarads(site) : ac.transfer(site);
    heard.push({
      coil,
      volts: open ? [-re / 2, -im / 2] : [-re, -im],
      signal: (coil.winding * coil.magnet * (wired.magnetSign[site] as number)) as 1 | -1,
      hum: coil.winding,
    });
  }
  return heard;
}
