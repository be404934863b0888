import { huntWords } from '../../words/en/hunt.ts';
import { dropHalfTold } from '../half-told.ts';
import { useEar } from '../hearing/use-ear.ts';
import { type Hunt, showsChange } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { Strip } from '../pieces/strip.tsx';
import { PracticeEnd } from '../practice/practice-end.tsx';
import { hrefOf } from '../route.ts';
import { huntNarration } from '../voice/hunt-narration.ts';
import { useNarration } from '../voice/narration.ts';
import { Asking } from './asking.tsx';
import { Cautions } from './cautions.tsx';
import { Changed } from './changed.tsx';
import { Closed } from './closed.tsx';
import { Doubtful } from './doubtful.tsx';
import { EngineFailed, StorageFailed } from './failed.tsx';
import { Help } from './help.tsx';
import { Jumping } from './jumping.tsx';
import { NothingLeft } from './nothing-left.tsx';
import { Opening } from './opening.tsx';
import { OwnReading } from './own-reading.tsx';
import { Repairing } from './repairing.tsx';
import { heardPlace, Symptom } from './symptom.tsx';
import { Verdict } from './verdict.tsx';

/** The screen for where the hunt stands. */
export function HuntScreen({ hunt }: { hunt: Hunt }) {
  const snapshot = hunt.snapshot.value;
  const { say } = hunt;
  useEar();
  useNarration(
    huntNarration(snapshot),
    snapshot.matches('changed') && snapshot.context.change?.report
      ? () => say({ type: 'ON' })
      : undefined,
  );
  const job = hunt.job();
  const { work, assessment, question, change, doubt, failure } = snapshot.context;
  const strip = <Strip job={job} snapshot={snapshot} say={say} />;
  const verdict = assessment?.verdict;
  const practice = job.practice && <PracticeEnd job={job} practice={job.practice} />;

  if (snapshot.matches('symptom'))
    return (
      <Symptom
        id={job.id}
        strip={strip}
        circuit={work.circuit}
        say={say}
        {...(job.practice && { practice: job.practice })}
      />
    );
  if (snapshot.matches('cautions'))
    return (
      <Cautions
        strip={strip}
        say={(said) => {
          // What was heard is in the job by now, and stays there.
          if (said.type === 'CAUTIONS_READ') dropHalfTold(heardPlace(job.id));
          say(said);
        }}
      />
    );
  if (snapshot.matches('opening') && question)
    return <Opening strip={strip} work={work} question={question} say={say} />;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return <Doubtful strip={strip} doubt={doubt} say={say} />;
  if (snapshot.matches({ asking: 'jumping' }) && question)
    return <Jumping strip={strip} circuit={work.circuit} ask={question.ask} say={say} />;
  if (snapshot.matches({ asking: 'help' }) && question)
    return <Help strip={strip} kind={question.ask.kind} say={say} />;
  if (snapshot.matches('asking') && question)
    return <Asking job={job} snapshot={snapshot} question={question} say={say} />;
  if (snapshot.matches('volunteering'))
    return (
      <OwnReading
        strip={strip}
        circuit={work.circuit}
        failure={failure}
        practice={job.practice !== undefined}
        say={say}
      />
    );
  if (showsChange(snapshot) && change)
    return <Changed strip={strip} job={job} change={change} say={say} />;
  if (snapshot.matches('verdict') && assessment && verdict)
    return (
      <Verdict
        strip={strip}
        work={work}
        map={hrefOf({ at: 'job', id: job.id, view: 'drawing' })}
        closing={hrefOf({ at: 'job', id: job.id, view: 'closing' })}
        assessment={assessment}
        verdict={verdict}
        practice={practice}
        say={say}
      />
    );
  if (snapshot.matches('repairing') && verdict)
    return <Repairing strip={strip} verdict={verdict} say={say} />;
  if (snapshot.matches('nothingLeft'))
    return <NothingLeft strip={strip} work={work} assessment={assessment} say={say} />;
  if (snapshot.matches('closed')) return <Closed strip={strip} job={job} say={say} />;
  if (snapshot.matches('engineFailed'))
    return <EngineFailed strip={strip} job={job} sentence={failure ?? ''} say={say} />;
  if (snapshot.matches('storageFailed'))
    return <StorageFailed strip={strip} job={job} sentence={failure ?? ''} say={say} />;
  return <Screen name="waiting" title={huntWords().workingItOut} strip={strip} />;
}
