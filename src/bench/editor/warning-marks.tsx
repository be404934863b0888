import type { Warning } from '../../checks/warning.ts';
import type { LugRef } from '../../circuit/circuit.ts';
import type { WholeLayout } from '../drawings/whole/whole-layout.ts';

interface WarningMarksProps {
  readonly layout: WholeLayout;
  readonly warnings: readonly Warning[];
}

/** A flag with "!" at each lug that something stands out about; only for the eyes, the list says it in words. */
export function WarningMarks({ layout, warnings }: WarningMarksProps) {
  const { box } = layout;
  const first = new Set(warnings.flatMap(({ lugs }) => lugs.slice(0, 1)));
  return (
    <svg
      class="warning-marks"
      viewBox={`${box.x} ${box.y} ${box.w} ${box.h}`}
      width="100%"
      aria-hidden="true"
    >
      {[...first].map((lug) => {
        const at = spotOf(layout, lug);
        return (
          at && (
            <g key={lug} transform={`translate(${at.x + 9} ${at.y - 10})`}>
              <circle r={7.5} fill="var(--off)" stroke="var(--paper)" stroke-width={1.5} />
              <text
                y={4.5}
                text-anchor="middle"
                font-size={12}
                font-weight={800}
                fill="var(--paper)"
              >
                !
              </text>
            </g>
          )
        );
      })}
    </svg>
  );
}

/** Where a lug stands in the drawing. */
export function spotOf(
  { stands }: WholeLayout,
  lug: LugRef,
): { readonly x: number; readonly y: number } | null {
  for (const { at, footprint } of stands) {
    const spot = footprint.lugs.find(({ ref }) => ref === lug);
    if (spot) return { x: at.x + spot.at.x, y: at.y + spot.at.y };
  }
  return null;
}
