import { COPPER, INK, PAPER, SOFT, STROKE } from '../theme.ts';
import { WHOLE_TEXT } from './footprint.ts';
import type { Standing } from './route-leads.ts';

interface Drawn {
  readonly standing: Standing;
  readonly strong: ReadonlySet<string> | undefined;
  readonly picked: string | null | undefined;
  /** Also shows lugs on which nothing is soldered in their own place. */
  readonly spare: boolean;
}

/** The body of a part by its portrait, turned as it stands; words stay upright. */
export function StandDrawing({ standing: { at, footprint } }: Pick<Drawn, 'standing'>) {
  const { figure, turn, words } = footprint;
  return (
    <g transform={`translate(${at.x} ${at.y})`}>
      <g transform={`rotate(${turn}) translate(${-figure.middle.x} ${-figure.middle.y})`}>
        {figure.portrait.body}
      </g>
      <g text-anchor="middle" font-size={WHOLE_TEXT.title} fill={INK}>
        {words.map(({ text, at: { x, y }, strong }) => (
          <text
            key={`${x} ${y}`}
            x={x}
            y={y + WHOLE_TEXT.title * 0.35}
            font-weight={strong ? 600 : 400}
            fill={strong ? INK : SOFT}
          >
            {text}
          </text>
        ))}
      </g>
    </g>
  );
}

StandDrawing.Lugs = function Lugs({ standing: { at, footprint }, strong, picked, spare }: Drawn) {
  return (
    <g transform={`translate(${at.x} ${at.y})`}>
      {footprint.lugs.map((lug) => {
        const { x, y } = lug.at;
        const asked = Boolean(strong?.has(lug.ref));
        const blobs = (footprint.slots.get(lug.ref) ?? []).some(({ blob }) => blob);
        const hidden = blobs && !spare && !asked;
        const r = lug.radius;
        return (
          <g key={lug.ref}>
            {!hidden && (
              <circle
                cx={x}
                cy={y}
                r={asked ? r + 1.5 : r}
                fill={PAPER}
                stroke={asked ? COPPER : SOFT}
                stroke-width={asked ? STROKE.strong : STROKE.light}
              />
            )}
            {!hidden && <circle cx={x} cy={y} r={2} fill={asked ? COPPER : SOFT} />}
            {picked === lug.ref && (
              <circle cx={x} cy={y} r={r + 5} fill="none" stroke={INK} stroke-width={2.5} />
            )}
            <text
              x={lug.labelAt.x}
              y={lug.labelAt.y + WHOLE_TEXT.lug * 0.36}
              text-anchor="middle"
              font-size={WHOLE_TEXT.lug}
              font-weight={asked ? 700 : 400}
              fill={asked ? INK : SOFT}
              stroke={PAPER}
              stroke-width={3}
              stroke-linejoin="round"
              paint-order="stroke"
            >
              {lug.label}
            </text>
          </g>
        );
      })}
    </g>
  );
};
