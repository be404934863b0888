import { useMemo } from 'preact/hooks';
import type { Curve, Trial } from '../../diagnosis/trial.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { MARK, PLOT, type Point } from './chart-plot.ts';
import { FamilyFigures } from './family-figures.tsx';
import { COPPER, INK, LINE, PAPER, SOFT, STROKE, TEXT } from './theme.ts';

interface ResponseChartProps {
  readonly trial: Trial;
  /** In words what the curves show, for who cannot see them. */
  readonly label: string;
}

const WIDTH = 360;
const HEIGHT = 270;
const HERTZ = { low: 50, high: 12_000 };
const LINES = [50, 100, 200, 500, 1000, 2000, 5000, 10_000];
const NAMED = new Map([
  [100, '100'],
  [500, '500'],
  [1000, '1k'],
  [5000, '5k'],
  [10_000, '10k'],
]);
/** Decibels shown: never less than this, so that a small change looks small; never more, so that it can be seen. */
const SPAN = { least: 30, most: 60 };
/** Every how many decibels a line is drawn. */
const STEP = 10;
/** A thin line of a sweep has every how many points of a curve: one in three CSS pixels on a phone. */
const THIN = 2;

const across = (hertz: number): number =>
  PLOT.left +
  ((PLOT.right - PLOT.left) * Math.log(hertz / HERTZ.low)) / Math.log(HERTZ.high / HERTZ.low);

/** Tenths of a unit of the drawing are less than a pixel. */
const tenth = (value: number): number => Math.round(10 * value) / 10;

/** The points of a curve that lie in the plot. While a knob is dragged a dozen curves are drawn anew each frame, so this is done once. */
function pointsOf(hertz: Float64Array): readonly Point[] {
  const points: Point[] = [];
  hertz.forEach((frequency, index) => {
    if (frequency >= HERTZ.low && frequency <= HERTZ.high)
      points.push({ index, x: tenth(across(frequency)) });
  });
  return points;
}

/** Decibels over hertz, both axes as the ear has them: the wiring as it is dashed and round, the tried one solid and square, a sweep in thin lines. */
export function ResponseChart({ trial, label }: ResponseChartProps) {
  const { hertz, before, after, family } = trial;
  const range = rangeOf([before, after, ...family.map(({ curve }) => curve)], hertz);
  const down = (decibels: number): number =>
    PLOT.top + ((PLOT.bottom - PLOT.top) * (range.high - decibels)) / (range.high - range.low);
  const shown = pointsOf(hertz);
  const path = ({ decibels }: Curve, every = 1): string => {
    let d = '';
    for (let at = 0; at < shown.length; at += every) {
      const { index, x } = shown[at] as Point;
      d += `${at === 0 ? 'M' : 'L'}${x} ${tenth(down(decibels[index] as number))}`;
    }
    return d;
  };
  const isBelow = ({ decibels }: Curve) =>
    shown.every(({ index }) => (decibels[index] as number) < range.low);
  const [was, is] = [isBelow(before), isBelow(after)];
  const silent =
    was && is
      ? drawingWords().bothBelowTheChart
      : was
        ? drawingWords().asItIsBelowTheChart
        : is
          ? drawingWords().triedBelowTheChart
          : null;
  // The grid moves only where the range does.
  const axes = useMemo(() => <Axes range={range} down={down} />, [range.low, range.high]);
  return (
    <svg class="chart" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {axes}
      {/* A window of its own cuts off what runs out of the plot. */}
      <svg
        x={PLOT.left}
        y={PLOT.top}
        width={PLOT.right - PLOT.left}
        height={PLOT.bottom - PLOT.top}
        viewBox={`${PLOT.left} ${PLOT.top} ${PLOT.right - PLOT.left} ${PLOT.bottom - PLOT.top}`}
        aria-hidden="true"
      >
        {/* One shape: each one more would be laid out and painted by itself in every frame of a drag. */}
        {family.length > 0 && (
          <path
            d={family.map(({ curve }) => path(curve, THIN)).join('')}
            fill="none"
            stroke={SOFT}
            stroke-width={STROKE.hair}
          />
        )}
        <path d={path(before)} fill="none" stroke={INK} stroke-width="2" stroke-dasharray="7 5" />
        <path d={path(after)} fill="none" stroke={COPPER} stroke-width={STROKE.strong} />
        <FamilyFigures family={family} shown={shown} down={down} />
        <Marks curve={before} down={down} shape="round" />
        <Marks curve={after} down={down} shape="square" />
      </svg>
      {silent && (
        <text
          x={PLOT.left + 8}
          y={PLOT.bottom - 8}
          fill={INK}
          stroke={PAPER}
          stroke-width="4"
          paint-order="stroke"
          font-size={TEXT.note}
        >
          {silent}
        </text>
      )}
    </svg>
  );
}

