import { partTitle, siteTitle } from '../circuit/names.ts';
import { placeNames } from '../words/en/places.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';

/** Eyes raise a suspect; most bad joints show something, few good ones do. */
export const lookReading: ReadingKind<'look'> = {
  predict(view, ask) {
    const touches = (name: string) => name === ask.at || name.split(/[@:.]/)[0] === ask.at;
    const lug = ask.at.includes('@')
      ? view.layout.circuit.leads.find((lead) => lead.id === ask.at.split('@')[0])
      : undefined;
    const here = lug && (ask.at.endsWith('@from') ? lug.from : lug.to);
    const bridged = view.edits.some(
      (edit) =>
        edit.op === 'bridge' &&
        (edit.a === here || edit.b === here || touches(edit.a) || touches(edit.b)),
    );
    const broken = view.edits.some(
      (edit) =>
        (edit.op === 'open' || edit.op === 'resist' || edit.op === 'intermittent') &&
        touches(edit.site),
    );
    return [
      {
        type: 'choice',
        chances: bridged
          ? { good: 0.3, dull: 0.08, loose: 0.04, burnt: 0.03, bridged: 0.55 }
          : broken
            ? { good: 0.35, dull: 0.28, loose: 0.3, burnt: 0.05, bridged: 0.02 }
            : { good: 0.9, dull: 0.06, loose: 0.01, burnt: 0.02, bridged: 0.01 },
      },
    ];
  },
  observe: (seen) => [{ type: 'choice', word: seen.how }],
  askText: (layout, ask) =>
    readingWords().lookCloselyAtWhat(
      layout.parts.has(ask.at)
        ? placeNames().part(partTitle(layout, ask.at))
        : siteTitle(layout, ask.at),
    ),
  seenText: (seen) => readingWords().look[seen.how],
};
