import { COPPER, INK, PAPER, SOFT } from '../theme.ts';
import { type Dot, dotRadius, SAY_FIGURE, WORTH_SHOWING } from './dots.ts';

/** The dot of one place: small and plain, or copper and as large as its share of suspicion. A blob of solder is its own dot. What is `passing` is not for paper. */
export function PlaceDot({
  dot: { site, at, share, blob },
  strong,
  picked,
}: {
  dot: Dot;
  strong: boolean;
  picked: boolean;
}) {
  const { x, y } = at;
  const suspected = share > WORTH_SHOWING;
  const r = dotRadius(suspected ? share : 0);
  return (
    <g>
      {(!blob || suspected || strong) && (
        <circle
          class={suspected ? (blob || !site.includes('@') ? 'passing' : 'suspected') : undefined}
          cx={x}
          cy={y}
          r={strong ? 4.5 : r}
          fill={suspected || strong ? COPPER : PAPER}
          stroke={suspected || strong ? PAPER : SOFT}
          stroke-width={1.5}
        />
      )}
      {share >= SAY_FIGURE && (
        <circle
          class="passing"
          cx={x}
          cy={y}
          r={r + 3}
          fill="none"
          stroke={COPPER}
          stroke-width={1.5}
        />
      )}
      {picked && (
        <circle
          class="passing"
          cx={x}
          cy={y}
          r={r + 6}
          fill="none"
          stroke={INK}
          stroke-width={2.5}
        />
      )}
    </g>
  );
}

/** The solder of a joint that is made on metal. */
export const Blob = ({ at: { x, y } }: Pick<Dot, 'at'>) => (
  <circle cx={x} cy={y} r={4.5} fill={PAPER} stroke={SOFT} stroke-width={1.5} />
);
