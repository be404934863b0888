import { partTitle } from '../circuit/names.ts';
import { expectedValue } from '../circuit/parts/value.ts';
import { ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { nanofaradsText } from './words.ts';

/** Capacitance of a part with one leg lifted: ln(picofarad), known to its tolerance. */
export const faradsReading: ReadingKind<'farads'> = {
  predict(view, ask, { unknowns }) {
    const part = view.layout.parts.get(ask.part);
    const site = view.layout.siteIndex.get(`${ask.part}:body`) as number;
    const farads = view.wired.farads[site] as number;
    const shorted = view.edits.some(
      (edit) =>
        edit.op === 'bridge' &&
        edit.a.startsWith(`${ask.part}.`) &&
        edit.b.startsWith(`${ask.part}.`) &&
        edit.ohms < 1e5,
    );
    const what = shorted ? 'short' : farads === 0 ? 'open' : 'value';
    const chances = { value: 0.02, open: 0.02, short: 0.02, [what]: 0.96 };
    const deviation =
      part?.kind === 'capacitor'
        ? part.farads.measured === undefined
          ? part.farads.tolerance / 2
          : 0.02
        : 0.1;
    const nominal = part?.kind === 'capacitor' ? expectedValue(part.farads) : 1e-9;
    const size = farads > 0 ? farads : nominal;
    return [
      { type: 'choice', chances },
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
