import type { Circuit } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { commonWords } from '../../words/en/common.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { placeWords } from './describe.ts';
import { PanelRows } from './panel-rows.tsx';
import { placesScene } from './places-scene.ts';
import type { Lie } from './portrait.ts';

/** The parts on which up to two places lie, each place under a magnifier, in one drawing. */
export function PlaceDrawing({
  circuit,
  sites,
  lie,
}: {
  circuit: Circuit;
  sites: readonly (SiteId | PartId)[];
  lie?: Lie;
}) {
  const shown = [...new Set(sites)].slice(0, 2);
  if (shown.length === 0) return null;
  const words = drawingWords().aMagnifierOverMap(
    commonWords().and(shown.map((site) => placeWords(circuit, site))),
  );
  return <PanelRows rows={placesScene(circuit, shown, lie)} words={words} />;
}
