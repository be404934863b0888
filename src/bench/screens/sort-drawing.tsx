import { endOf, leadName, type SeenPickup } from '../../circuit/seen-pickup.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';
import { ProbeLetter } from '../drawings/marks.tsx';
import { COPPER, INK, LINE, STROKE } from '../drawings/theme.ts';
import { LeadName, leadNameWidth } from './lead-name.tsx';

const WIDTH = 340;
const ROW = 34;
const PROBES = 178;
const NAMES = 196;

/** One coil from above: a bobbin with its screws or slugs. */
export function Bobbin({
  y,
  place,
  lit,
}: {
  y: number;
  place: 'screw' | 'slug' | 'single';
  lit: boolean;
}) {
  return (
    <g>
      <rect
        x={8}
        y={y}
        width={96}
        height={28}
        rx={14}
        fill="none"
        stroke={lit ? COPPER : INK}
        stroke-width={lit ? STROKE.strong : STROKE.light}
      />
      {[0, 1, 2, 3, 4, 5].map((at) => {
        const x = 23 + at * 13.2;
        return (
          <g key={at}>
            <circle
              cx={x}
              cy={y + 14}
              r={4.2}
              fill="none"
              stroke={INK}
              stroke-width={STROKE.hair}
            />
            {place === 'screw' && (
              <path d={`M${x - 3} ${y + 11} l6 6`} stroke={INK} stroke-width={STROKE.hair} />
            )}
          </g>
        );
      })}
    </g>
  );
}

/** The pickup on the mat with its leads, and where the probes go. */
export function SortAskDrawing({ seen, ask }: { seen: SeenPickup; ask: Ask }) {
  const metal = [
    ...(seen.plate ? [{ point: 'plate.metal', name: called('base plate') }] : []),
    ...(seen.cover ? [{ point: 'cover.metal', name: called('cover') }] : []),
  ];
  const rows = [
    ...seen.leads.map((lead) => ({ point: endOf(lead), name: called(leadName(lead)) })),
    ...metal,
  ];
  const height = Math.max(rows.length * ROW, seen.coils * 44) + 8;
  const width = Math.max(WIDTH, NAMES + Math.max(...rows.map(({ name }) => leadNameWidth(name))));
  const probe = (point: string) =>
    'red' in ask && ask.red === point ? 'R' : 'red' in ask && ask.black === point ? 'B' : null;
  const middle = height / 2;
  const places = seen.coils === 2 ? (['screw', 'slug'] as const) : (['single'] as const);
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={matWords().thePickupItsLeadsAndTheProbes}
    >
      {places.map((place, at) => (
        <Bobbin
          key={place}
          y={middle - seen.coils * 18 + at * 36}
          place={place}
          lit={(ask.kind === 'tap' || ask.kind === 'pole') && ask.coil === (at === 0 ? 'a' : 'b')}
        />
      ))}
      {rows.map(({ point, name }, at) => {
        const y = 4 + ROW / 2 + at * ROW;
        const letter = probe(point);
        return (
          <g key={point}>
            <path
              d={`M106 ${middle} C140 ${middle} 130 ${y} 166 ${y}`}
              fill="none"
              stroke={letter ? INK : LINE}
              stroke-width={letter ? STROKE.strong : STROKE.light}
            />
            {letter && (
              <ProbeLetter
                at={{ x: PROBES, y }}
                colour={letter === 'R' ? 'red' : 'black'}
                radius={12}
              />
            )}
            <LeadName x={NAMES} y={y} name={name} tone={letter ? 'strong' : 'soft'} />
          </g>
        );
      })}
    </svg>
  );
}
