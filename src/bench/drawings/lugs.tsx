import type { Spot } from './portrait.ts';
import type { Panel } from './scene.ts';
import { COPPER, INK, PAPER, SOFT, STROKE, TEXT } from './theme.ts';

/** All lugs of a panel with their names; the asked ones are the only strong things. */
export function lugsToDraw({ portrait, asked, marks }: Panel) {
  // The steel lies over names that no tap needs: half a word is worse than none.
  const unnamed = marks.some(({ kind }) => kind === 'steel');
  return [...portrait.spots].map(([ref, spot]) => (
    <g key={ref}>
      <Lug spot={spot} strong={asked.has(ref)} />
      {(!unnamed || asked.has(ref)) && (
        <text
          x={spot.labelAt.x}
          y={spot.labelAt.y}
          text-anchor={spot.anchor}
          font-size={TEXT.lug}
          font-weight={asked.has(ref) ? 700 : 400}
          fill={asked.has(ref) ? INK : SOFT}
          stroke={PAPER}
          stroke-width={3.5}
          stroke-linejoin="round"
          paint-order="stroke"
        >
          {spot.label}
        </text>
      )}
    </g>
  ));
}

function Lug({ spot, strong }: { spot: Spot; strong: boolean }) {
  const { x, y } = spot.at;
  const r = spot.radius;
  const stroke = strong ? COPPER : SOFT;
  const width = strong ? STROKE.strong + 0.5 : STROKE.light;
  if (spot.shape === 'blob') {
    return (
      <path
        d={`M${x - r * 1.5} ${y + 1}q${r * 0.1} ${-r} ${r} ${-r * 0.8}q${r * 0.6} ${-r * 0.5} ${r * 1.2} 0q${r * 0.9} ${-r * 0.1} ${r * 0.8} ${r * 0.9}q${-r * 0.1} ${r * 0.9} ${-r} ${r * 0.7}q${-r * 0.5} ${r * 0.4} ${-r} 0q${-r} ${r * 0.1} ${-r} ${-r * 0.8}z`}
        fill={PAPER}
        stroke={stroke}
        stroke-width={width}
        stroke-linejoin="round"
      />
    );
  }
  return (
    <g>
      <circle
        cx={x}
        cy={y}
        r={strong ? r + 2 : r}
        fill={PAPER}
        stroke={stroke}
        stroke-width={width}
      />
      {spot.shape === 'eyelet' && (
        <circle cx={x} cy={y} r={strong ? 2.5 : 2} fill={stroke} stroke="none" />
      )}
      {spot.shape === 'patch' && (
        <circle cx={x} cy={y} r={r * 0.45} fill="none" stroke={stroke} stroke-width={1.25} />
      )}
    </g>
  );
}
