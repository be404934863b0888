import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import { formatOhms } from '../readings/entry.ts';
import { closingWords } from '../words/en/closing.ts';
import type { Showable } from './faults-shown.ts';
import type { Ladder } from './ladder.ts';

/** What a list of readings cannot see: one kind of fault, and where. */
export interface Hidden {
  readonly title: string;
  readonly places: readonly string[];
}

/** What readings show of each fault, and pairs of faults that they cannot show. */
export interface Shown {
  readonly ladders: Showable['ladders'];
  readonly pairs: readonly Hypothesis[];
}

/** Faults, or their smaller sizes, that no reading of the stage shows, joined by kind. */
export function cannotSee({ ladders, pairs }: Shown): readonly Hidden[] {
  const found = new Map<string, Set<string>>();
  for (const { ladder, hidden } of ladders) {
    if (hidden === 0) continue;
    const [title, place] = wordsFor(ladder, hidden);
    const places = found.get(title) ?? new Set();
    found.set(title, places.add(place));
  }
  const both = pairs.map(({ faults: [one, other] }) =>
    closingWords().whileOther(one?.sentence ?? '', other?.sentence ?? ''),
  );
  return [
    ...[...found].map(([title, places]) => ({ title, places: [...places] })),
    ...(both.length > 0 ? [{ title: closingWords().twoThatHideEachOther, places: both }] : []),
  ];
}

/** How a kind of fault is called when several places share it. */
const kindOf = ({ id }: { readonly id: string }): string =>
  (closingWords().kinds as Readonly<Record<string, string>>)[id.slice(0, id.indexOf(':'))] ??
  closingWords().fault;

function wordsFor(ladder: Ladder, hidden: number): readonly [string, string] {
  const fault = ladder[0]?.faults[0];
  if (!fault) return ['', ''];
  const kind = kindOf(fault);
  const edit = ladder[hidden - 1]?.edits[0];
  return [hidden < ladder.length ? sized(kind, edit) : kind, fault.sentence];
}

/** Up to which size it stays hidden. Sizes are half-decade or decade steps, so only their order of magnitude is told. */
function sized(kind: string, edit: Edit | undefined): string {
  switch (edit?.op) {
    case 'resist':
      return closingWords().upToAbout(kind, formatOhms(ohms(edit.ohms), 1));
    case 'bridge':
      return closingWords().ofAboutOrMore(kind, formatOhms(ohms(edit.ohms), 1));
    case 'scale':
      return closingWords().upToShareOfCoil(kind, Math.round((1 - edit.factor) * 100));
    default:
      return kind;
  }
}

/** What all readings of the stage together rule out, by kind of fault: the kinds of which every size is shown come first. */
export function ruledOut(ladders: Showable['ladders']): readonly string[] {
  const kinds = new Map<string, { shown: Set<string>; hidden: boolean }>();
  for (const { ladder, hidden } of ladders) {
    const fault = ladder[0]?.faults[0];
    if (!fault || hidden === ladder.length) continue;
    const name = kindOf(fault);
    const kind = kinds.get(name) ?? { shown: new Set(), hidden: false };
    kind.shown.add(fault.id);
    kind.hidden ||= hidden > 0;
    kinds.set(name, kind);
  }
  return [...kinds]
    .sort(([, x], [, y]) => Number(x.hidden) - Number(y.hidden))
    .map(([name, { shown, hidden }]) =>
      closingWords()[hidden ? 'placesSaveSizes' : 'places'](name, shown.size),
    );
}
