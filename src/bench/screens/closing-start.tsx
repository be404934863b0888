import type { Stage } from '../../closing/stage.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import { dateText } from '../../words/figures.ts';
import type { ClosingSay } from '../closing-actor.ts';
import { BigKey } from '../entry/choices.tsx';
import { Screen } from '../pieces/screen.tsx';
import { hrefOf } from '../route.ts';
import { stageWords } from '../words.ts';

interface StartProps {
  readonly job: Job;
  readonly strip: preact.ComponentChildren;
  readonly say: ClosingSay;
}

const stages: readonly { readonly stage: Stage; readonly note: string }[] = [
  {
    stage: 'open',
    get note() {
      return proofWords().showsMostEveryLugCanBeReached;
    },
  },
  {
    stage: 'mat',
    get note() {
      return proofWords().beforeItGoesIntoTheGuitar;
    },
  },
  {
    stage: 'closed',
    get note() {
      return proofWords().quickestAndSeesLeastTheJack;
    },
  },
];

/** How far the guitar is put together decides what can be read, and what cannot be seen. */
export function ClosingStart({ job, strip, say }: StartProps) {
  const last = job.checks?.findLast(({ endedAt }) => endedAt !== undefined);
  return (
    <Screen name="closing-start" title={proofWords().howFarIsItPutTogether} strip={strip}>
      <p>{proofWords().theFewestReadingsThatWould}</p>
      <div class="choices">
        {stages.map(({ stage, note }) => (
          <BigKey
            key={stage}
            says={stageWords(stage)}
            note={note}
            onPress={() => say({ type: 'START', stage })}
          />
        ))}
      </div>
      {last?.endedAt && (
        <p>
          <a href={hrefOf({ at: 'job', id: job.id, view: 'proof' })}>
            {proofWords().theCheckOf(dateText(last.endedAt))}
          </a>
        </p>
      )}
    </Screen>
  );
}
