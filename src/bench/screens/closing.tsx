import { checkUnderWay } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import { useClosing } from '../closing-actor.ts';
import { useEar } from '../hearing/use-ear.ts';
import { Screen } from '../pieces/screen.tsx';
import { closingNarration } from '../voice/closing-narration.ts';
import { useNarration } from '../voice/narration.ts';
import { Cautions } from './cautions.tsx';
import { ClosingAsking } from './closing-asking.tsx';
import { ClosingFailed } from './closing-failed.tsx';
import { ClosingList } from './closing-list.tsx';
import { ClosingPassed } from './closing-passed.tsx';
import { ClosingStart } from './closing-start.tsx';
import { ClosingStrip } from './closing-strip.tsx';
import { Doubtful } from './doubtful.tsx';
import { EngineFailed, StorageFailed } from './failed.tsx';
import { Help } from './help.tsx';
import { Jumping } from './jumping.tsx';

/** The closing check of one job, from how far it is put together to the page that proves it. */
export function ClosingPage({ job: opened }: { job: Job }) {
  const check = useClosing(opened);
  const snapshot = check.snapshot.value;
  const { say } = check;
  useNarration(closingNarration(snapshot));
  const job = check.job();
  const { closing, item, doubt, failure } = snapshot.context;
  // Few lists ask for a beep: for those that do not, nobody listens.
  useEar(closing?.items.some(({ ask }) => ask.kind === 'beep') ?? false);
  const strip = <ClosingStrip job={job} snapshot={snapshot} say={say} />;
  if (snapshot.matches('starting')) return <ClosingStart job={job} strip={strip} say={say} />;
  if (snapshot.matches('cautions')) return <Cautions strip={strip} say={say} />;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return <Doubtful strip={strip} doubt={doubt} say={say} />;
  if (snapshot.matches({ asking: 'jumping' }) && item)
    return <Jumping strip={strip} circuit={job.circuit} ask={item.ask} say={say} />;
  if (snapshot.matches({ asking: 'help' }) && item)
    return <Help strip={strip} kind={item.ask.kind} say={say} />;
  if (snapshot.matches('asking') && closing && item)
    return <ClosingAsking snapshot={snapshot} item={item} strip={strip} say={say} />;
  if (snapshot.matches('list') && closing)
    return <ClosingList job={job} closing={closing} strip={strip} say={say} />;
  if (snapshot.matches('failed') && closing)
    return <ClosingFailed job={job} closing={closing} strip={strip} say={say} />;
  if ((snapshot.matches('passed') || snapshot.matches('halfway')) && closing)
    return <ClosingPassed job={job} closing={closing} strip={strip} say={say} />;
  if (snapshot.matches('engineFailed'))
    return <EngineFailed strip={strip} job={job} sentence={failure ?? ''} say={say} />;
  if (snapshot.matches('storageFailed'))
    return <StorageFailed strip={strip} job={job} sentence={failure ?? ''} say={say} />;
  return (
    <Screen
      name="waiting"
      title={
        closing || !checkUnderWay(job)
          ? proofWords().workingItOut
          : proofWords().lookingForTheShortestList
      }
      strip={strip}
    />
  );
}
