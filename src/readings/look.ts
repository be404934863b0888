import { partTitle, siteTitle } from '../circuit/names.ts';
import { placeNames } from '../words/en/places.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import type { SeenOf } from './reading.ts';

type Chances = Readonly<Record<SeenOf<'look'>['how'], number>>;
/** How often each word is said; none is sure (common practice, no source). A lead on a wrong lug is missed like any fault by who has no drawing at hand. */
const CHANCES: Readonly<Record<'elsewhere' | 'bridged' | 'broken' | 'sound', Chances>> = {
  elsewhere: { good: 0.3, dull: 0.05, loose: 0.03, burnt: 0.01, bridged: 0.01, elsewhere: 0.6 },
  bridged: { good: 0.3, dull: 0.08, loose: 0.04, burnt: 0.03, bridged: 0.54, elsewhere: 0.01 },
  broken: { good: 0.34, dull: 0.28, loose: 0.3, burnt: 0.05, bridged: 0.02, elsewhere: 0.01 },
  sound: { good: 0.89, dull: 0.06, loose: 0.01, burnt: 0.02, bridged: 0.01, elsewhere: 0.01 },
};

/** What strikes the eye first. */
const lookOf = (is: { elsewhere: boolean; bridged: boolean; broken: boolean }) =>
  is.elsewhere ? 'elsewhere' : is.bridged ? 'bridged' : is.broken ? 'broken' : 'sound';

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
    // Of two lugs with their leads exchanged neither has the one that belongs on it.
    const elsewhere = view.edits.some(
      (edit) =>
        (edit.op === 'land' && edit.joint === ask.at) ||
        (edit.op === 'exchange' && here !== undefined && edit.lugs.includes(here)),
    );
    return [{ type: 'choice', chances: CHANCES[lookOf({ elsewhere, bridged, broken })] }];
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
