import { startingWirings } from '../circuit/catalog/index.ts';
import type { Circuit, Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { type Layout, layoutOf } from '../circuit/netlist.ts';
import { restingSetting } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { predict } from './index.ts';
import type { Instrument } from './level.ts';
import type { Prediction } from './prediction.ts';
import type { Ask, Meter } from './reading.ts';
import { unknownsOf } from './unknowns.ts';
import { View } from './view.ts';

/** A meter of the trade: 1 %, 0.3 ohm of leads, 20 Mohm range. */
export const meter: Meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

/** One starting wiring, ready to be asked. */
export class Guitar {
  readonly circuit: Circuit;
  readonly layout: Layout;
  readonly instrument: Instrument;

  constructor(id: string, change: (circuit: Circuit) => Circuit = (circuit) => circuit) {
    const wiring = startingWirings.find((one) => one.id === id);
    if (!wiring) throw new RangeError(`there is no starting wiring called ${id}`);
    this.circuit = change(wiring.build());
    this.layout = layoutOf(this.circuit);
    this.instrument = { meter, unknowns: unknownsOf(this.layout, meter) };
  }

  at(position?: string, knobs: Readonly<Record<string, number>> = {}): Setting {
    const rest = restingSetting(this.circuit);
    return {
      ...rest,
      positions:
        position === undefined ? rest.positions : { ...rest.positions, selector: position },
      knobs: { ...rest.knobs, ...knobs },
    };
  }

  view(setting: Setting, edits: readonly Edit[] = []): View {
    return new View(this.layout, setting, edits);
  }

  predict(ask: Ask, edits: readonly Edit[] = []): readonly Prediction[] {
    return predict(this.view(ask.setting, edits), ask, this.instrument);
  }

  /** Ohms at the jack as the meter shows them, or "over". */
  jack(setting: Setting, edits: readonly Edit[] = []): number | 'over' {
    const [one] = this.predict(
      { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting },
      edits,
    );
    return one?.type === 'level' ? one.ohms : 'over';
  }

  /** The chances of the first part of what is predicted. */
  chances(ask: Ask, edits: readonly Edit[] = []): Readonly<Record<string, number>> {
    const [one] = this.predict(ask, edits);
    if (one?.type !== 'choice') throw new Error(`expected words, got ${one?.type}`);
    return one.chances;
  }
}

export const parallel = (...values: readonly number[]): number =>
  1 / values.reduce((sum, value) => sum + 1 / value, 0);
