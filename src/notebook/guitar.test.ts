import { expect, it } from 'vitest';
import { guitarsOf } from './guitar.ts';
import { emptyJob } from './job.fixture.ts';
import { summaryOf } from './job-summary.ts';

const job = (id: string, guitar: string, title: string) =>
  summaryOf({ ...emptyJob(), id, guitar: { id: guitar, title } });

it('gathers the jobs of each guitar, which is called as its newest job says', () => {
  const jobs = [job('d', 'red', 'Scarlet'), job('c', 'blue', 'Blue'), job('a', 'red', 'Red')];
  const found = guitarsOf(jobs).map(({ id, title, jobs: of }) => [
    id,
    title,
    of.map((one) => one.id),
  ]);
  expect(found).toEqual([
    ['red', 'Scarlet', ['d', 'a']],
    ['blue', 'Blue', ['c']],
  ]);
});