interface Range {
  readonly low: number;
  readonly high: number;
}

function rangeOf(curves: readonly Curve[], hertz: Float64Array): Range {
  const ends = curves.map(({ decibels }) => {
    let [most, least] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let at = 0; at < hertz.length; at++) {
      const frequency = hertz[at] as number;
      if (frequency < HERTZ.low || frequency > HERTZ.high) continue;
      most = Math.max(most, decibels[at] as number);
      least = Math.min(least, decibels[at] as number);
    }
    return { most, least };
  });
  const top = Math.max(...ends.map(({ most }) => most));
  // A curve that is silent beside the others would press them into the upper half.
  const seen = ends.filter(({ most }) => most > top - SPAN.most);
  const high = STEP * Math.ceil((top + 1) / STEP);
  const lowest = STEP * Math.floor((Math.min(...seen.map(({ least }) => least)) - 1) / STEP);
  return { high, low: Math.max(high - SPAN.most, Math.min(high - SPAN.least, lowest)) };
}

function Axes({ range, down }: { range: Range; down(decibels: number): number }) {
  const levels = Array.from(
    { length: Math.round((range.high - range.low) / STEP) + 1 },
    (_, at) => range.low + STEP * at,
  );
  return (
    <>
      <g stroke={LINE} stroke-width="1">
        {LINES.map((hertz) => (
          <line key={hertz} x1={across(hertz)} x2={across(hertz)} y1={PLOT.top} y2={PLOT.bottom} />
        ))}
        {levels.map((level) => (
          <line
            key={level}
            x1={PLOT.left}
            x2={PLOT.right}
            y1={down(level)}
            y2={down(level)}
            stroke={level === 0 ? SOFT : LINE}
          />
        ))}
      </g>
      <g fill={SOFT} font-size={TEXT.lug}>
        {[...NAMED].map(([hertz, name]) => (
          <text key={hertz} x={across(hertz)} y={PLOT.bottom + 16} text-anchor="middle">
            {name}
          </text>
        ))}
        <text x={PLOT.right} y={HEIGHT - 2} text-anchor="end">
          {drawingWords().hz}
        </text>
        {levels.slice(1).map((level) => (
          <text key={level} x={PLOT.left - 5} y={down(level) + 5} text-anchor="end">
            {level > 0 ? `+${level}` : String(level).replace('-', '−')}
          </text>
        ))}
        <text x={PLOT.left - 5} y={PLOT.bottom + 4} text-anchor="end">
          {drawingWords().dB}
        </text>
      </g>
    </>
  );
}

interface MarksProps {
  readonly curve: Curve;
  readonly shape: 'round' | 'square';
  down(decibels: number): number;
}

/** The resonance as a large mark, the low end as a small one on the axis. */
function Marks({ curve, shape, down }: MarksProps) {
  const mark = (x: number, y: number, size: number) =>
    shape === 'round' ? (
      <circle cx={x} cy={y} r={size} fill={PAPER} stroke={INK} stroke-width="2" />
    ) : (
      <rect
        x={x - size}
        y={y - size}
        width={2 * size}
        height={2 * size}
        fill={COPPER}
        stroke={PAPER}
        stroke-width="1"
      />
    );
  return (
    <>
      {mark(across(200), down(curve.level), MARK - 2.5)}
      {curve.resonance &&
        curve.resonance.hertz <= HERTZ.high &&
        mark(across(curve.resonance.hertz), down(curve.resonance.decibels), MARK)}
    </>
  );
}

/** The key: each line with its mark. */
export const ChartKey = ({ sweep }: { sweep: string | undefined }) => (
  <p class="chart-key">
    <span>
      <ChartSample of="before" /> {drawingWords().asItIs}
    </span>
    <span>
      <ChartSample of="after" /> {drawingWords().tried}
    </span>
    {sweep !== undefined && (
      <span>
        <ChartSample of="sweep" /> {sweep}
      </span>
    )}
  </p>
);

const ChartSample = ({ of }: { of: 'before' | 'after' | 'sweep' }) => (
  <svg class="chart-sample" viewBox="0 0 44 16" aria-hidden="true">
    <line
      x1="1"
      x2="43"
      y1="8"
      y2="8"
      stroke={of === 'before' ? INK : of === 'after' ? COPPER : SOFT}
      stroke-width={of === 'before' ? 2 : of === 'after' ? STROKE.strong : STROKE.hair}
      stroke-dasharray={of === 'before' ? '7 5' : undefined}
    />
    {of === 'before' && <circle cx="22" cy="8" r="5" fill={PAPER} stroke={INK} stroke-width="2" />}
    {of === 'after' && <rect x="17" y="3" width="10" height="10" fill={COPPER} />}
  </svg>
);
