import { isDeepStrictEqual } from 'node:util';
import { startingWirings } from '../../../src/circuit/catalog/index.ts';
import { ohms } from '../../../src/circuit/units.ts';
import { assess } from '../../../src/diagnosis/assess.ts';
import type { Evidence } from '../../../src/diagnosis/assessment.ts';
import { likelyAnswers } from '../../../src/diagnosis/foresee.ts';
import type { Reading, Seen } from '../../../src/readings/reading.ts';
import { ANSWERS } from '../../../src/worker/look-ahead.ts';
import { simulate } from '../../simulated/index.ts';
import { timed } from './processor-time.ts';

/** The guitars of other wirings with each a lead that is off at one end; open, so that every lug is in reach. */
const WIRINGS = 8;
const MOST_READINGS = 10;

/** One step of a hunt. */
interface Step {
  /** Processor time from the entry to the next reading to ask, milliseconds. */
  readonly ms: number;
  /** Whether this very answer is among those that the engine works out while the probes are set. */
  readonly foreseen: boolean;
}

/** Every step of whole hunts on guitars that a circuit simulator plays. */
export function stepsInNode(): readonly Step[] {
  const every = Math.floor(startingWirings.length / WIRINGS);
  return startingWirings
    .filter((_, at) => at % every === 0)
    .flatMap(({ id, build }) => {
      const circuit = build();
      const wires = circuit.leads.filter(({ kind }) => kind === 'wire');
      const site = `${wires[Math.floor(wires.length / 2)]!.id}@to`;
      const guitar = simulate(circuit, [{ op: 'open', site }], `step ${id}`);
      const readings: Reading[] = [];
      const evidence = (): Evidence => ({
        circuit,
        meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
        access: 'open',
        readings: [...readings],
        refused: [],
        repairs: [],
      });
      const steps: Step[] = [];
      // The opening of a wiring is the figure of `compile`.
      let { next, verdict } = assess(evidence());
      while (!verdict && next[0] && readings.length < MOST_READINGS) {
        const { ask } = next[0];
        const at = new Date(Date.UTC(2026, 0, 1, 0, readings.length)).toISOString();
        const seen = guitar.answer(ask) as Seen;
        const foreseen = likelyAnswers(evidence(), ask, ANSWERS).some((likely) =>
          isDeepStrictEqual(likely, seen),
        );
        readings.push({ id: `r${readings.length}`, ask, seen, at, round: 0 });
        const step = timed(() => assess(evidence()));
        ({ next, verdict } = step.value);
        steps.push({ ms: step.ms, foreseen });
      }
      return steps;
    });
}
