import { startingWirings } from '../circuit/catalog/index.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { type Layout, layoutOf, nodeAt } from '../circuit/netlist.ts';
import { switchSettings } from '../circuit/setting.ts';
import type { Fault } from '../faults/fault.ts';
import { faultsOf } from '../faults/index.ts';
import { jackOf } from '../readings/points.ts';
import { View } from '../readings/view.ts';
import { Dice } from './dice.ts';
import { SimulatedMeter } from './meter.ts';
import { benchCelsius, realCircuit } from './real-parts.ts';

/** A practice guitar as it is: the wiring as intended, and what nobody at the bench knows. */
export interface HiddenGuitar {
  readonly intended: Circuit;
  readonly meter: SimulatedMeter;
  /** With the values its parts really have. */
  readonly real: Layout;
  readonly fault: Fault;
  readonly edits: readonly Edit[];
}

/** Steady faults of one place. Values that are a little off and joints that only fail when moved are for later. */
const TO_LEARN_ON: ReadonlySet<Edit['op']> = new Set(['open', 'bridge', 'land', 'exchange']);

/** A reading at the jack must move by this share, or a beginner has nothing to go by. */
const CLEARLY = 0.25;

/** A bridge or an added resistance up to this passes for a joint, ohm: what a strand or a blob of solder makes. */
const SOLDER = 2;

const made = new Map<string, HiddenGuitar>();

/** The guitar of a seed: the same seed gives the same guitar. The newest is remembered. */
export function hiddenGuitar(seed: string): HiddenGuitar {
  const known = made.get(seed);
  if (known) return known;
  const dice = new Dice(`${seed} practice`);
  const intended = dice.pick(startingWirings).build();
  const meter = new SimulatedMeter(new Dice(`${seed} meter`));
  const real = layoutOf(realCircuit(intended, dice.between(...benchCelsius), dice));
  const choices = faultsOf(intended).flatMap((fault) =>
    fault.variants
      .filter(({ edits }) => edits.every(isSteady) && showsAtJack(real, edits))
      .map(({ edits, share }) => ({ fault, edits, weight: fault.weight * share })),
  );
  const { fault, edits } = picked(choices, dice);
  const guitar: HiddenGuitar = { intended, meter, real, fault, edits };
  made.clear();
  made.set(seed, guitar);
  return guitar;
}

const isSteady = (edit: Edit): boolean =>
  TO_LEARN_ON.has(edit.op) && (edit.op !== 'bridge' || edit.ohms <= SOLDER);

function showsAtJack(layout: Layout, edits: readonly Edit[]): boolean {
  const { tip, sleeve } = jackOf(layout);
  const [a, b] = [nodeAt(layout, tip), nodeAt(layout, sleeve)];
  return switchSettings(layout.circuit).some((setting) => {
    const healthy = new View(layout, setting, []).dc.resistance(a, b);
    const now = new View(layout, setting, edits).dc.resistance(a, b);
    if (!Number.isFinite(healthy) || !Number.isFinite(now)) return healthy !== now;
    return Math.abs(now - healthy) > CLEARLY * healthy + 1;
  });
}

function picked<T extends { readonly weight: number }>(choices: readonly T[], dice: Dice): T {
  let left = dice.throw() * choices.reduce((sum, { weight }) => sum + weight, 0);
  for (const choice of choices) {
    left -= choice.weight;
    if (left < 0) return choice;
  }
  // Rounding may leave a crumb over.
  return dice.pick(choices);
}
