import { useMemo, useRef } from 'preact/hooks';
import type { Circuit } from '../../../circuit/circuit.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { type Point, point } from '../geometry.ts';
import { type Dot, dotsOf, type Suspicion } from './dots.ts';
import type { Places } from './places.ts';
import { StandDrawing } from './stand-drawing.tsx';
import { type Handlers, meantBy } from './targets.ts';
import { Dots, Leads, Lugs, type Marked, Targets } from './whole-layers.tsx';
import { type WholeLayout, wholeLayout } from './whole-layout.ts';

interface WholeDrawingProps extends Handlers, Marked {
  readonly circuit: Circuit;
  /** Where the parts stand; by themselves where left out. */
  readonly places?: Places | undefined;
  /** With it every joint has a dot, and each place that is suspected one as large as its share. */
  readonly suspicion?: Suspicion | undefined;
  /** How many of `LAYERS` are drawn so far, from below; all where left out. */
  readonly layers?: number | undefined;
}

/** Parts, leads, lugs, dots, and what can be tapped: each is kept as it is while nothing in it changes. */
export const LAYERS = 5;

/**
 * The whole wiring with every part as it is seen from the soldering side. What has a handler can be tapped, and
 * reached and pressed by keyboard. A pure function of what it is given; fills the width it has.
 */
export function WholeDrawing(props: WholeDrawingProps) {
  const { circuit, places, setting, strong, suspicion, picked, layers = LAYERS } = props;
  const { onLug, onSite, onLead, onPart } = props;
  const layout = wholeLayout(circuit, places);
  const live = Boolean(onLug ?? onSite ?? onLead ?? onPart);
  // What a finger came down on is meant, also where the drawing is another one when it is lifted.
  const touched = useRef<Touched | null>(null);
  const { box } = layout;
  const dots = useMemo(
    () => (suspicion && layers > 3 ? dotsOf(layout, suspicion) : []),
    [layers > 3, layout, suspicion],
  );
  const bodies = useMemo(
    () =>
      layout.stands.map((standing) => (
        <StandDrawing key={standing.footprint.stand.id} standing={standing} />
      )),
    [layout],
  );
  const leads = useMemo(
    () =>
      layers > 1 && (
        <Leads
          circuit={circuit}
          layout={layout}
          strong={strong}
          picked={picked}
          setting={setting}
        />
      ),
    [layers > 1, circuit, layout, strong, picked, setting],
  );
  const lugs = useMemo(
    () =>
      layers > 2 && (
        <Lugs
          layout={layout}
          strong={strong}
          picked={picked}
          setting={setting}
          spare={Boolean(onLug)}
        />
      ),
    [layers > 2, layout, strong, picked, setting, Boolean(onLug)],
  );
  const marks = useMemo(
    () => layers > 3 && <Dots dots={dots} box={box} strong={strong} picked={picked} />,
    [layers > 3, dots, box, strong, picked],
  );
  const targets = useMemo(
    () =>
      live &&
      layers > 4 && (
        <Targets circuit={circuit} layout={layout} dots={dots} picked={picked} to={props} />
      ),
    [live && layers > 4, circuit, layout, dots, picked, onLug, onSite, onLead, onPart],
  );
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: each target takes the keys itself; a tap between two is for the nearer.
    <svg
      class="whole-drawing"
      role={live ? 'group' : 'img'}
      aria-label={drawingWords().theWiringOfCircuit(circuit.title)}
      viewBox={`${box.x} ${box.y} ${box.w} ${box.h}`}
      width="100%"
      font-family="inherit"
      style={{ display: 'block' }}
      onPointerDown={(event) => {
        touched.current = touchedBy(event, layout, dots);
      }}
      onPointerCancel={() => {
        touched.current = null;
      }}
      onClick={(event) => {
        const tap = touched.current ?? touchedBy(event, layout, dots);
        touched.current = null;
        if (live && event.detail !== 0) meantBy(tap.layout, tap.at, tap.scale, props, tap.dots)?.();
      }}
    >
      {bodies}
      {leads}
      {lugs}
      {marks}
      {targets}
    </svg>
  );
}

/** A place on a drawing, with the drawing as it was then. */
interface Touched {
  readonly layout: WholeLayout;
  readonly dots: readonly Dot[];
  readonly at: Point;
  /** CSS pixels per unit. */
  readonly scale: number;
}

function touchedBy(event: MouseEvent, layout: WholeLayout, dots: readonly Dot[]): Touched {
  const svg = event.currentTarget as SVGSVGElement;
  const { left, top, width } = svg.getBoundingClientRect();
  const scale = width / layout.box.w;
  const at = point(
    layout.box.x + (event.clientX - left) / scale,
    layout.box.y + (event.clientY - top) / scale,
  );
  return { layout, dots, at, scale };
}
