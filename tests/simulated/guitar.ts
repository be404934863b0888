import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { SimulatedMeter } from '../../src/practice/meter.ts';
import { benchCelsius, realCircuit } from '../../src/practice/real-parts.ts';
import type { Ask, Meter, Seen } from '../../src/readings/reading.ts';
import { Bench } from './bench.ts';
import { canonical } from './canonical.ts';
import { Dice } from './dice.ts';
import { readHum, readListen } from './ears.ts';
import {
  type Hands,
  readBeep,
  readFarads,
  readFlex,
  readOhms,
  readTap,
  readTurn,
} from './probing.ts';
import { readLook, readPole, readTouch } from './senses.ts';
import { drawSlip, misdone, mistyped, type Slip } from './slip.ts';

export interface SimulationOptions {
  /** Share of readings that are wrong for a reason outside the guitar; 0 by default. */
  readonly wrongEntries?: number;
  /** Share of ohm readings with a finger on each tip; 0 by default. */
  readonly fingers?: number;
  /** Chance that a fault which can be seen is seen; 0.7 by default. */
  readonly finds?: number;
  /** Standard deviation of a knob set by eye, in figures of its dial; 0.15 by default. Ends are exact. */
  readonly knobDeviation?: number;
  /**
   * What a pot keeps at each end of its track: `drawn`, 1 to 100 ohm, evenly by ratio (common practice, no source; the
   * default), or `stated`, as the circuit model says.
   */
  readonly trackEnds?: 'stated' | 'drawn';
  /** Drawn from 12 to 30 C by default. */
  readonly celsius?: number;
  /** Guitars with the same word here are read with meters that look alike: printed accuracy, leads and limit. Drawn by default. */
  readonly meter?: string;
}

export interface SimulatedGuitar {
  /** What the owner knows of the meter. */
  readonly meter: Meter;
  /** What nobody at the bench knows. */
  readonly truth: {
    readonly circuit: Circuit;
    readonly edits: readonly Edit[];
    readonly celsius: number;
    readonly beepsBelow: number;
  };
  /** Takes one reading. The same ask asked again is a new reading: noise is new, and a slip comes back half the time. */
  answer(ask: Ask): Seen;
  /** Solves the settings of these asks in one run of the simulator; the answers are the same without. */
  prepare(asks: readonly Ask[]): void;
  /** The slip made in each answer so far, `undefined` where there was none. */
  readonly slips: readonly (Slip | undefined)[];
}

/**
 * A guitar with faults, its owner and their meter, for measuring how well a diagnosis does. Readings come from a
 * circuit simulator and never from this project's own solver. The same seed gives the same guitar, and an answer
 * depends on the seed, the ask and how often it was asked before, not on what else was asked: two ways of choosing
 * readings can be compared on the very same guitar.
 */
export function simulate(
  intended: Circuit,
  edits: readonly Edit[],
  seed: number | string,
  options: SimulationOptions = {},
): SimulatedGuitar {
  const { wrongEntries = 0, fingers = 0, finds = 0.7, knobDeviation = 0.15 } = options;
  const make = new Dice(`${seed} make`);
  const celsius = options.celsius ?? make.between(...benchCelsius);
  const own = new Dice(`${seed} meter`);
  const meter =
    options.meter === undefined
      ? new SimulatedMeter(own)
      : new SimulatedMeter(new Dice(`meter ${options.meter}`), own);
  const circuit = realCircuit(intended, celsius, make);
  const endOhms = options.trackEnds !== 'stated' ? drawnEnds(circuit, make) : {};
  const bench = new Bench(circuit, edits, `${seed}`, { knobDeviation, endOhms });
  const hands: Hands = { bench, meter, fingers, windings: make.chance(0.5) ? 1 : -1 };
  const asked = new Map<string, number>();
  const slips: (Slip | undefined)[] = [];

  const look = (ask: Ask, dice: Dice): Seen => {
    switch (ask.kind) {
      case 'ohms':
        return readOhms(hands, ask, dice);
      case 'beep':
        return readBeep(hands, ask);
      case 'turn':
        return readTurn(hands, ask, dice);
      case 'flex':
        return readFlex(hands, ask, dice);
      case 'tap':
        return readTap(hands, ask, dice);
      case 'farads':
        return readFarads(hands, ask, dice);
      case 'listen':
        return readListen(intended, bench, ask.setting, dice);
      case 'hum':
        return readHum(bench, ask, dice);
      case 'touch':
        return readTouch(bench, ask, dice);
      case 'look':
        return readLook(bench, ask, finds, dice);
      case 'pole':
        return readPole(bench, ask, dice);
    }
  };

  return {
    meter: meter.known,
    truth: { circuit, edits, celsius, beepsBelow: meter.beepsBelow },
    slips,
    prepare: (asks) =>
      bench.prepare(
        asks.flatMap(({ kind, setting }) => (kind === 'ohms' || kind === 'flex' ? [setting] : [])),
      ),
    answer(ask) {
      const key = canonical(ask);
      const before = asked.get(key) ?? 0;
      asked.set(key, before + 1);
      const now = `${seed} ${key} ${before}`;
      // A habit of the first time (the wrong lug, the lever elsewhere) comes back in half of the repeats.
      const again = before > 0 && new Dice(`${now} again`).chance(0.5);
      const slipDice = new Dice(`${seed} ${key} ${again ? 0 : before} slip`);
      const slip = drawSlip(wrongEntries, slipDice);
      slips.push(slip);
      const seen = look(misdone(circuit, ask, slip, slipDice), new Dice(now));
      return mistyped(seen, slip, slipDice);
    },
  };
}

function drawnEnds(circuit: Circuit, dice: Dice): Record<string, number> {
  return Object.fromEntries(
    circuit.parts.flatMap((part) => (part.kind === 'pot' ? [[part.id, 100 ** dice.throw()]] : [])),
  );
}
