import { useEffect, useState } from 'preact/hooks';
import { type GuitarSummary, guitarsOf } from '../../notebook/guitar.ts';
import type { Job } from '../../notebook/job.ts';
import { called } from '../../words/called.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { JobList } from '../pieces/job-list.tsx';
import { Rename } from '../pieces/rename.tsx';
import { saveText } from '../pieces/save-text.ts';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { type GuitarView, hrefOf } from '../route.ts';
import { withPhotos } from '../save-all.ts';
import { MeasuredValues } from './measured-values.tsx';
import { NextJob } from './next-job.tsx';

type Found =
  | { readonly is: 'reading' }
  /** `newest` is the newest job that can be opened; null where none can. */
  | { readonly is: 'found'; readonly guitar: GuitarSummary; readonly newest: Job | null }
  | { readonly is: 'missing'; readonly sentence: string };

/** One guitar: its jobs over time, and what a new one would start from. */
export function GuitarPage({ id, view }: { id: string; view: GuitarView }) {
  const { notebook } = usePorts();
  const [found, setFound] = useState<Found>({ is: 'reading' });
  const look = async (): Promise<void> => {
    const guitar = guitarsOf(await notebook.list()).find((one) => one.id === id);
    if (!guitar) return setFound({ is: 'missing', sentence: keepingWords().noJobOnIt });
    const sound = guitar.jobs.find(({ damaged }) => damaged === undefined);
    setFound({ is: 'found', guitar, newest: sound ? await notebook.read(sound.id) : null });
  };
  useEffect(() => {
    const lookSafely = () =>
      look().catch((error: unknown) => setFound({ is: 'missing', sentence: failureOf(error) }));
    void lookSafely();
    return notebook.watch(() => void lookSafely());
  }, [id, notebook]);
  if (found.is === 'reading')
    return <Screen name="waiting" title={keepingWords().openingTheGuitar} />;
  if (found.is === 'missing')
    return (
      <Screen
        name="missing"
        title={keepingWords().guitarNotHere}
        acts={
          <a class="main" href={hrefOf({ at: 'home' })}>
            {keepingWords().home}
          </a>
        }
      >
        <p role="alert">{found.sentence}</p>
      </Screen>
    );
  const { guitar, newest } = found;
  if (view === 'new-job' && newest) return <NextJob guitar={guitar} job={newest} />;
  return <Guitar guitar={guitar} newest={newest} onChanged={look} />;
}

interface GuitarProps {
  readonly guitar: GuitarSummary;
  readonly newest: Job | null;
  onChanged(): Promise<void>;
}

function Guitar({ guitar, newest, onChanged }: GuitarProps) {
  const ports = usePorts();
  const { notebook } = ports;
  const [said, setSaid] = useState('');
  const sound = guitar.jobs.filter(({ damaged }) => damaged === undefined);
  const read = () => Promise.all(sound.map(({ id }) => notebook.read(id)));
  const rename = async (title: string) => {
    for (const job of await read())
      await notebook.write({ ...job, guitar: { ...job.guitar, title }, changedAt: ports.now() });
    await onChanged();
  };
  const save = async () => {
    try {
      const text = await withPhotos(ports, await read());
      saveText(text, { title: guitar.title, changedAt: ports.now() });
      setSaid(keepingWords().savedAsAFile);
    } catch (error) {
      setSaid(failureOf(error));
    }
  };
  return (
    <Screen
      name="guitar"
      title={guitar.title || keepingWords().aGuitar}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {keepingWords().home}
          </a>
          {newest && (
            <a class="main" href={hrefOf({ at: 'guitar', id: guitar.id, view: 'new-job' })}>
              {keepingWords().newJobOnIt}
            </a>
          )}
        </>
      }
    >
      {newest && (
        <>
          <p class="soft wiring-words">{called(newest.circuit.title)}</p>
          <p class="row">
            <a href={hrefOf({ at: 'job', id: newest.id, view: 'drawing' })}>
              {keepingWords().theWiring}
            </a>
            <a href={hrefOf({ at: 'job', id: newest.id, view: 'card' })}>
              {keepingWords().readingCard}
            </a>
          </p>
        </>
      )}
      <LastCheck jobs={sound} />
      <h2>{keepingWords().jobs}</h2>
      <JobList jobs={guitar.jobs} view="hunt" onRemoved={() => void onChanged()} />
      {newest && <MeasuredValues circuit={newest.circuit} />}
      <h2>{keepingWords().keepIt}</h2>
      <div class="row">
        <button type="button" class="plain" onClick={save}>
          {keepingWords().saveItsJobs}
        </button>
        <span role="status" class="soft">
          {said}
        </span>
      </div>
      {newest && <Rename title={guitar.title} what="guitar" onRename={rename} />}
    </Screen>
  );
}

/** When the guitar was last proved, and the page that says so. */
function LastCheck({ jobs }: { jobs: GuitarSummary['jobs'] }) {
  const [last] = jobs
    .flatMap(({ id, checkedAt }) => (checkedAt ? [{ id, checkedAt }] : []))
    .sort((a, b) => (a.checkedAt < b.checkedAt ? 1 : -1));
  if (!last) return <p>{keepingWords().neverChecked}</p>;
  return (
    <p>
      {keepingWords().lastCheck}{' '}
      <a href={hrefOf({ at: 'job', id: last.id, view: 'proof' })}>{dateText(last.checkedAt)}</a>
    </p>
  );
}
