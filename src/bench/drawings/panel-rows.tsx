import { wrapWords } from './geometry.ts';
import { LAYERS, PanelDrawing } from './panel.tsx';
import type { Panel } from './scene.ts';
import { COPPER, INK, SOFT, TEXT } from './theme.ts';

const WIDTH = 360;
const EDGE = 4;
const GAP = 8;
const LINE = 18;
/** What a probe or a word may reach beyond its panel is still within the picture. */
const PAD = 2;

/** Rows of panels as one picture with its text alternative, and lines of copper text below. */
export function PanelRows(props: {
  rows: readonly (readonly Panel[])[];
  words: string;
  below?: readonly string[];
  /** How many layers of panels are drawn so far, from the first panel's lowest; all have their room from the start. */
  layers?: number;
}) {
  const { rows, words, below = [], layers = Number.POSITIVE_INFINITY } = props;
  const order = rows.flat();
  let y = 0;
  const placed = rows.map((panels) => {
    const heads = panels.map(headOf);
    const titles = Math.max(...heads.map((head) => head.title.length));
    const notes = Math.max(...heads.map((head) => head.notes.length));
    const top = y;
    const beside = panels[0]?.head === 'beside';
    const body = beside ? top + 4 : top + (titles + notes) * LINE + 4;
    y = body + Math.max(...panels.map((panel) => panel.frame.h)) + 4;
    return { panels, heads, titles, top, body, beside };
  });
  return (
    <svg
      role="img"
      aria-label={words}
      viewBox={`${-PAD} ${-PAD} ${WIDTH + 2 * PAD} ${y + below.length * LINE + 2 * PAD}`}
      width="100%"
      font-family="inherit"
      style={{ display: 'block', maxHeight: '100%' }}
    >
      <title>{words}</title>
      {placed.map(({ panels, heads, titles, top, body, beside }) =>
        panels.map((panel, i) => {
          const head = heads[i]!;
          const x = beside ? WIDTH - EDGE - panel.frame.w : EDGE + i * (panel.frame.w + GAP);
          return (
            <g key={panel.key}>
              <HeadLines
                head={head}
                x={beside ? EDGE : x + panel.frame.w / 2}
                y={beside ? top : top + (titles - head.title.length) * LINE}
                anchor={beside ? 'start' : 'middle'}
              />
              <g transform={`translate(${x} ${body})`}>
                <PanelDrawing panel={panel} layers={layers - LAYERS * order.indexOf(panel)} />
              </g>
            </g>
          );
        }),
      )}
      {below.map((line, n) => (
        <text
          key={line}
          x={WIDTH / 2}
          y={y + (n + 1) * LINE - 4}
          text-anchor="middle"
          font-size={TEXT.note}
          font-weight={600}
          fill={COPPER}
        >
          {line}
        </text>
      ))}
    </svg>
  );
}

interface Head {
  readonly title: readonly string[];
  readonly notes: readonly string[];
  readonly noteSize: number;
}

/** The title and which side is seen, broken into lines that fit where they stand. */
function headOf({ portrait, frame, head }: Panel): Head {
  const width = head === 'beside' ? WIDTH - frame.w - 2 * EDGE : frame.w;
  // Beside the drawing a wide letter may run into its margin; above it two titles share a row.
  const letters = (size: number) => Math.floor(width / (size * (head === 'beside' ? 0.55 : 0.6)));
  const { seen, count, brief } = portrait;
  const title = wrapWords(portrait.title, letters(TEXT.title));
  if (head === 'above' && frame.w < 200) {
    const words = brief ?? seen;
    // Narrow letters of system fonts let a short note run a little over the estimate.
    return { title, notes: wrapWords(words, letters(TEXT.brief) + 1), noteSize: TEXT.brief };
  }
  const notes = wrapWords(count ? `${seen}, ${count}` : seen, letters(TEXT.note));
  return { title, notes, noteSize: TEXT.note };
}

function HeadLines(props: { head: Head; x: number; y: number; anchor: 'start' | 'middle' }) {
  const { head, x, y, anchor } = props;
  return (
    <g text-anchor={anchor}>
      {head.title.map((line, n) => (
        <text
          key={line}
          x={x}
          y={y + (n + 1) * LINE - 4}
          font-size={TEXT.title}
          font-weight={600}
          fill={INK}
        >
          {line}
        </text>
      ))}
      {head.notes.map((line, n) => (
        <text
          key={line}
          x={x}
          y={y + (head.title.length + n + 1) * LINE - 4}
          font-size={head.noteSize}
          fill={SOFT}
        >
          {line}
        </text>
      ))}
    </g>
  );
}
