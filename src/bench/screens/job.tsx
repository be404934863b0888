import { useEffect, useState } from 'preact/hooks';
import { restingSetting } from '../../circuit/setting.ts';
import { copiedJob } from '../../notebook/begun-job.ts';
import type { Job } from '../../notebook/job.ts';
import type { Ask } from '../../readings/reading.ts';
import { deskWords } from '../../words/en/desk.ts';
import { useDrawn } from '../answered.ts';
import { type Hunt, useHunt } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { Strip } from '../pieces/strip.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf, type JobView } from '../route.ts';
import { ReadingCard } from './card.tsx';
import { ClosingPage } from './closing.tsx';
import { HuntScreen } from './hunt.tsx';
import { Proof } from './proof.tsx';
import { JobRecord } from './record.tsx';
import { TrialScreen } from './trial.tsx';
import { Values } from './values.tsx';
import { type Looking, WholeWiring } from './whole-wiring.tsx';

type Found =
  | { readonly is: 'reading' }
  | { readonly is: 'found'; readonly job: Job }
  | { readonly is: 'missing'; readonly sentence: string };

/** Takes a job from the notebook and goes on with it where it stood. */
export function JobPage({ id, view }: { id: string; view: JobView }) {
  const { notebook } = usePorts();
  const [found, setFound] = useState<Found>({ is: 'reading' });
  const [readings, setReadings] = useState(0);
  useEffect(() => {
    let here = true;
    setFound({ is: 'reading' });
    const unwatch = notebook.watch((notice) => {
      if (notice.id !== id || notice.what !== 'removed') return;
      setFound({ is: 'missing', sentence: deskWords().itWasRemovedInAnotherTab });
    });
    notebook.read(id).then(
      // Reading it back and the first screen of its hunt are each a task of their own.
      (job) => setTimeout(() => here && setFound({ is: 'found', job }), 0),
      (error: unknown) =>
        setFound({
          is: 'missing',
          sentence: error instanceof Error ? error.message : deskWords().itCouldNotBeRead,
        }),
    );
    return () => {
      here = false;
      unwatch();
    };
  }, [id, notebook, readings]);
  if (found.is === 'reading') return <Screen name="waiting" title={deskWords().openingTheJob} />;
  if (found.is === 'found') {
    if (view === 'closing') return <ClosingPage job={found.job} />;
    if (view === 'proof') return <Proof job={found.job} />;
    return <OpenJob job={found.job} view={view} onRewritten={() => setReadings(readings + 1)} />;
  }
  return (
    <Screen
      name="missing"
      title={deskWords().thisJobCannotBeOpened}
      acts={
        <a class="main" href={hrefOf({ at: 'home' })}>
          {deskWords().home}
        </a>
      }
    >
      <p role="alert">{found.sentence}</p>
    </Screen>
  );
}

interface OpenJobProps {
  readonly job: Job;
  readonly view: Exclude<JobView, 'closing' | 'proof'>;
  /** The job was written past the hunt, which holds it as it was: it is read anew. */
  onRewritten(): void;
}

function OpenJob(props: OpenJobProps) {
  const hunt = useHunt(props.job);
  if (!hunt) return <Screen name="waiting" title={deskWords().openingTheJob} />;
  return <StandingJob {...props} hunt={hunt} />;
}

function StandingJob({ job, hunt, view, onRewritten }: OpenJobProps & { readonly hunt: Hunt }) {
  const { notebook, newId, now } = usePorts();
  const snapshot = hunt.snapshot.value;
  const isStoring = snapshot.matches('taking') || snapshot.matches('saving');
  useDrawn(snapshot, isStoring);
  const present = hunt.job();
  const strip = <Strip job={present} snapshot={snapshot} say={hunt.say} />;
  const { assessment } = snapshot.context;
  const [backTo, setBackTo] = useState<'card' | 'drawing' | null>(null);
  const answered = snapshot.matches('changed');
  useEffect(() => {
    if (!backTo || !answered) return;
    setBackTo(null);
    go({ at: 'job', id: job.id, view: backTo });
  }, [backTo, answered, job.id]);
  const take = (ask: Ask, then: 'card' | 'drawing' | 'hunt') => {
    hunt.say({ type: 'OWN_ASK', ask });
    setBackTo(then === 'hunt' ? null : then);
    go({ at: 'job', id: job.id, view: 'hunt' });
  };
  // What lies open on the drawing is still open after a reading.
  const [looking, setLooking] = useState<Looking>(() => ({
    site: null,
    setting: restingSetting(job.circuit),
  }));
  switch (view) {
    case 'drawing':
      return (
        <WholeWiring
          strip={strip}
          job={present}
          assessment={assessment}
          looking={looking}
          storing={isStoring || snapshot.matches('storageFailed')}
          unsaved={snapshot.matches('storageFailed')}
          say={hunt.say}
          onLooking={setLooking}
          onTake={(ask) => take(ask, 'drawing')}
        />
      );
    case 'card':
      return (
        <ReadingCard
          strip={strip}
          job={present}
          reports={assessment?.readings ?? []}
          onTake={take}
        />
      );
    case 'values':
      return <Values strip={strip} job={present} say={hunt.say} />;
    case 'trial':
      return <TrialScreen strip={strip} job={present} say={hunt.say} />;
    case 'record':
      return (
        <JobRecord
          strip={strip}
          job={present}
          assessment={assessment}
          onClose={() => {
            hunt.say({ type: 'CLOSE' });
            go({ at: 'job', id: job.id, view: 'hunt' });
          }}
          onRename={async (title) => {
            // A guitar with the name of its job is renamed with it.
            const guitar =
              present.guitar.title === present.title
                ? { ...present.guitar, title }
                : present.guitar;
            await notebook.write({ ...present, title, guitar, changedAt: now() });
            onRewritten();
          }}
          onCopy={async () => {
            const copy = copiedJob(present, newId(), deskWords().presentCopy(present.title), now());
            await notebook.write(copy);
            go({ at: 'job', id: copy.id, view: 'record' });
          }}
          onRemove={async (how) => {
            await notebook.remove(job.id, how);
            go({ at: 'home' });
          }}
        />
      );
    case 'hunt':
      return <HuntScreen hunt={hunt} />;
  }
}
