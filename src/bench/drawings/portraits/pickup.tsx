import type { Coil, Metal } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { INK, LINE, PAPER, SOFT, STROKE } from '../theme.ts';

export interface PickupParts {
  readonly title: string;
  readonly coils: readonly Coil[];
  readonly plate?: Metal;
  readonly cover?: Metal;
}

/** Centre line of each coil in a portrait of this frame; the marks over a coil stand on it. */
export function coilCentres(count: number, frame: Frame): { x: number; y: number; half: number }[] {
  const s = frame.scale;
  const pitch = 54 * s;
  return Array.from({ length: count }, (_, i) => ({
    x: frame.w / 2 - 6,
    y: frame.h / 2 + (i - (count - 1) / 2) * pitch,
    half: 17 * s,
  }));
}

/** A pickup from the top: coils as ovals with start on the left and finish on the right, on a plate with two ears. */
export function pickupPortrait(
  pickup: PickupParts,
  frame: Frame,
  strong: ReadonlySet<string>,
): Portrait {
  const s = frame.scale;
  const centres = coilCentres(pickup.coils.length, frame);
  const cx = frame.w / 2 - 6;
  const cy = frame.h / 2;
  const reach = 53 * s;
  const spots = new Map<string, Spot>();
  const top = (centres[0]?.y ?? cy) - 27 * s;
  const bottom = (centres.at(-1)?.y ?? cy) + 27 * s;
  for (const [i, coil] of pickup.coils.entries()) {
    const centre = centres[i]!;
    const up = i < (pickup.coils.length - 1) / 2;
    const labelY = up ? top - 5 : bottom + 16;
    spots.set(`${coil.id}.start`, end(cx - reach, centre.y, up, 'start', cx - reach + 7, labelY));
    spots.set(`${coil.id}.finish`, end(cx + reach, centre.y, up, 'finish', cx + reach - 7, labelY));
  }
  const single = pickup.coils.length === 1;
  for (const [metal, sign, word] of [
    [pickup.plate, 1, placeNames().plate],
    [pickup.cover, -1, placeNames().cover],
  ] as const) {
    if (!metal) continue;
    spots.set(`${metal.id}.metal`, {
      at: point(cx + sign * (reach + 17 * s), cy),
      radius: 7,
      side: single ? 'up' : 'down',
      label: word,
      labelAt: single
        ? point(cx + sign * (reach - 2), top - 5)
        : point(cx + sign * (reach - 6), cy + 5),
      anchor: sign > 0 ? 'end' : 'start',
      shape: 'patch',
    });
  }
  const places = new Set(pickup.coils.map((coil) => coil.place));
  const metal = Boolean(pickup.plate ?? pickup.cover);
  return {
    title: called(pickup.title),
    seen: drawingWords().seenFromTheTop,
    brief: places.has('screw') ? drawingWords().slotsScrewCoil : drawingWords().fromTheTop,
    ...(places.has('screw') && { count: drawingWords().slotsScrewCoil }),
    spots,
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        {metal && (
          <path
            d={`M${cx - reach - 9 * s} ${top}H${cx + reach + 9 * s}V${cy - 14}h${8 * s}q${8 * s} 0 ${8 * s} 14t${-8 * s} 14h${-8 * s}V${bottom}H${cx - reach - 9 * s}V${cy + 14}h${-8 * s}q${-8 * s} 0 ${-8 * s} -14t${8 * s} -14h${8 * s}z`}
            fill={PAPER}
            stroke-linejoin="round"
          />
        )}
        {pickup.coils.map((coil, i) => {
          const { y, half } = centres[i]!;
          const asked = strong.has(coil.id);
          return (
            <g key={coil.id}>
              <rect
                x={cx - reach}
                y={y - half}
                width={2 * reach}
                height={2 * half}
                rx={half}
                fill={PAPER}
                stroke={asked ? INK : SOFT}
                stroke-width={asked ? STROKE.strong : STROKE.light}
              />
              <rect
                x={cx - reach + 4}
                y={y - half + 4}
                width={2 * reach - 8}
                height={2 * half - 8}
                rx={half - 4}
                stroke={LINE}
              />
              {[-2.5, -1.5, -0.5, 0.5, 1.5, 2.5].map((step) => (
                <Pole key={step} x={cx + step * 13.5 * s} y={y} s={s} place={coil.place} />
              ))}
            </g>
          );
        })}
      </g>
    ),
  };
}

function end(
  x: number,
  y: number,
  up: boolean,
  which: 'start' | 'finish',
  labelX: number,
  labelY: number,
): Spot {
  return {
    at: point(x, y),
    radius: 7,
    side: up ? 'up' : 'down',
    label: placeNames().lug(which),
    labelAt: point(labelX, labelY),
    anchor: which === 'start' ? 'start' : 'end',
    shape: 'eyelet',
  };
}

/** Screws have a slot, slugs are plain, other poles are rings. */
function Pole({ x, y, s, place }: { x: number; y: number; s: number; place: Coil['place'] }) {
  if (place === 'slug') return <circle cx={x} cy={y} r={3.6 * s} fill={SOFT} stroke="none" />;
  return (
    <g stroke-width={1.25}>
      <circle cx={x} cy={y} r={4.4 * s} />
      {place === 'screw' && <path d={`M${x - 3 * s} ${y + 2 * s}L${x + 3 * s} ${y - 2 * s}`} />}
    </g>
  );
}
