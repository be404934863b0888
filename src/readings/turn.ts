import type { Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { partTitle } from '../circuit/names.ts';
import { nodeAt } from '../circuit/netlist.ts';
import type { PartId, Pot } from '../circuit/parts/part.ts';
import { knobAt, offTrack, trackShare } from '../circuit/parts/pot.ts';
import { withKnob } from '../circuit/setting.ts';
import type { DcSolution } from '../solver/index.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { levelOf, logShown } from './level.ts';
import type { Ask } from './reading.ts';
import { ohmsText, probesText } from './words.ts';

/** Knob figures looked at first: the ends, and half a track of a reverse audio (3), a linear (5) and an audio taper (7), where a wiper's peak lies; of a left-handed one the same. */
const STEPS = [0, 3, 5, 7, 10];

interface Step {
  readonly dc: DcSolution;
  readonly a: number;
  readonly b: number;
  readonly figure: number;
  readonly ohms: number;
}

/** Places of the wiper are looked for in so many parts of the track: (2 / 256)^2 of the peak is far below what a meter shows, and rounding cannot move it. */
const GRAIN = 256;

/**
 * The step at the peak, sought by parabolas between the steps beside the highest one. Ohms past a wiper go with x (T + R - x) / (T + R), a
 * parabola in the wiper's place x on the track T with R behind it: one look is enough there, others take two or three.
 */
function peakOf(pot: Pot, steps: readonly Step[], at: (figure: number) => Step): Step {
  const known = [...steps];
  for (let look = 0; ; look += 1) {
    const highest = known.reduce(
      (so, step, place) => (step.ohms > (known[so] as Step).ohms ? place : so),
      0,
    );
    const share = look < 3 ? vertexOf(pot, known, highest) : null;
    const figure = share === null ? null : knobAt(pot, share);
    if (figure === null || known.some((step) => Math.abs(step.figure - figure) < 1e-9))
      return known[highest] as Step;
    known.push(at(figure));
    known.sort((x, y) => x.figure - y.figure);
  }
}

/** The wiper's place at the top of a parabola through the highest step and its neighbours, or null where none stands out. */
function vertexOf(pot: Pot, steps: readonly Step[], highest: number): number | null {
  const three = [steps[highest - 1], steps[highest], steps[highest + 1]];
  const [x0 = Number.NaN, x1 = Number.NaN, x2 = Number.NaN] = three.map((step) =>
    step ? trackShare(pot, step.figure) : Number.NaN,
  );
  const [y0 = Number.NaN, y1 = Number.NaN, y2 = Number.NaN] = three.map((step) =>
    step ? step.ohms : Number.NaN,
  );
  const [before, after] = [(y1 - y0) / (x1 - x0), (y2 - y1) / (x2 - x1)];
  const bend = (after - before) / (x2 - x0);
  if (!(bend < 0)) return null;
  const share = Math.round(GRAIN * ((x0 + x1) / 2 - before / (2 * bend))) / GRAIN;
  return (share - x0) * (share - x2) < 0 ? share : null;
}

type TurnAsk = Extract<Ask, { kind: 'turn' }>;
const sweeps = new WeakMap<TurnAsk, readonly Setting[]>();

/** The settings looked at first; the same ask is put to thousands of suspects. */
function sweepOf(ask: TurnAsk): readonly Setting[] {
  const known = sweeps.get(ask) ?? STEPS.map((figure) => withKnob(ask.setting, ask.pot, figure));
  sweeps.set(ask, known);
  return known;
}

const isWorn = (edits: readonly Edit[], pot: PartId): boolean =>
  edits.some((edit) => edit.op === 'worn' && edit.part === pot);

/** Ohms while a knob goes from 0 to 10: whether it moves, jumps or stays, and its peak ((Rpot + Rpickup)/4 for a volume whose wiper is the output). */
export const turnReading: ReadingKind<'turn'> = {
  predict(view, ask, instrument) {
    const at = (figure: number): Step => {
      const { dc } = view.in(withKnob(view.setting, ask.pot, figure));
      const [a, b] = [nodeAt(view.layout, ask.red), nodeAt(view.layout, ask.black)];
      return { dc, a, b, figure, ohms: dc.resistance(a, b) };
    };
    const steps = STEPS.map(at);
    // Where a no-load pot leaves its track the figure ends, which is no jump.
    const part = view.layout.parts.get(ask.pot);
    const onTrack = steps.filter(({ figure }) => !(part?.kind === 'pot' && offTrack(part, figure)));
    const gaps = onTrack.some((step) => step.ohms > instrument.meter.limit);
    const finite = steps.filter((step) => step.ohms <= instrument.meter.limit);
    const [low, high] = [
      Math.min(...steps.map((s) => s.ohms)),
      Math.max(...finite.map((s) => s.ohms)),
    ];
    const moves =
      finite.length > 0 && (finite.length < steps.length || high + 1 > 1.15 * (low + 1));
    const worn = isWorn(view.edits, ask.pot);
    const chances = !moves
      ? { smooth: 0.03, jumps: 0.03, stuck: 0.94 }
      : worn || (gaps && finite.length > 0)
        ? { smooth: 0.15, jumps: 0.8, stuck: 0.05 }
        : { smooth: 0.95, jumps: 0.03, stuck: 0.02 };
    const highest = finite.find((step) => step.ohms === high);
    if (!highest || finite.length < steps.length || part?.kind !== 'pot')
      return [{ type: 'choice', chances }, { type: 'over' }];
    const peak = peakOf(part, steps, at);
    return [{ type: 'choice', chances }, levelOf(peak.dc, peak.ohms, peak.a, peak.b, instrument)];
  },
  like: (guitar, ask) =>
    sweepOf(ask).reduce(
      (name, setting) => `${name},${guitar.in(setting).between(ask.red, ask.black)}`,
      `${isWorn(guitar.edits, ask.pot)}`,
    ),
  observe: (seen) => [
    { type: 'choice', word: seen.how },
    seen.peak === undefined
      ? undefined
      : seen.peak === 'open'
        ? { type: 'over' }
        : { type: 'level', value: logShown(seen.peak) },
  ],
  askText: (layout, ask) =>
    readingWords().turnThePartSlowlyFrom0To(
      partTitle(layout, ask.pot),
      probesText(layout, ask.red, ask.black),
    ),
  seenText: (seen) =>
    seen.peak === undefined
      ? readingWords().turn[seen.how]
      : readingWords().highest(readingWords().turn[seen.how], ohmsText(seen.peak)),
};
