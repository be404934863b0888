import { startingWirings } from '../../../src/circuit/catalog/index.ts';
import { ohms } from '../../../src/circuit/units.ts';
import { assess } from '../../../src/diagnosis/assess.ts';
import type { Evidence } from '../../../src/diagnosis/assessment.ts';
import type { Reading } from '../../../src/readings/reading.ts';
import { simulate } from '../../simulated/index.ts';
import { timed } from './processor-time.ts';

/** The guitars of other wirings with each a lead that is off at one end; open, so that every lug is in reach. */
const WIRINGS = 8;
const MOST_READINGS = 10;

/** Milliseconds of processor time from each entry to the next reading to ask, in whole hunts on guitars that a circuit simulator plays. */
export function stepsInNode(): readonly number[] {
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
      const steps: number[] = [];
      // The opening of a wiring is the figure of `compile`.
      let { next, verdict } = assess(evidence());
      while (!verdict && next[0] && readings.length < MOST_READINGS) {
        const { ask } = next[0];
        const at = new Date(Date.UTC(2026, 0, 1, 0, readings.length)).toISOString();
        readings.push({
          id: `r${readings.length}`,
          ask,
          seen: guitar.answer(ask),
          at,
          round: 0,
        } as Reading);
        const step = timed(() => assess(evidence()));
        ({ next, verdict } = step.value);
        steps.push(step.ms);
      }
      return steps;
    });
}
