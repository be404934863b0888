import type { Layout } from '../circuit/netlist.ts';
import { beepReading } from './beep.ts';
import { faradsReading } from './farads.ts';
import { flexReading } from './flex.ts';
import { humReading } from './hum.ts';
import type { ReadingKind } from './kind.ts';
import type { Instrument } from './level.ts';
import { listenReading } from './listen.ts';
import { lookReading } from './look.ts';
import { ohmsReading } from './ohms.ts';
import type { Outlines } from './outline.ts';
import { poleReading } from './pole.ts';
import type { Observation, Prediction } from './prediction.ts';
import type { Ask, ReadingKindName, Seen } from './reading.ts';
import { tapReading } from './tap.ts';
import { touchReading } from './touch.ts';
import { turnReading } from './turn.ts';
import type { View } from './view.ts';

const kinds: { readonly [K in ReadingKindName]: ReadingKind<K> } = {
  ohms: ohmsReading,
  beep: beepReading,
  turn: turnReading,
  flex: flexReading,
  tap: tapReading,
  farads: faradsReading,
  listen: listenReading,
  touch: touchReading,
  hum: humReading,
  look: lookReading,
  pole: poleReading,
};
const of = (name: ReadingKindName) => kinds[name] as unknown as ReadingKind<ReadingKindName>;

export const predict = (view: View, ask: Ask, instrument: Instrument): readonly Prediction[] =>
  of(ask.kind).predict(view, ask, instrument);
/** The name of `ReadingKind.like`, or null where there is none. */
export const likeness = (guitar: Outlines, ask: Ask): string | null =>
  of(ask.kind).like?.(guitar, ask) ?? null;
export const observe = (seen: Seen): readonly (Observation | undefined)[] =>
  of(seen.kind).observe(seen);
export const askText = (layout: Layout, ask: Ask): string => of(ask.kind).askText(layout, ask);
export const seenText = (seen: Seen): string => of(seen.kind).seenText(seen);
