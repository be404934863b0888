import type { Circuit } from '../circuit/circuit.ts';
import type { CoilId, SeenPickup } from '../circuit/seen-pickup.ts';
import type { Ask, Meter, Reading, SeenOf } from '../readings/reading.ts';

/** Version of the sheet file. Raise it with a step in `restore-sheet.ts`. */
export const SHEET_VERSION = 1;

interface SheetBase {
  readonly version: typeof SHEET_VERSION;
  readonly id: string;
  /** The person's own name for it. */
  readonly title: string;
  readonly createdAt: string;
  readonly changedAt: string;
  /** When the person said that the cautions are read. ISO 8601. */
  readonly cautionsReadAt?: string;
}

/** One pickup on the mat whose leads are sorted: what was told and seen, never what was concluded. */
export interface PickupSheet extends SheetBase {
  readonly format: 'lugwise-pickup';
  readonly seen: SeenPickup;
  readonly meter: Meter;
  readonly readings: readonly Reading[];
  readonly refused: readonly Ask[];
  /** When each of `refused` was refused, in the same order, so that undo knows which act was the last. ISO 8601. */
  readonly refusedAt?: readonly string[];
}

/** One of the pickups that play together, and where its taps are read: at the jack of the guitar, or at its own two leads. */
export interface PlayingPickup {
  readonly id: string;
  readonly title: string;
  readonly coils: 1 | 2;
  readonly at: 'jack' | 'leads';
}

/** What was seen of one coil: its tap with R on the tip or hot lead as steel is pulled off, or the pole of its top. */
export interface PlayingReading {
  readonly id: string;
  readonly pickup: string;
  readonly coil: CoilId;
  readonly seen: SeenOf<'tap'> | SeenOf<'pole'>;
  readonly at: string;
}

/** Pickups that play together. */
export interface TogetherSheet extends SheetBase {
  readonly format: 'lugwise-together';
  readonly pickups: readonly PlayingPickup[];
  readonly readings: readonly PlayingReading[];
  /** There is no compass: poles are not asked. */
  readonly noCompass?: boolean;
  /** The wiring that they are meant for, and which of its pickups each of them is. */
  readonly meant?: {
    readonly circuit: Circuit;
    /** Pickup of the circuit by id of the playing pickup. */
    readonly places: Readonly<Record<string, string>>;
  };
}

export type Sheet = PickupSheet | TogetherSheet;

/** A line of the list of sheets. */
export interface SheetSummary {
  readonly id: string;
  readonly format: Sheet['format'];
  readonly title: string;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly readings: number;
  /** Why it cannot be opened; `rescue` still gives it as a file. */
  readonly damaged?: string;
}

export const sheetSummary = ({
  id,
  format,
  title,
  createdAt,
  changedAt,
  readings,
}: Sheet): SheetSummary => ({
  id,
  format,
  title,
  createdAt,
  changedAt,
  readings: readings.length,
});
