import { type Ohms, ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import { formatOhms } from './entry-format.ts';

/** What a healthy guitar shows: its band in ohms where the answer is one. */
export interface ExpectedOhms {
  readonly text: string;
  readonly low?: Ohms;
  readonly high?: Ohms;
}

/** An entry to ask about before it is stored. Both answers are the person's; nothing is corrected unasked. */
export interface Doubt {
  readonly sentence: string;
  /** What was probably meant. */
  readonly better: Ohms | 'open';
}

/** Beyond the expected band by this factor is still "near": a warm coil, a pot at its tolerance. */
const NEAR = 1.25;
/** Paths up to this are joints, wires and contacts: a bad one reads anything at all, so nothing is implausible there. */
const LOW_PATH_OHMS = 100;
/** A closed path through joints and probes stays below; no coil of a pickup starts below 1000. Common practice, no source. */
const SHORT_OHMS = 1.5;
/** Coils and pots of guitars lie between. Common practice, no source. */
const PLAUSIBLE_OHMS = { low: 1.5e3, high: 1.5e6 };

/** A missed or doubled k, a missed or doubled M, one place of the decimal point. */
const SLIPS = [1e3, 1e-3, 1e6, 1e-6, 10, 0.1];

/**
 * Whether an entry looks like a slip of unit or of decimal point. It does when the entry is away
 * from the expected band and a slip away from it lies near; or when it lies between a short and the
 * smallest coil, where only a missing k explains it. Returns null when the entry stands as it is.
 */
export function doubt(entered: Ohms | 'open', expected: ExpectedOhms): Doubt | null {
  if (entered === 'open') return null;
  const { low, high } = expected;
  if (high !== undefined && high <= LOW_PATH_OHMS) return null;
  if (low !== undefined && high !== undefined) {
    if (near(entered, low, high)) return null;
    if (entered === 0) return zeroForOpen();
    const slip = SLIPS.find((factor) => near(entered * factor, low, high));
    if (slip !== undefined) return slipOf(entered, ohms(tidyUp(entered * slip)), expected);
  }
  if (entered === 0) return zeroForOpen();
  const thousandfold = entered * 1e3;
  const missingK =
    entered > SHORT_OHMS &&
    entered < 1e3 &&
    thousandfold >= PLAUSIBLE_OHMS.low &&
    thousandfold <= PLAUSIBLE_OHMS.high;
  return missingK ? missingKOf(entered, ohms(tidyUp(thousandfold))) : null;
}

const near = (value: number, low: number, high: number): boolean =>
  value >= low / NEAR && value <= high * NEAR;

/** 5.9 x 1000 is 5900.000000000001 in binary. */
const tidyUp = (value: number): number => Number(value.toPrecision(12));

function slipOf(entered: Ohms, better: Ohms, expected: ExpectedOhms): Doubt {
  const [was, is] = [formatOhms(entered, 4), formatOhms(better, 4)];
  return {
    sentence: readingWords().youEnteredWasAHealthyGuitar(was, expected.text, is),
    better,
  };
}

function missingKOf(entered: Ohms, better: Ohms): Doubt {
  const [was, is] = [formatOhms(entered, 4), formatOhms(better, 4)];
  return {
    sentence: readingWords().youEnteredWasFewThingsInA(was, is),
    better,
  };
}

function zeroForOpen(): Doubt {
  return {
    sentence: readingWords().youEntered0WhichIsA,
    better: 'open',
  };
}
