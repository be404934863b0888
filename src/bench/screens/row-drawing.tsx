import type { PlayingPickup } from '../../notebook/index.ts';
import { called } from '../../words/called.ts';
import { cardWords } from '../../words/en/card.ts';
import { INK, SOFT, TEXT } from '../drawings/theme.ts';
import { Bobbin } from './sort-drawing.tsx';

const WIDTH = 340;

interface RowDrawingProps {
  readonly pickups: readonly PlayingPickup[];
  readonly lit: { readonly pickup: string; readonly coil: 'a' | 'b' };
}

/** The pickups one below the other, the coil that is asked for strong. */
export function RowDrawing({ pickups, lit }: RowDrawingProps) {
  let y = 6;
  const rows = pickups.map((pickup) => {
    const top = y;
    y += pickup.coils === 2 ? 82 : 48;
    return { pickup, top };
  });
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${y}`}
      role="img"
      aria-label={cardWords().thePickupsAndTheCoilThatIs}
    >
      {rows.map(({ pickup, top }) => (
        <g key={pickup.id}>
          {(pickup.coils === 2 ? (['a', 'b'] as const) : (['a'] as const)).map((coil, at) => (
            <Bobbin
              key={coil}
              y={top + at * 34}
              place={pickup.coils === 1 ? 'single' : coil === 'a' ? 'screw' : 'slug'}
              lit={lit.pickup === pickup.id && lit.coil === coil}
            />
          ))}
          <text
            x={118}
            y={top + (pickup.coils === 2 ? 36 : 19)}
            font-size={TEXT.lead}
            font-weight={lit.pickup === pickup.id ? '700' : '400'}
            fill={lit.pickup === pickup.id ? INK : SOFT}
          >
            {called(pickup.title)}
          </text>
        </g>
      ))}
    </svg>
  );
}
