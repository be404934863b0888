import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { SimulatedMeter } from '../../src/practice/meter.ts';
import { benchCelsius, realCircuit } from '../../src/practice/real-parts.ts';
import type { Ask, Meter, Seen } from '../../src/readings/reading.ts';
import { Bench } from './bench.ts';
import { canonical } from './canonical.ts';
import { Dice } from './dice.ts';
import { type Hands, readBeep, readOhms } from './probing.ts';
import { mistyped, type Slip } from './slip.ts';

export interface PickupOptions {
  /** Share of taps that are not entered as they should be: half the wrong sign, half nothing seen. */
  readonly wrongTaps: number;
  /** Share of entries with a slip: half a wrong lead in the hand, half a wrong figure typed. */
  readonly wrongEntries: number;
}

export interface SimulatedPickup {
  readonly meter: Meter;
  answer(ask: Ask): Seen;
}

/** Share of taps for which the other coil is not tried. */
const FORGETS = 0.05;

/**
 * A pickup on the mat, its owner and their meter. `real` is the pickup as it is: its leads start where they really start, and the
 * signs of its coils are absolute. Readings come from a circuit simulator and never from this project's own solver.
 */
export function simulatePickup(
  real: Circuit,
  edits: readonly Edit[],
  seed: string,
  { wrongTaps, wrongEntries }: PickupOptions,
): SimulatedPickup {
  const make = new Dice(`${seed} make`);
  const meter = new SimulatedMeter(new Dice(`${seed} meter`));
  const circuit = realCircuit(real, make.between(...benchCelsius), make);
  const bench = new Bench(circuit, edits, seed, { knobDeviation: 0 });
  const hands: Hands = { bench, meter, fingers: 0, windings: 1 };
  const points = circuit.parts.flatMap(({ kind, id }) =>
    kind === 'splice' ? [`${id}.joint`] : [],
  );
  const asked = new Map<string, number>();
  // Steel over one coil moves flux of its neighbour, too: how much, and which way, is one for the pickup.
  const crosstalk = make.between(0.05, 0.25) * (make.chance(0.5) ? 1 : -1);

  const tapped = (ask: Extract<Ask, { kind: 'tap' }>, dice: Dice): Seen => {
    // Windings on one core share its flux.
    const core = circuit.parts.flatMap((part) => (part.kind === 'coil' ? [part] : []));
    const place = core.find(({ id }) => id === ask.coil)?.place;
    /** With steel pulled off the coils in this place, or off those in the other. */
    const swingOff = (here: boolean): number =>
      core.reduce(
        (sum, coil) =>
          sum +
          ((coil.place === place) === here ? 1 : crosstalk) *
            coil.winding *
            coil.magnet *
            bench.transfer(ask.setting, coil.id, [ask.red, ask.black]),
        0,
      );
    const swing = swingOff(true);
    const error = dice.throw();
    // As asked, the other coil is tried for comparison; who forgets it takes whatever moves the figure.
    const compared = dice.chance(1 - FORGETS) ? Math.abs(swingOff(false)) : 0;
    const faint = Math.abs(swing) < Math.max(0.12, 0.4 * compared);
    const words = faint
      ? (['nothing', 'plus', 'minus'] as const)
      : swing > 0
        ? (['plus', 'minus', 'nothing'] as const)
        : (['minus', 'plus', 'nothing'] as const);
    const which = error < 1 - wrongTaps ? 0 : error < 1 - wrongTaps / 2 ? 1 : 2;
    return { kind: 'tap', swing: words[which] };
  };

  const look = (ask: Ask, dice: Dice): Seen => {
    switch (ask.kind) {
      case 'ohms':
        return readOhms(hands, ask, dice);
      case 'beep':
        return readBeep(hands, ask);
      case 'tap':
        return tapped(ask, dice);
      default:
        throw new Error(`a pickup on the mat is not asked for ${ask.kind}`);
    }
  };

  return {
    meter: meter.known,
    answer(ask) {
      const key = canonical(ask);
      const before = asked.get(key) ?? 0;
      asked.set(key, before + 1);
      const now = `${seed} ${key} ${before}`;
      // A habit of the first time comes back in half of the repeats.
      const again = before > 0 && new Dice(`${now} again`).chance(0.5);
      const slips = new Dice(`${seed} ${key} ${again ? 0 : before} slip`);
      const slipped = slips.chance(wrongEntries);
      const inHand = slipped && slips.chance(0.5);
      let done = ask;
      if (inHand && 'red' in ask) {
        const others = points.filter((point) => point !== ask.red && point !== ask.black);
        if (others.length > 0)
          done = { ...ask, [slips.chance(0.5) ? 'red' : 'black']: slips.pick(others) };
      }
      const seen = look(done, new Dice(now));
      const typed: Slip | undefined =
        slipped && !inHand ? slips.pick(['prefix', 'decade'] as const) : undefined;
      return mistyped(seen, typed, slips);
    },
  };
}
