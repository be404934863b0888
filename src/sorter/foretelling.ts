import type { NodeName } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { type Foretold, Predictor } from '../diagnosis/predictor.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import type { Unknowns } from '../readings/unknowns.ts';
import type { Candidate } from './candidates.ts';

/** Standard deviation of ln(resistance) from pickup to pickup: half to double in two deviations. */
const SIZE_DEVIATION = 0.36;
/** The same from coil to coil of one pickup, where they are meant to be alike. */
const COIL_DEVIATION = 0.045;

/** Nothing is known of a pickup's size, but its coils share it. */
export function sharedSizes(layout: Layout, meter: Meter): Unknowns {
  const windings = ['a', 'b'].map((coil) => layout.siteIndex.get(`${coil}:winding`) as number);
  const list = [
    { name: 'size of the pickup', deviation: SIZE_DEVIATION, sites: windings },
    ...windings.map((site, at) => ({
      name: layout.sites[site]?.part ?? `coil ${at}`,
      deviation: COIL_DEVIATION,
      sites: [site],
    })),
    { name: "the meter's scale", deviation: meter.accuracy / 2, sites: [] },
    { name: 'probe leads', deviation: 0.5, sites: [] },
  ];
  return { list, gain: list.length - 2, leads: list.length - 1 };
}

/**
 * Steel over one coil moves some flux of its neighbour, too, with either sign. Across the neighbour alone it shows a swing that is far
 * smaller than the neighbour's own. It is asked to compare the two; who forgets to takes it for a swing (share of ours, common
 * practice, no source).
 */
const CROSSTALK = 0.04;

/** One act with its probes, and what it shows by build and by the lugs that the probes reach. */
interface Row {
  /** Place of the probed lead in the order of the leads, or the metal that is probed itself. */
  readonly red: number | NodeName;
  readonly black: number | NodeName;
  readonly shown: Map<number, Foretold>;
  /** The same tap of the other coil. */
  readonly neighbour: Ask | null;
}

/** No pickup has more lugs than these, one of them standing for none. */
const LUGS = 16;

/**
 * Predictions for a pickup on the mat. Its coils' ends are named by their taps, so that a tap's sign has a meaning of its own.
 * A reading depends on the build and on which lugs the probes reach, and on nothing else: it is worked out once for all candidates
 * that share these.
 */
export class PickupPredictor extends Predictor {
  private readonly places: ReadonlyMap<string, number>;
  private readonly rows = new Map<string, Row>();
  private readonly acts = new Map<string, Map<number, Foretold>>();
  private readonly lugs = new Map<NodeName | null, number>([[null, 0]]);
  private readonly tapped = {
    alone: new Map<Foretold, Foretold>(),
    beside: new Map<Foretold, Foretold>(),
  };
  private made = 0;

  constructor(layout: Layout, meter: Meter) {
    super(layout, meter, sharedSizes(layout, meter));
    this.places = new Map(layout.circuit.leads.map(({ to }, at) => [to, at]));
  }

  override foretell(candidate: Candidate, ask: Ask, key = askKey(ask)): Foretold {
    const row = this.rowOf(ask, key);
    const place =
      (candidate.build * LUGS + this.lugAt(candidate, row.red)) * LUGS +
      this.lugAt(candidate, row.black);
    const known = row.shown.get(place);
    if (known) return known;
    const found = this.onTheMat(candidate, super.foretell(candidate, ask, key), row.neighbour);
    row.shown.set(place, found);
    return found;
  }

  private rowOf(ask: Ask, key: string): Row {
    const known = this.rows.get(key);
    if (known) return known;
    if (!('red' in ask)) throw new RangeError(`a pickup on the mat is not asked for ${ask.kind}`);
    const coil = ask.kind === 'tap' ? ask.coil : '';
    const table = `${ask.kind} ${coil}`;
    const shown = this.acts.get(table) ?? new Map<number, Foretold>();
    this.acts.set(table, shown);
    const made: Row = {
      red: this.places.get(ask.red) ?? ask.red,
      black: this.places.get(ask.black) ?? ask.black,
      shown,
      neighbour: ask.kind === 'tap' ? { ...ask, coil: coil === 'a' ? 'b' : 'a' } : null,
    };
    this.rows.set(key, made);
    return made;
  }

  private lugAt({ spots }: Candidate, point: number | NodeName): number {
    const lug = typeof point === 'number' ? (spots[point] as NodeName | null) : point;
    const known = this.lugs.get(lug);
    if (known !== undefined) return known;
    if (this.lugs.size >= LUGS) throw new RangeError(`more than ${LUGS} lugs in one pickup`);
    this.lugs.set(lug, this.lugs.size);
    return this.lugs.size - 1;
  }

  /** A tap across the neighbour alone may be taken for a swing, and its sign stands for itself. */
  private onTheMat(candidate: Candidate, foretold: Foretold, neighbour: Ask | null): Foretold {
    if (!neighbour) return foretold;
    const [prediction] = foretold.predictions;
    const beside =
      !swings(prediction) && swings(super.foretell(candidate, neighbour).predictions[0]);
    const alike = this.tapped[beside ? 'beside' : 'alone'];
    const known = alike.get(foretold);
    if (known) return known;
    this.made -= 1;
    const found = {
      ...foretold,
      // Numbers of its own, below zero: the ones of the rest go up from zero.
      id: this.made,
      predictions: foretold.predictions.map((one) => onTheMat(one, beside)),
    };
    alike.set(foretold, found);
    return found;
  }
}

/** Whether a tap is more likely to be seen than not. */
const swings = (prediction: Prediction | undefined): boolean =>
  prediction?.type === 'choice' && (prediction.chances['nothing'] ?? 0) < 0.5;

/**
 * Share of taps that go wrong by hand or entry rather than by the eye: a lead mistaken for another, the wrong key; any word may come of
 * it (common practice, no source). Figures have such slips in their own score.
 */
const SLIPS = 0.03;

function onTheMat(prediction: Prediction, beside: boolean): Prediction {
  if (prediction.type !== 'choice') return prediction;
  const { chances } = prediction;
  const stirred = beside ? CROSSTALK : 0;
  const share = (word: string, more: number) =>
    (1 - SLIPS) * ((1 - stirred) * (chances[word] ?? 0) + more) + SLIPS / 3;
  return {
    type: 'choice',
    chances: {
      plus: share('plus', stirred / 2),
      minus: share('minus', stirred / 2),
      nothing: share('nothing', 0),
    },
  };
}
