import type { Setting } from '../circuit/circuit.ts';
import { inRoom } from '../circuit/in-room.ts';
import { type Layout, layoutOf } from '../circuit/netlist.ts';
import { likeness, predict } from '../readings/index.ts';
import type { Instrument } from '../readings/level.ts';
import { Outlines } from '../readings/outline.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import { type Unknowns, unknownsOf } from '../readings/unknowns.ts';
import { View } from '../readings/view.ts';
import { askKey } from './ask-key.ts';
import type { Hypothesis } from './hypothesis.ts';

/** How many guitars, and settings of each, are kept solved; a solved setting takes a few kilobytes. */
const KEPT_GUITARS = 1500;
const KEPT_SETTINGS = 40;
/** How many guitars' outlines are kept; one takes a few kilobytes over all its settings. */
const KEPT_OUTLINES = 4000;

/** What one class of hypotheses predicts for one ask: most faults predict for most asks what a healthy guitar shows. */
export interface Foretold {
  /** Unique over all asks. */
  readonly id: number;
  readonly predictions: readonly Prediction[];
  /** Variance of each level before any reading, noise included; 0 for the rest. */
  readonly variances: readonly number[];
}

interface Table {
  readonly classes: Map<string, Foretold>;
  /** By the name that guitars share where nothing between the probes tells them apart. */
  readonly likes: Map<string, Foretold>;
  /** By the index of a hypothesis: single ones come first and are asked for again and again, pairs have large numbers. */
  readonly ofFirst: (Foretold | undefined)[];
  readonly ofRest: Map<number, Foretold>;
}

/** Indices below this are kept in a plain list, which takes less room and time than a map. */
const FIRST = 4096;

function keep({ ofFirst, ofRest }: Table, index: number, foretold: Foretold): Foretold {
  if (index < FIRST) ofFirst[index] = foretold;
  else ofRest.set(index, foretold);
  return foretold;
}

/** Predictions of hypotheses for asks, worked out once: the same readings are scored and weighed after every new one. */
export class Predictor {
  /** The guitar as it was told: printed values, and what was measured. */
  readonly stated: Layout;
  /** The guitar as it should be in the meter's room. */
  readonly layout: Layout;
  readonly meter: Meter;
  readonly unknowns: Unknowns;
  private readonly tables = new Map<string, Table>();
  private readonly views = new Map<Hypothesis, View>();
  private readonly drawn = new Map<number, Outlines>();
  /** By the size of a hypothesis' own fault. */
  private readonly spreads = new Map<number, Float64Array>();
  private foretold = 0;

  /** `unknowns` as its parts have them, unless more or less is known of these parts. */
  constructor(layout: Layout, meter: Meter, unknowns?: Unknowns) {
    this.stated = layout;
    this.layout = layoutOf(inRoom(layout.circuit, meter.room));
    this.meter = meter;
    this.unknowns = unknowns ?? unknownsOf(this.layout, meter);
  }

  /** Standard deviations of the unknowns of one hypothesis; the last is the size of its own fault. Not to be written to. */
  deviations({ loose }: Hypothesis): Float64Array {
    const last = loose?.deviation ?? 0;
    const known = this.spreads.get(last);
    if (known) return known;
    const own = Float64Array.from([...this.unknowns.list.map(({ deviation }) => deviation), last]);
    this.spreads.set(last, own);
    return own;
  }

  /** What this hypothesis predicts; the same object for all that predict the same. */
  foretell(hypothesis: Hypothesis, ask: Ask, key = askKey(ask)): Foretold {
    let table = this.tables.get(key);
    if (!table) {
      table = { classes: new Map(), likes: new Map(), ofFirst: [], ofRest: new Map() };
      this.tables.set(key, table);
    }
    const { index } = hypothesis;
    const known = index < FIRST ? table.ofFirst[index] : table.ofRest.get(index);
    if (known) return known;
    const like = likeness(this.outlines(hypothesis), ask);
    const alike = like === null ? undefined : table.likes.get(like);
    if (alike) return keep(table, index, alike);
    const predictions = predict(
      this.view(hypothesis, ask.setting),
      ask,
      this.instrument(hypothesis),
    );
    const name = predictions.map((one) => nameOf(one, hypothesis.loose?.deviation ?? 0)).join(';');
    let found = table.classes.get(name);
    if (!found) {
      const deviations = this.deviations(hypothesis);
      found = {
        id: this.foretold,
        predictions,
        variances: predictions.map((one) =>
          one.type === 'level' ? varianceOf(one, deviations) : 0,
        ),
      };
      this.foretold += 1;
      table.classes.set(name, found);
    }
    if (like !== null) table.likes.set(like, found);
    return keep(table, index, found);
  }

  predict(hypothesis: Hypothesis, ask: Ask): readonly Prediction[] {
    return this.foretell(hypothesis, ask).predictions;
  }

  private instrument(hypothesis: Hypothesis): Instrument {
    return {
      meter: this.meter,
      unknowns: this.unknowns,
      ...(hypothesis.loose ? { loose: hypothesis.loose } : {}),
    };
  }

  private outlines({ index, edits, loose }: Hypothesis): Outlines {
    const known = this.drawn.get(index);
    if (known) return known;
    const made = new Outlines(this.layout, edits, loose);
    if (this.drawn.size >= KEPT_OUTLINES) this.drawn.clear();
    this.drawn.set(index, made);
    return made;
  }

  private view(hypothesis: Hypothesis, setting: Setting): View {
    // With the plug in nothing is probed: the guitar is heard once in this setting.
    if (setting.plug === 'in') return new View(this.layout, setting, hypothesis.edits);
    const known = this.views.get(hypothesis);
    if (known && known.remembered < KEPT_SETTINGS) return known.in(setting);
    const view = new View(this.layout, setting, hypothesis.edits);
    if (this.views.size >= KEPT_GUITARS) this.views.clear();
    this.views.set(hypothesis, view);
    return view;
  }
}

/** Variance of ln(shown) before any reading, noise included. */
export function varianceOf(
  prediction: Extract<Prediction, { type: 'level' }>,
  deviations: Float64Array,
): number {
  let variance = prediction.noise ** 2;
  for (let at = 0; at < deviations.length; at += 1)
    variance += ((prediction.slopes[at] as number) * (deviations[at] as number)) ** 2;
  return variance;
}

/** One number for the slopes on all shared unknowns, so that equal sums are equal slopes but for a chance in some millions. */
function mixed(slopes: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < slopes.length - 1; at += 1)
    sum += (slopes[at] as number) * Math.sin(at + 1);
  return sum;
}

/** Equal names for predictions that no reading could part. */
function nameOf(prediction: Prediction, loose: number): string {
  switch (prediction.type) {
    case 'level':
      // The same figure may be that of another part with the same printed value.
      return `${Math.round(prediction.mean * 1e7)},${Math.round(1e6 * mixed(prediction.slopes))},${Math.round((prediction.slopes.at(-1) as number) * loose * 1e3)}`;
    case 'over':
      return 'over';
    case 'threshold':
      return `t${prediction.ohms.toPrecision(6)}`;
    case 'choice':
      return JSON.stringify(prediction, (_, value) =>
        typeof value === 'number' ? Math.round(value * 1e4) : value,
      );
  }
}
