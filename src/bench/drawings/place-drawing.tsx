import type { Circuit } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { commonWords } from '../../words/en/common.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { placeWords } from './describe.ts';
import { PanelRows } from './panel-rows.tsx';
import { placesScene } from './places-scene.ts';
import type { Lie } from './portrait.ts';
import type { Panel } from './scene.ts';

interface PlaceDrawingProps {
  readonly circuit: Circuit;
  readonly sites: readonly (SiteId | PartId)[];
  readonly lie?: Lie;
}

/** No more than these are drawn. */
export const shownPlaces = (sites: PlaceDrawingProps['sites']) => [...new Set(sites)].slice(0, 2);

/** The parts on which up to two places lie, each place under a magnifier, in one drawing. */
export function PlaceDrawing({ circuit, sites, lie }: PlaceDrawingProps) {
  const shown = shownPlaces(sites);
  if (shown.length === 0) return null;
  return <PlacesDrawing circuit={circuit} sites={shown} rows={placesScene(circuit, shown, lie)} />;
}

interface PlacesDrawingProps extends Pick<PlaceDrawingProps, 'circuit' | 'sites'> {
  /** What `placesScene` gives for both. */
  readonly rows: readonly (readonly Panel[])[];
}

/** The same of a scene that is laid out already. */
export const PlacesDrawing = ({ circuit, sites, rows }: PlacesDrawingProps) => (
  <PanelRows
    rows={rows}
    words={drawingWords().aMagnifierOverMap(
      commonWords().and(sites.map((site) => placeWords(circuit, site))),
    )}
  />
);
