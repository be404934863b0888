import { partTitle } from '../circuit/names.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import type { PartId, PartOf } from '../circuit/parts/part.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { probesText } from './words.ts';

/** Share of taps whose sign is entered right (common practice, no source). */
const RIGHT = 0.93;

/** The coil and every other winding of its pickup in the same place: the parts of a tapped coil share one core and its flux. */
function onOneCore(layout: Layout, id: PartId): readonly PartOf<'coil'>[] {
  const tapped = layout.parts.get(id);
  if (tapped?.kind !== 'coil') return [];
  const mates = layout.circuit.pickups.find(({ coils }) => coils.includes(id))?.coils ?? [];
  return [
    tapped,
    ...mates.flatMap((mate) => {
      const part = layout.parts.get(mate);
      return part?.kind === 'coil' && part !== tapped && part.place === tapped.place ? [part] : [];
    }),
  ];
}

/**
 * Steel pulled off a coil: the sign is winding sense x magnet through the circuit as it is. Which sign a whole guitar starts from is
 * unknown (every pickup may be the other way round and sound the same), so only agreement between taps counts.
 */
export const tapReading: ReadingKind<'tap'> = {
  predict(view, ask) {
    const { layout } = view;
    const [red, black] = [nodeAt(layout, ask.red), nodeAt(layout, ask.black)];
    let swing = 0;
    for (const coil of onOneCore(layout, ask.coil)) {
      const site = layout.siteIndex.get(`${coil.id}:winding`) as number;
      const sense = coil.winding * coil.magnet * (view.wired.magnetSign[site] as number);
      // Its EMF lifts the finish above the start; a transfer counts from start to finish.
      swing -= sense * view.dc.transfer(red, black, site);
    }
    // Below a tenth of the coil's own swing a hand-held meter shows nothing that can be told from its flicker.
    const seen = Math.min(1, Math.max(0, (Math.abs(swing) - 0.05) / 0.15));
    const right = 0.03 + seen * (RIGHT - 0.03);
    const wrong = 0.03;
    const chances = {
      plus: swing > 0 ? right : wrong,
      minus: swing > 0 ? wrong : right,
      nothing: 1 - right - wrong,
    };
    return [
      {
        type: 'choice',
        chances,
        mirrored: { plus: chances.minus, minus: chances.plus, nothing: chances.nothing },
        latent: 'tap',
      },
    ];
  },
  // What lies between the probes says where each winding stands in it, which way round and with which magnet.
  like: (guitar, ask) => guitar.in(ask.setting).between(ask.red, ask.black),
  observe: (seen) => [{ type: 'choice', word: seen.swing }],
  askText: (layout, ask) =>
    readingWords().setTheMeterToDCMillivolts(
      probesText(layout, ask.red, ask.black),
      partTitle(layout, ask.coil),
    ),
  seenText: (seen) => readingWords().swing[seen.swing],
};
