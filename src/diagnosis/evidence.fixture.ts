import { startingWirings } from '../circuit/catalog/index.ts';
import type { Circuit, Setting } from '../circuit/circuit.ts';
import type { Edit, NodeName } from '../circuit/edit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { restingSetting } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { predict } from '../readings/index.ts';
import type { Ask, Meter, Reading, Seen } from '../readings/reading.ts';
import { View } from '../readings/view.ts';
import type { Evidence } from './assessment.ts';
import { type Hypothesis, singleHypotheses } from './hypothesis.ts';
import { Predictor } from './predictor.ts';

export const meter: Meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

/** One starting wiring with its engine's insides, and readings in few words. */
export class Bench {
  readonly circuit: Circuit;
  readonly predictor: Predictor;
  readonly singles: readonly Hypothesis[];
  private count = 0;

  constructor(id: string) {
    const wiring = startingWirings.find((one) => one.id === id);
    if (!wiring) throw new RangeError(`there is no starting wiring called ${id}`);
    this.circuit = wiring.build();
    const layout = layoutOf(this.circuit);
    this.predictor = new Predictor(layout, meter);
    this.singles = singleHypotheses(layout);
  }

  at(
    position?: string,
    knobs: Readonly<Record<string, number>> = {},
    lifted: readonly string[] = [],
  ): Setting {
    const rest = restingSetting(this.circuit);
    return {
      ...rest,
      positions:
        position === undefined ? rest.positions : { ...rest.positions, selector: position },
      knobs: { ...rest.knobs, ...knobs },
      lifted,
    };
  }

  reading(ask: Ask, seen: Seen, round = 0): Reading {
    this.count += 1;
    return { id: `r${this.count}`, ask, seen, at: '2026-01-01T00:00:00Z', round };
  }

  ohms(
    value: number | 'open',
    setting: Setting,
    red: NodeName = 'jack.tip',
    black: NodeName = 'jack.sleeve',
    round = 0,
  ): Reading {
    return this.reading(
      { kind: 'ohms', red, black, setting },
      { kind: 'ohms', ohms: value === 'open' ? value : ohms(value) },
      round,
    );
  }

  /** What a guitar with these edits and parts of just their printed values shows. */
  true(
    edits: readonly Edit[],
    setting: Setting,
    red: NodeName = 'jack.tip',
    black: NodeName = 'jack.sleeve',
    round = 0,
  ): Reading {
    const [one] = predict(
      new View(this.predictor.layout, setting, edits),
      { kind: 'ohms', red, black, setting },
      { meter, unknowns: this.predictor.unknowns },
    );
    return this.ohms(one?.type === 'level' ? one.ohms : 'open', setting, red, black, round);
  }

  /** What a guitar with these edits most likely shows for any ask. */
  answer(edits: readonly Edit[], ask: Ask): Reading {
    if (ask.kind === 'ohms') return this.true(edits, ask.setting, ask.red, ask.black);
    const parts = predict(new View(this.predictor.layout, ask.setting, edits), ask, {
      meter,
      unknowns: this.predictor.unknowns,
    });
    const [first, second] = parts;
    const word =
      first?.type === 'choice'
        ? (Object.entries(first.chances).sort((x, y) => y[1] - x[1])[0]?.[0] ?? '')
        : '';
    // The one place where a word is trusted to belong to its kind: the prediction lists that kind's words.
    const seen = {
      beep: () => ({ beeps: first?.type === 'threshold' && first.ohms < 50 }),
      turn: () => ({ how: word, peak: second?.type === 'level' ? second.ohms : 'open' }),
      flex: () => ({ how: word }),
      look: () => ({ how: word }),
      tap: () => ({ swing: word }),
      farads: () => ({
        farads: word === 'value' && second?.type === 'level' ? Math.exp(second.mean) * 1e-12 : word,
      }),
      listen: () => ({ heard: word }),
      touch: () => ({ hum: word }),
      hum: () => ({ decibels: Number(word) }),
      pole: () => ({ pole: word }),
    }[ask.kind]();
    return this.reading(ask, { kind: ask.kind, ...seen } as Seen);
  }

  evidence(readings: readonly Reading[], more: Partial<Evidence> = {}): Evidence {
    return {
      circuit: this.circuit,
      meter,
      access: 'open',
      readings,
      refused: [],
      repairs: [],
      ...more,
    };
  }

  hypothesis(fault: string): Hypothesis {
    const found = this.singles.find(({ faults }) => faults[0]?.id === fault);
    if (!found) throw new RangeError(`there is no fault called ${fault}`);
    return found;
  }
}
