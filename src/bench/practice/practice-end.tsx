import { useEffect, useState } from 'preact/hooks';
import type { Job } from '../../notebook/job.ts';
import type { PracticeFault } from '../../practice/reading.ts';
import { practiceWords } from '../../words/en/practice.ts';
import { usePorts } from '../ports.ts';
import { StartPractice } from './start-practice.tsx';

interface PracticeEndProps {
  readonly job: Job;
  readonly practice: NonNullable<Job['practice']>;
}

/** Whether what was hidden has been found. Until it was mended or given up, it is told only on asking. */
export function PracticeEnd({ job, practice }: PracticeEndProps) {
  const { engine } = usePorts();
  const [fault, setFault] = useState<PracticeFault | null>(null);
  const repairs = job.repairs.map(({ repair }) => repair);
  useEffect(() => {
    engine.practiceFault({ seed: practice.seed, repairs }).then(setFault, () => {
      // The hunt's own screens say what is wrong with the engine.
    });
  }, [engine, practice.seed, repairs.join()]);
  if (!fault) return null;
  const hidden = <p>{practiceWords().hiddenInThisGuitarSentence(fault.sentence)}</p>;
  if (!fault.found && job.closedAt === undefined)
    return (
      <details class="practice-end">
        <summary>{practiceWords().showWhatIsHidden}</summary>
        {hidden}
        <p>{practiceWords().itIsMendedByThisFault(fault.title)}</p>
      </details>
    );
  return (
    <section class="practice-end" data-found={fault.found}>
      <h2>{fault.found ? practiceWords().youFoundIt : practiceWords().notFoundThisTime}</h2>
      {hidden}
      {!fault.found && <p>{practiceWords().itIsMendedByThisFault(fault.title)}</p>}
      <StartPractice says={practiceWords().anotherPracticeGuitar} />
    </section>
  );
}
