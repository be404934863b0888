/** Colours by token, so that one drawing serves both themes. The second value stands in where the page sets none. */
export const PAPER = 'var(--paper, #FAF7F1)';
export const INK = 'var(--ink, #1E2426)';
export const SOFT = 'var(--soft, #566066)';
export const LINE = 'var(--line, #CFC8BA)';
export const COPPER = 'var(--copper, #9A4A12)';
/** The two probes keep their colour in both themes: they are things, not signals. */
export const PROBE_RED = '#C4302B';
export const PROBE_BLACK = '#16191A';
export const PROBE_LETTER = '#FFFFFF';

/** Stroke widths in drawing units (about one CSS pixel on a phone 390 wide). */
export const STROKE = { hair: 1.25, light: 1.75, strong: 3 } as const;

/** Text sizes in drawing units. The smallest stays above 12 px on a phone 390 wide. */
export const TEXT = { title: 16, note: 14, brief: 13, lug: 15, lead: 14 } as const;

/** Upper estimate of the width of a line of text; system fonts differ, the widest decides. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.6;
