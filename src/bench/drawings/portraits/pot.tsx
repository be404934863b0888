import type { Pot, Switch } from '../../../circuit/parts/part.ts';
import { called } from '../../../words/called.ts';
import { drawingWords } from '../../../words/en/drawings.ts';
import { placeNames } from '../../../words/en/places.ts';
import { point } from '../geometry.ts';
import type { Frame, Portrait, Spot } from '../portrait.ts';
import { LINE, PAPER, SOFT, STROKE } from '../theme.ts';

/** From the back, lugs down, the clockwise end is on the left: common practice of the trade, and a matter of geometry. */
const FROM_THE_BACK = ['3', '2', '1'] as const;
/** Kept on one line by no-break spaces. */
const COUNT = FROM_THE_BACK.join('\u00a0');
const COUNT_UP = [...FROM_THE_BACK].reverse().join('\u00a0');

/** A pot from the back; with `carried`, the switch block of a push-pull or push-push sits on its back. */
export function potPortrait(pot: Pot, carried: Switch | undefined, frame: Frame): Portrait {
  const s = frame.scale;
  const cx = frame.w / 2;
  const r = 40 * s;
  const cy = 34 * s + r;
  const floor = cy + r;
  const pitch = 38 * s;
  const spots = new Map<string, Spot>();
  for (const [i, lug] of FROM_THE_BACK.entries()) {
    const at = point(cx + (i - 1) * pitch, floor + 32 + 2 * s);
    spots.set(`${pot.id}.${lug}`, {
      at,
      radius: 7.5 * s,
      side: 'down',
      label: lug,
      labelAt: point(at.x, at.y - 13),
      anchor: 'middle',
      shape: 'eyelet',
    });
  }
  spots.set(`${pot.id}.case`, {
    at: carried ? point(cx + r * 0.8, cy - r * 0.82) : point(cx, cy - r * 0.5),
    radius: 9 * s,
    side: 'up',
    label: placeNames().lug('case'),
    labelAt: carried ? point(cx + r * 0.8 + 17 * s, cy - r * 0.82 + 6) : point(cx, cy + r * 0.3),
    anchor: carried ? 'start' : 'middle',
    shape: 'blob',
  });
  const block = carried ? switchBlock(carried, cx, cy + 6, s, spots) : null;
  return {
    title: called(pot.title),
    seen: drawingWords().seenFromTheBack,
    count: drawingWords().lugsDownCOUNT(COUNT),
    brief: drawingWords().fromTheBackCOUNT(COUNT),
    turned: {
      count: drawingWords().lugsUpCOUNTUP(COUNT_UP),
      brief: drawingWords().fromTheBackLugsUpCOUNTUP(COUNT_UP),
    },
    spots,
    body: (
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light}>
        <rect
          x={cx - pitch - 15}
          y={floor - 16}
          width={2 * pitch + 30}
          height={24}
          rx={5}
          fill={PAPER}
        />
        {FROM_THE_BACK.map((lug, i) => (
          <path
            key={lug}
            d={`M${cx + (i - 1) * pitch - 10 * s} ${floor + 8}v${24 + 2 * (s - 1)}a${10 * s} ${10 * s} 0 0 0 ${20 * s} 0v-${24 + 2 * (s - 1)}z`}
            fill={PAPER}
          />
        ))}
        <circle cx={cx} cy={cy} r={r} fill={PAPER} />
        <circle cx={cx} cy={cy} r={r - 5} stroke={LINE} />
        <path d={`M${cx - r * 0.9} ${cy + r * 0.44}l-7 6M${cx + r * 0.9} ${cy + r * 0.44}l7 6`} />
        {block}
      </g>
    ),
  };
}

/** The block's lugs in their rows, added to the pot's spots. */
function switchBlock(carried: Switch, cx: number, cy: number, s: number, spots: Map<string, Spot>) {
  const pitch = 25 * s;
  const half = 34 * s;
  const top = cy - ((carried.rows.length - 1) * pitch) / 2;
  for (const [row, lugs] of carried.rows.entries()) {
    for (const [column, lug] of lugs.entries()) {
      const x = lugs.length === 1 ? cx : cx - half + (2 * half * column) / (lugs.length - 1);
      const left = column < lugs.length / 2;
      spots.set(`${carried.id}.${lug}`, {
        at: point(x, top + row * pitch),
        radius: 6,
        side: left ? 'left' : 'right',
        label: lug,
        labelAt: point(x + (left ? 9 : -9), top + row * pitch + 5),
        anchor: left ? 'start' : 'end',
        shape: 'eyelet',
      });
    }
  }
  const height = carried.rows.length * pitch;
  return (
    <rect
      x={cx - half - 9}
      y={cy - height / 2}
      width={2 * half + 18}
      height={height}
      rx={4}
      fill={PAPER}
    />
  );
}
