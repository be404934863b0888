import { layoutOf } from '../../src/circuit/netlist.ts';
import { restingSetting, withKnob } from '../../src/circuit/setting.ts';
import { usualLoad } from '../../src/readings/audio.ts';
import { logSpaced, type Response, responseOf } from '../../src/readings/response.ts';
import { View } from '../../src/readings/view.ts';
import { lugsOf, type ResponseJob, responses, spiceNetlist, sweepMs } from '../oracle/index.ts';
import { percentile, rounded } from './made/percentile.ts';
import { sizedWiring } from './made/sized-wiring.ts';

const LUGS = 60;
const FREQUENCIES = 300;
const CURVES = 20;
/** Three decades. */
const PER_DECADE = FREQUENCIES / 3;
/** Frequencies at which the curves are held to ngspice's. */
const COMPARED = 12;
const RUNS = 7;
/** Below this, of a coil's own signal, both programs are left with rounding. */
const FLOOR = 1e-6;

/**
 * A knob's sweep as curves of the whole guitar, by ours and by ngspice on the same frequencies. The ratio is ngspice's time by ours: above 1
 * ours is faster. ngspice's share has the writing of its deck and the reading of its results in it.
 */
export function run() {
  const circuit = sizedWiring(LUGS, 'ac');
  const hertz = logSpaced(20, 20_000, FREQUENCIES);
  const rest = { ...restingSetting(circuit), plug: 'in' as const };
  const settings = Array.from({ length: CURVES }, (_, at) =>
    withKnob(rest, 'volume0', (10 * at) / (CURVES - 1)),
  );
  const sweep = (): { curves: Response[]; ms: number } => {
    const layout = layoutOf(circuit);
    const started = performance.now();
    const curves = settings.map((setting) =>
      responseOf(new View(layout, setting, []), hertz, usualLoad),
    );
    return { curves, ms: performance.now() - started };
  };
  const runs = Array.from({ length: RUNS }, sweep);
  const times = runs.map(({ ms }) => ms);
  const oursMs = percentile(times, 0.5);
  const across = ['jack.tip', 'jack.sleeve'] as const;
  const emfs = Object.fromEntries(
    circuit.parts.flatMap((part) =>
      part.kind === 'coil' ? [[part.id, part.winding * part.magnet]] : [],
    ),
  );
  const jobs = settings.map(
    (setting): ResponseJob => ({
      netlist: spiceNetlist(circuit, setting, []),
      across,
      loads: [{ at: across, ...usualLoad }],
      drive: { emfs },
    }),
  );
  // A process a curve, as its matrix grows slow with copies; its own sweep, which is faster than a frequency at a time.
  const ngspiceMs = jobs.reduce((sum, job) => sum + sweepMs([job], PER_DECADE), 0);
  const compared = Array.from({ length: COMPARED }, (_, at) =>
    Math.round((at * (FREQUENCIES - 1)) / (COMPARED - 1)),
  );
  const theirs = responses(
    jobs,
    compared.map((f) => hertz[f]!),
  );
  let worst = 0;
  theirs.forEach(({ real, imaginary }, at) => {
    const mine = runs[0]!.curves[at]!;
    compared.forEach((f, point) => {
      const expected = Math.hypot(real[point]!, imaginary[point]!);
      if (expected < FLOOR) return;
      const size = Math.hypot(mine.real[f]!, mine.imaginary[f]!);
      worst = Math.max(worst, Math.abs(20 * Math.log10(size / expected)));
    });
  });
  return {
    acRatioToNgspice: rounded(ngspiceMs / oursMs),
    ac: {
      lugs: lugsOf(circuit).length,
      frequencies: FREQUENCIES,
      curves: CURVES,
      oursMs: rounded(oursMs),
      oursFirstMs: rounded(times[0]!),
      ngspiceMs: rounded(ngspiceMs),
      worstDecibels: rounded(worst),
    },
  };
}
