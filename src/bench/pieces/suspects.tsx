import type { SuspectedRepair } from '../../diagnosis/assessment.ts';
import { percent } from '../words.ts';

interface SuspectsProps {
  readonly suspects: readonly SuspectedRepair[];
  readonly most: number;
}

/** The likeliest, each with its share as a bar and a figure. */
export const Suspects = ({ suspects, most }: SuspectsProps) => (
  <ol class="suspect-list">
    {suspects.slice(0, most).map(({ repair, title, probability }) => (
      <li key={repair}>
        <span class="suspect-title">{title}</span>
        <span class="suspect-share">{percent(probability)}</span>
        <span class="bar" aria-hidden="true">
          <span class="bar-fill" style={{ width: `${(100 * probability).toFixed(1)}%` }} />
        </span>
      </li>
    ))}
  </ol>
);
