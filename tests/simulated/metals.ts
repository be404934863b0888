import type { Setting } from '../../src/circuit/circuit.ts';
import type { Bench } from './bench.ts';
import { outputOf } from './output.ts';

/** From this many ohms on, the current that metal collects is heard at the output (common practice, no source). */
const HEARD = 1000;

/**
 * Whether the mains current that a hand, or the air, brings to a metal is heard at the output. The current runs from the metal to the
 * sleeve, and a part of the ohms on its way lies between tip and sleeve as well: by superposition (textbook, three terminals) that is
 * (R_metal,sleeve + R_tip,sleeve - R_metal,tip) / 2. It is the whole pickup for strings joined to the hot, the bad joint for a guitar
 * whose ground is cold at the jack, and nothing for strings with a bad wire of their own. The ear and the hand both ask here.
 */
export function isHeard(bench: Bench, setting: Setting, metal: string): boolean {
  const { tip, sleeve } = outputOf(bench.circuit);
  const ohms = (a: string, b: string) => bench.ohms(setting, [a, b]);
  const [toSleeve, toTip] = [ohms(metal, sleeve), ohms(metal, tip)];
  // No way to the sleeve but through the amplifier's input; or none to the tip at all.
  if (toSleeve === Infinity) return toTip < HEARD;
  if (toTip === Infinity) return false;
  return (toSleeve + ohms(tip, sleeve) - toTip) / 2 > HEARD;
}
