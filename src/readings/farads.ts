import { partTitle } from '../circuit/names.ts';
import { expectedValue } from '../circuit/parts/value.ts';
import { ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { nanofaradsText } from './words.ts';

/** Ohms beside a capacitor below which any meter calls it a short, and above which none minds. */
const SHORT = 1000;
const UNFELT = 1e6;

/**
 * What a meter makes of a capacitor with a leak beside it: one that charges it cannot, one that lets alternating current through may read
 * its value all the same, and whoever measures does not know which of the two it is (common practice, no source).
 */
function chancesOf(farads: number, leak: number): Readonly<Record<string, number>> {
  if (leak < SHORT) return { value: 0.02, open: 0.02, short: 0.96 };
  if (leak < UNFELT) return { value: 0.5, open: 0.02, short: 0.48 };
  return farads === 0
    ? { value: 0.02, open: 0.96, short: 0.02 }
    : { value: 0.96, open: 0.02, short: 0.02 };
}

/** Capacitance of a part with one leg lifted: ln(picofarad), known to its tolerance. */
export const faradsReading: ReadingKind<'farads'> = {
  predict(view, ask, { unknowns }) {
    const part = view.layout.parts.get(ask.part);
    const site = view.layout.siteIndex.get(`${ask.part}:body`) as number;
    const farads = view.wired.farads[site] as number;
    const beside = view.edits.flatMap((edit) =>
      edit.op === 'bridge' && edit.a.startsWith(`${ask.part}.`) && edit.b.startsWith(`${ask.part}.`)
        ? [edit.ohms]
        : [],
    );
    const leak = Math.min(Number.POSITIVE_INFINITY, ...beside);
    const deviation =
      part?.kind === 'capacitor'
        ? part.farads.measured === undefined
          ? part.farads.tolerance / 2
          : 0.02
        : 0.1;
    const nominal = part?.kind === 'capacitor' ? expectedValue(part.farads) : 1e-9;
    const size = farads > 0 ? farads : nominal;
    return [
      { type: 'choice', chances: chancesOf(farads, leak) },
      {
        type: 'level',
        mean: Math.log(size * 1e12),
        slopes: new Float64Array(unknowns.list.length + 1),
        noise: Math.hypot(deviation, 0.03),
        ohms: ohms(0),
      },
    ];
  },
  observe: (seen) =>
    seen.farads === 'open' || seen.farads === 'short'
      ? [{ type: 'choice', word: seen.farads }, undefined]
      : [
          { type: 'choice', word: 'value' },
          { type: 'level', value: Math.log(seen.farads * 1e12) },
        ],
  askText: (layout, ask) => readingWords().liftOneLegOfThePartAnd(partTitle(layout, ask.part)),
  seenText: (seen) =>
    seen.farads === 'open' || seen.farads === 'short'
      ? readingWords().farads[seen.farads]
      : nanofaradsText(seen.farads * 1e9),
};
