import type { GuitarSummary } from '../../notebook/guitar.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { dateText } from '../../words/figures.ts';
import { hrefOf } from '../route.ts';

/** Guitars by name, each a way to its jobs. */
export const GuitarList = ({ guitars }: { guitars: readonly GuitarSummary[] }) => (
  <ul class="list">
    {guitars.map(({ id, title, jobs }) => (
      <li key={id}>
        <a class="list-row" href={hrefOf({ at: 'guitar', id, view: 'jobs' })}>
          <span class="says">{title || keepingWords().aGuitar}</span>
          <span class="note">{guitarNote(jobs)}</span>
        </a>
      </li>
    ))}
  </ul>
);

function guitarNote(jobs: GuitarSummary['jobs']): string {
  const { jobsNeverChecked, jobsChecked } = keepingWords();
  const checked = jobs
    .flatMap(({ checkedAt }) => checkedAt ?? [])
    .sort()
    .at(-1);
  if (checked === undefined) return jobsNeverChecked(jobs.length);
  return jobsChecked(jobs.length, dateText(checked));
}
