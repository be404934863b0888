import type { Layout } from '../circuit/netlist.ts';
import type { Instrument } from './level.ts';
import type { Outlines } from './outline.ts';
import type { Observation, Prediction } from './prediction.ts';
import type { AskOf, ReadingKindName, SeenOf } from './reading.ts';
import type { View } from './view.ts';

/** What a new kind of reading must supply. See README.md of this folder. */
export interface ReadingKind<K extends ReadingKindName> {
  /** What this guitar would show, in one or two parts that are independent given the guitar and its unknowns. */
  predict(view: View, ask: AskOf<K>, instrument: Instrument): readonly Prediction[];
  /**
   * A name that guitars share only where this reading is foretold alike for all of them, so that one of them is solved;
   * null, or none at all, where each has to be asked for itself.
   */
  like?(guitar: Outlines, ask: AskOf<K>): string | null;
  /** What was seen, part for part as predicted; undefined where that part was not entered. */
  observe(seen: SeenOf<K>): readonly (Observation | undefined)[];
  /** The act in one or two short sentences. */
  askText(layout: Layout, ask: AskOf<K>): string;
  seenText(seen: SeenOf<K>): string;
}
