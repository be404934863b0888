import { switchSettings } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import type { Evidence } from '../../src/diagnosis/assessment.ts';
import { suspectsOf } from '../../src/faults/index.ts';
import { percentile, rounded } from './made/percentile.ts';
import { timed } from './made/processor-time.ts';
import { sizedWiring } from './made/sized-wiring.ts';

const SIZES = [20, 40, 80, 120] as const;
const RUNS = 3;

/**
 * From a wiring that was never seen to what the screen shows first (all single faults, the next reading), and on to the answer after a
 * first odd reading (their pairs as well), by number of lugs; the exponent is the slope of ln(time) over ln(lugs).
 */
export function run() {
  // What is compiled once for all wirings by the machine below is not what is meant.
  assess(evidence(20, 'warm-up', true));
  const rows = SIZES.map((lugs) => {
    const times = Array.from({ length: RUNS }, (_, at) => {
      const single = timed(() => assess(evidence(lugs, `run ${at}`, false)));
      const double = timed(() => assess(evidence(lugs, `run ${at}`, true)));
      return [single.ms, double.ms] as const;
    });
    const circuit = sizedWiring(lugs, 'bench');
    return {
      lugs,
      switchStates: switchSettings(circuit).length,
      suspects: suspectsOf(circuit).length,
      publishMs: rounded(
        percentile(
          times.map(([single]) => single),
          0.5,
        ),
      ),
      withDoublesMs: rounded(
        percentile(
          times.map(([single, double]) => single + double),
          0.5,
        ),
      ),
    };
  });
  return {
    compileExponent: rounded(slope(rows.map(({ lugs, withDoublesMs }) => [lugs, withDoublesMs]))),
    compile: rows,
  };
}

function evidence(lugs: number, title: string, odd: boolean): Evidence {
  // Another title is another wiring to the engine.
  const circuit = { ...sizedWiring(lugs, 'bench'), title };
  const [setting] = switchSettings(circuit);
  const ask = { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting: setting! } as const;
  const reading = {
    id: 'r1',
    ask,
    seen: { kind: 'ohms', ohms: 'open' },
    at: '2026-01-01T00:00:00Z',
    round: 0,
  } as const;
  return {
    circuit,
    meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
    access: 'open',
    readings: odd ? [reading] : [],
    refused: [],
    repairs: [],
  };
}

/** Least squares of ln y over ln x. */
function slope(points: readonly (readonly [number, number])[]): number {
  const [xs, ys] = [0, 1].map((at) => points.map((point) => Math.log(point[at]!))) as [
    number[],
    number[],
  ];
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const top = xs.reduce((sum, x, at) => sum + (x - mx) * (ys[at]! - my), 0);
  return top / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}
