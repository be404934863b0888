import type { Circuit } from '../circuit/circuit.ts';
import { type Edit, EVERYWHERE, type SiteId } from '../circuit/edit.ts';
import { partTitle, siteTitle } from '../circuit/names.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { View } from './view.ts';
import { probesText } from './words.ts';

const bodyOf = (site: string): string => site.split(/[@:]/)[0] as string;

/** Whether moving what is at `moved` (a joint, a lead, a part's wires) moves the fault's site. Moving a wire moves both of its joints. */
export function shakes(circuit: Circuit, moved: SiteId | PartId, site: SiteId): boolean {
  if (moved === EVERYWHERE || bodyOf(moved) === bodyOf(site)) return true;
  const lead = circuit.leads.find(({ id }) => id === bodyOf(site));
  if (!lead || !circuit.parts.some(({ id }) => id === moved)) return false;
  const touches = (lug: string) => lug.startsWith(`${moved}.`);
  if (site.endsWith('@from')) return touches(lead.from);
  if (site.endsWith('@to')) return touches(lead.to);
  return touches(lead.from) || touches(lead.to);
}

/** What is taken hold of: all wires, those of a part, a wire, or the wire at one of its joints. */
function movedText(layout: Layout, site: SiteId | PartId): string {
  if (site === EVERYWHERE) return readingWords().everyWireInTheCavityInTurn;
  if (layout.parts.has(site)) return readingWords().everyWireAtThePart(partTitle(layout, site));
  const title = siteTitle(layout, site);
  return site.includes('@') ? readingWords().theWireAtTitle(title) : title;
}

const changedViews = new WeakMap<View, Map<string, View>>();

/** The guitar of `view` with other edits, kept as long as that: the same wire is moved under many pairs of probes. */
function changedView(view: View, edits: readonly Edit[]): View {
  const known = changedViews.get(view) ?? new Map<string, View>();
  changedViews.set(view, known);
  const name = JSON.stringify(edits);
  const made = known.get(name) ?? new View(view.layout, view.setting, edits);
  known.set(name, made);
  return made;
}

/** The only direct evidence of an intermittent joint: it must carry the reading, and be moved. */
export const flexReading: ReadingKind<'flex'> = {
  predict(view, ask) {
    const { layout, edits } = view;
    const [a, b] = [nodeAt(layout, ask.red), nodeAt(layout, ask.black)];
    const rest = view.dc.resistance(a, b);
    const shows = (changed: readonly Edit[]): boolean => {
      const moved = changedView(view, changed).dc.resistance(a, b);
      if (!Number.isFinite(moved) || !Number.isFinite(rest)) return moved !== rest;
      // Seen on a display of 2000 counts or more, which has a hundredth in two counts at the least.
      return Math.abs(moved - rest) > 0.01 * rest + 1;
    };
    let jumps = 0.02;
    for (const edit of edits) {
      if (edit.op === 'intermittent' && shakes(layout.circuit, ask.site, edit.site)) {
        const open: Edit = { op: 'open', site: edit.site };
        const isOpen = edits.some((one) => one.op === 'open' && one.site === edit.site);
        const changed = isOpen
          ? edits.filter((one) => !(one.op === 'open' && one.site === edit.site))
          : [...edits, open];
        if (shows(changed)) jumps = Math.max(jumps, 0.88);
      }
      if (edit.op === 'resist' && shakes(layout.circuit, ask.site, edit.site))
        if (shows(edits.filter((one) => one !== edit))) jumps = Math.max(jumps, 0.25);
    }
    return [{ type: 'choice', chances: { jumps, steady: 1 - jumps } }];
  },
  like: ({ layout, edits }, ask) =>
    edits.some(
      (edit) =>
        (edit.op === 'intermittent' || edit.op === 'resist') &&
        shakes(layout.circuit, ask.site, edit.site),
    )
      ? null
      : 'steady',
  observe: (seen) => [{ type: 'choice', word: seen.how }],
  askText: (layout, ask) =>
    readingWords().holdTheProbesStillProbesWiggle(
      probesText(layout, ask.red, ask.black),
      movedText(layout, ask.site),
    ),
  seenText: (seen) => readingWords().flex[seen.how],
};
