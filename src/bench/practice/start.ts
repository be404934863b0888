import { begunJob } from '../../notebook/begun-job.ts';
import { practiceWords } from '../../words/en/practice.ts';
import type { Ports } from '../ports.ts';
import { go } from '../route.ts';

/** Makes up a guitar with a hidden fault, keeps it as a practice job and opens its hunt. Rejects with a sentence. */
export async function startPractice({ engine, notebook, newId, now }: Ports): Promise<void> {
  const seed = newId();
  const { circuit, meter } = await engine.practiceStart(seed);
  const job = begunJob(
    {
      id: newId(),
      title: practiceWords().practiceGuitar,
      circuit,
      meter,
      // There is no back plate to take off.
      access: 'open',
      practice: { seed },
    },
    now(),
  );
  await notebook.write(job);
  go({ at: 'job', id: job.id, view: 'hunt' });
}
