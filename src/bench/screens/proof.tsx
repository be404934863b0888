import { useEffect, useState } from 'preact/hooks';
import type { Closing } from '../../closing/closing.ts';
import { checkEvidence, type DoneCheck } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import { Photos } from '../pieces/photos.tsx';
import { Screen } from '../pieces/screen.tsx';
import { ShareText } from '../pieces/share-text.tsx';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';
import { ProofPage } from './proof-page.tsx';
import { proofText } from './proof-text.ts';

type Found =
  | { readonly is: 'working' }
  | { readonly is: 'ready'; readonly closing: Closing }
  | { readonly is: 'failed'; readonly sentence: string };

/** The record of a closing check, worked out again from its readings: to keep, to print on one page, to share. */
export function Proof({ job }: { job: Job }) {
  const ended = (job.checks ?? []).filter(({ endedAt }) => endedAt !== undefined);
  const [chosen, setChosen] = useState(ended.length - 1);
  const check = ended[chosen];
  const list = (
    <a class="plain" href={hrefOf({ at: 'job', id: job.id, view: 'closing' })}>
      {check ? proofWords().checkItAgain : proofWords().beginOne}
    </a>
  );
  if (!check)
    return (
      <Screen name="proof" title={proofWords().noClosingCheckYet} acts={list}>
        <p>{proofWords().noCheckOfThisGuitarWasBrought}</p>
      </Screen>
    );
  return (
    <Kept
      key={check.startedAt}
      job={job}
      check={check}
      again={list}
      older={chosen > 0 ? () => setChosen(chosen - 1) : undefined}
      newer={chosen < ended.length - 1 ? () => setChosen(chosen + 1) : undefined}
    />
  );
}

interface KeptProps {
  readonly job: Job;
  readonly check: DoneCheck;
  readonly again: preact.ComponentChildren;
  readonly older: (() => void) | undefined;
  readonly newer: (() => void) | undefined;
}

function Kept({ job, check, again, older, newer }: KeptProps) {
  const { engine } = usePorts();
  const [found, setFound] = useState<Found>({ is: 'working' });
  const ask = () => {
    let wanted = true;
    engine.close(checkEvidence(job, check)).then(
      (closing) => wanted && setFound({ is: 'ready', closing }),
      (error: unknown) =>
        wanted &&
        setFound({
          is: 'failed',
          sentence: error instanceof Error ? error.message : proofWords().noReasonWasGiven,
        }),
    );
    return () => {
      wanted = false;
    };
  };
  useEffect(ask, [engine, job, check]);
  return (
    <Screen
      name="proof"
      title={proofWords().closingCheck}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {proofWords().home}
          </a>
          {again}
          <button
            type="button"
            class="main"
            disabled={found.is !== 'ready'}
            onClick={() => window.print()}
          >
            {proofWords().print}
          </button>
        </>
      }
    >
      {(older || newer) && (
        <p class="row no-print">
          {older && (
            <button type="button" class="quiet" onClick={older}>
              {proofWords().theOneBefore}
            </button>
          )}
          {newer && (
            <button type="button" class="quiet" onClick={newer}>
              {proofWords().theOneAfter}
            </button>
          )}
        </p>
      )}
      {found.is === 'working' && <p class="soft">{proofWords().workingItOut}</p>}
      {found.is === 'failed' && (
        <>
          <p role="alert">{proofWords().thePageCouldNotBeMadeSentence(found.sentence)}</p>
          <p>
            <button type="button" class="plain" onClick={() => ask()}>
              {proofWords().tryAgain}
            </button>
          </p>
        </>
      )}
      {found.is === 'ready' && (
        <>
          <ProofPage job={job} check={check} closing={found.closing} />
          <Photos job={job.id} words={job.title} />
          <div class="no-print">
            <ShareText
              text={() => proofText(job, check, found.closing)}
              title={proofWords().jobClosingCheck(job.title)}
              at={check.endedAt ?? check.startedAt}
            />
          </div>
        </>
      )}
    </Screen>
  );
}
