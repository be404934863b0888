import { nameLines } from '../drawings/geometry.ts';
import { INK, SOFT, TEXT, textWidth } from '../drawings/theme.ts';

/** Longer names of leads take two lines. */
const SHORT = 12;
const LINE_STEP = 15;

const linesOf = (name: string): readonly string[] => nameLines(name, SHORT);

/** Width that a lead's name takes in a drawing. */
export const leadNameWidth = (name: string): number =>
  Math.max(...linesOf(name).map((line) => textWidth(line, TEXT.lead)));

interface LeadNameProps {
  readonly x: number;
  /** The middle of its row. */
  readonly y: number;
  readonly name: string;
  readonly tone?: 'strong' | 'plain' | 'soft';
}

/** A lead's name at the right of its lead, on as many lines as it takes. */
export function LeadName({ x, y, name, tone = 'plain' }: LeadNameProps) {
  const lines = linesOf(name);
  return (
    <text
      font-size={TEXT.lead}
      font-weight={tone === 'strong' ? '700' : '400'}
      fill={tone === 'soft' ? SOFT : INK}
    >
      {lines.map((line, at) => (
        <tspan key={line} x={x} y={y + 5 + (at - (lines.length - 1) / 2) * LINE_STEP}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
