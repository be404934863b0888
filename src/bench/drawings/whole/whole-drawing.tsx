import type { Circuit, JointId, LeadId, LugRef, Setting } from '../../../circuit/circuit.ts';
import type { SiteId } from '../../../circuit/edit.ts';
import { leadTitle, lugTitle, partTitle, siteTitle } from '../../../circuit/names.ts';
import { layoutOf } from '../../../circuit/netlist.ts';
import type { PartId } from '../../../circuit/parts/part.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { point } from '../geometry.ts';
import { groundLugs } from '../rank.ts';
import { INK, PAPER, SOFT } from '../theme.ts';
import { Contacts } from './contacts.tsx';
import { type Dot, dotsOf, FIGURE_SIZE, figuresOf, type Suspicion, WORTH_SHOWING } from './dots.ts';
import { WHOLE_TEXT } from './footprint.ts';
import { LeadDrawing } from './lead-drawing.tsx';
import { Blob, PlaceDot } from './place-dot.tsx';
import type { Places } from './places.ts';
import { StandDrawing } from './stand-drawing.tsx';
import { Target } from './target.tsx';
import { type Handlers, meantBy } from './targets.ts';
import { type WholeLayout, wholeLayout } from './whole-layout.ts';

interface WholeDrawingProps extends Handlers {
  readonly circuit: Circuit;
  /** Where the parts stand; by themselves where left out. */
  readonly places?: Places | undefined;
  /** Shows lifted joints as lifted, and which lugs each switch joins. */
  readonly setting?: Setting | undefined;
  /** Lugs, joints and leads to be drawn in copper. */
  readonly strong?: ReadonlySet<LugRef | JointId | LeadId> | undefined;
  /** With it every joint has a dot, and each place that is suspected one as large as its share. */
  readonly suspicion?: Suspicion | undefined;
  /** The lug, lead, part or place that was tapped: it wears a ring. */
  readonly picked?: LugRef | LeadId | PartId | SiteId | null | undefined;
}

/**
 * The whole wiring with every part as it is seen from the soldering side. What has a handler can be tapped, and
 * reached and pressed by keyboard. A pure function of what it is given; fills the width it has.
 */
export function WholeDrawing(props: WholeDrawingProps) {
  const { circuit, places, setting, strong, suspicion, picked, onLug, onSite, onLead, onPart } =
    props;
  const layout = wholeLayout(circuit, places);
  const names = layoutOf(circuit);
  const ground = groundLugs(circuit);
  const live = Boolean(onLug ?? onSite ?? onLead ?? onPart);
  const { box } = layout;
  const lifted = new Set(setting?.lifted);
  const dots = suspicion ? dotsOf(layout, suspicion) : [];
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
      onClick={(event) => {
        if (live && event.detail !== 0) tapped(event, layout, props, dots)?.();
      }}
    >
      {layout.stands.map((standing) => (
        <StandDrawing key={standing.footprint.stand.id} standing={standing} />
      ))}
      <g fill="none" stroke-linecap="round" stroke-linejoin="round">
        {layout.leads.map((path) => (
          <LeadDrawing
            key={path.lead.id}
            path={path}
            ground={ground.has(path.lead.from)}
            strong={Boolean(strong?.has(path.lead.id))}
            picked={picked === path.lead.id}
            lifted={lifted}
          />
        ))}
      </g>
      <g
        font-size={WHOLE_TEXT.lead}
        text-anchor="middle"
        fill={INK}
        stroke={PAPER}
        stroke-width={4}
        stroke-linejoin="round"
        paint-order="stroke"
      >
        {layout.words.map(({ lead, text, at: { x, y }, upright }) => (
          <text
            key={lead}
            transform={`translate(${x} ${y})${upright ? ' rotate(-90)' : ''}`}
            dy={WHOLE_TEXT.lead * 0.35}
          >
            {text}
          </text>
        ))}
      </g>
      {setting &&
        layout.stands.map((standing) => (
          <Contacts key={standing.footprint.stand.id} standing={standing} setting={setting} />
        ))}
      {layout.stands.map(({ at, footprint }) => (
        <StandDrawing.Lugs
          key={footprint.stand.id}
          standing={{ at, footprint }}
          strong={strong}
          picked={picked}
          spare={Boolean(onLug)}
        />
      ))}
      {layout.leads.flatMap(({ lead, dots: at, blobs }) =>
        (['from', 'to'] as const).map(
          (end) => blobs[end] && <Blob key={`${lead.id}@${end}`} at={at[end]} />,
        ),
      )}
      {dots.map((dot) => (
        <PlaceDot
          key={dot.site}
          dot={dot}
          strong={Boolean(strong?.has(dot.site))}
          picked={picked === dot.site}
        />
      ))}
      <g
        class="passing"
        font-size={FIGURE_SIZE}
        font-weight={700}
        fill={INK}
        stroke={PAPER}
        stroke-width={4}
        paint-order="stroke"
        stroke-linejoin="round"
      >
        {figuresOf(dots, box).map(({ site, text, at, anchor }) => (
          <text key={site} x={at.x} y={at.y} text-anchor={anchor}>
            {text}
          </text>
        ))}
      </g>
      {live && (
        <g fill="none" stroke={SOFT} stroke-opacity={0}>
          {onPart &&
            layout.stands.flatMap(({ at, footprint }) =>
              footprint.stand.parts.map(({ id }) => (
                <Target
                  key={id}
                  words={partTitle(names, id)}
                  at={at}
                  pressed={picked === id}
                  act={() => onPart(id)}
                />
              )),
            )}
          {onLug &&
            layout.stands.flatMap(({ at, footprint }) =>
              footprint.lugs.map(({ ref, at: spot }) => (
                <Target
                  key={ref}
                  words={lugTitle(names, ref)}
                  at={point(at.x + spot.x, at.y + spot.y)}
                  pressed={picked === ref}
                  act={() => onLug(ref)}
                />
              )),
            )}
          {onLead &&
            layout.leads.map(({ lead, points }) => (
              <Target
                key={lead.id}
                words={leadTitle(names, lead.id)}
                at={points[Math.floor(points.length / 2)]!}
                pressed={picked === lead.id}
                act={() => onLead(lead.id)}
              />
            ))}
          {onSite &&
            dots.map(({ site, at, share }) => (
              <Target
                key={site}
                words={
                  share > WORTH_SHOWING
                    ? drawingWords().siteShareOfTheSuspicion(
                        siteTitle(names, site),
                        shareText(share),
                      )
                    : siteTitle(names, site)
                }
                at={at}
                pressed={picked === site}
                act={() => onSite(site)}
              />
            ))}
        </g>
      )}
    </svg>
  );
}

const shareText = (share: number): string =>
  share < 0.01 ? drawingWords().belowOnePercent : `${Math.round(share * 100)} %`;

function tapped(
  event: MouseEvent,
  layout: WholeLayout,
  handlers: Handlers,
  dots: readonly Dot[],
): (() => void) | null {
  const svg = event.currentTarget as SVGSVGElement;
  const { left, top, width } = svg.getBoundingClientRect();
  const scale = width / layout.box.w;
  const tap = point(
    layout.box.x + (event.clientX - left) / scale,
    layout.box.y + (event.clientY - top) / scale,
  );
  return meantBy(layout, tap, scale, handlers, dots);
}
