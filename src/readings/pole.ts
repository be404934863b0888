import { partTitle } from '../circuit/names.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';

/** Compass over a coil. Which pole a guitar starts from is unknown; only agreement between coils counts. */
export const poleReading: ReadingKind<'pole'> = {
  predict(view, ask) {
    const part = view.layout.parts.get(ask.coil);
    const site = view.layout.siteIndex.get(`${ask.coil}:winding`) as number;
    const magnet =
      part?.kind === 'coil' ? part.magnet * (view.wired.magnetSign[site] as number) : 1;
    const chances = {
      north: magnet > 0 ? 0.94 : 0.03,
      south: magnet > 0 ? 0.03 : 0.94,
      none: 0.03,
    };
    return [
      {
        type: 'choice',
        chances,
        mirrored: { north: chances.south, south: chances.north, none: chances.none },
        latent: 'pole',
      },
    ];
  },
  observe: (seen) => [{ type: 'choice', word: seen.pole }],
  askText: (layout, ask) =>
    readingWords().holdACompassOverThePartWhich(partTitle(layout, ask.coil)),
  seenText: (seen) => readingWords().pole[seen.pole],
};
