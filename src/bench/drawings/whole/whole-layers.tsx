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
import { type Dot, FIGURE_SIZE, figuresOf, WORTH_SHOWING } from './dots.ts';
import { WHOLE_TEXT } from './footprint.ts';
import { LeadDrawing } from './lead-drawing.tsx';
import { Blob, PlaceDot } from './place-dot.tsx';
import { StandDrawing } from './stand-drawing.tsx';
import { Target } from './target.tsx';
import type { Handlers } from './targets.ts';
import type { WholeLayout } from './whole-layout.ts';

/** What sets single things of the drawing apart from the rest. */
export interface Marked {
  /** Lugs, joints and leads to be drawn in copper. */
  readonly strong?: ReadonlySet<LugRef | JointId | LeadId> | undefined;
  /** The lug, lead, part or place that was tapped: it wears a ring. */
  readonly picked?: LugRef | LeadId | PartId | SiteId | null | undefined;
  /** Shows lifted joints as lifted, and which lugs each switch joins. */
  readonly setting?: Setting | undefined;
}

type Shown = Marked & {
  readonly layout: WholeLayout;
};

/** The leads with their colours in words. */
export function Leads({ circuit, layout, strong, picked, setting }: Shown & { circuit: Circuit }) {
  const ground = groundLugs(circuit);
  const lifted = new Set(setting?.lifted);
  return (
    <>
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
    </>
  );
}

/** The lugs with what is soldered to them, and what a switch joins. */
export const Lugs = ({ layout, strong, picked, setting, spare }: Shown & { spare: boolean }) => (
  <>
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
        spare={spare}
      />
    ))}
    {layout.leads.flatMap(({ lead, dots: at, blobs }) =>
      (['from', 'to'] as const).map(
        (end) => blobs[end] && <Blob key={`${lead.id}@${end}`} at={at[end]} />,
      ),
    )}
  </>
);

interface DotsProps extends Pick<Marked, 'strong' | 'picked'> {
  readonly dots: readonly Dot[];
  readonly box: WholeLayout['box'];
}

/** A dot on every joint, with the shares that are worth a figure. */
export const Dots = ({ dots, box, strong, picked }: DotsProps) => (
  <>
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
  </>
);

interface TargetsProps extends Pick<Marked, 'picked'> {
  readonly circuit: Circuit;
  readonly layout: WholeLayout;
  readonly dots: readonly Dot[];
  readonly to: Handlers;
}

/** What can be tapped, or reached and pressed by keyboard. */
export function Targets({ circuit, layout, dots, picked, to }: TargetsProps) {
  const { onLug, onSite, onLead, onPart } = to;
  const names = layoutOf(circuit);
  return (
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
                ? drawingWords().siteShareOfTheSuspicion(siteTitle(names, site), shareText(share))
                : siteTitle(names, site)
            }
            at={at}
            pressed={picked === site}
            act={() => onSite(site)}
          />
        ))}
    </g>
  );
}

const shareText = (share: number): string =>
  share < 0.01 ? drawingWords().belowOnePercent : `${Math.round(share * 100)} %`;
