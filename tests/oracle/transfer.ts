import type { NodeName } from '../../src/circuit/edit.ts';
import type { PartId } from '../../src/circuit/parts/part.ts';
import { amperes, openAbove, operatingPoints } from './operating-points.ts';
import type { SpiceNetlist } from './spice-netlist.ts';

/**
 * Volts between `red` and `black`, nothing connected to them, per volt of EMF in series with the winding of `coil`;
 * the EMF lifts the finish above the start. 0 where the probes stand on separate islands: a meter would show nothing.
 */
export function tapTransfer(
  netlist: SpiceNetlist,
  coil: PartId,
  red: NodeName,
  black: NodeName,
): number {
  const [volts] = operatingPoints([
    { netlist, drives: [{ through: [red, black] }, { emf: coil }] },
  ]);
  if ((volts!(0, red) - volts!(0, black)) / amperes > openAbove) return 0;
  return volts!(1, red) - volts!(1, black);
}
