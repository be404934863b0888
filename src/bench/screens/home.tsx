import { useEffect, useState } from 'preact/hooks';
import { guitarsOf } from '../../notebook/guitar.ts';
import type { JobSummary } from '../../notebook/index.ts';
import { isFound } from '../../notebook/search.ts';
import { homeWords } from '../../words/en/home.ts';
import { failureOf } from '../failure.ts';
import { useGrowing } from '../growing.ts';
import { Drafts } from '../pieces/drafts.tsx';
import { GuitarList } from '../pieces/guitar-list.tsx';
import { JobList } from '../pieces/job-list.tsx';
import { PutBack } from '../pieces/put-back.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { StartPractice } from '../practice/start-practice.tsx';
import { hrefOf } from '../route.ts';
import { offlineState } from '../update.ts';
import { Sheets } from './sheets.tsx';

type Shelf =
  | { readonly is: 'reading' }
  | {
      readonly is: 'ready';
      readonly jobs: readonly JobSummary[];
      readonly practised: readonly JobSummary[];
    }
  | { readonly is: 'failed'; readonly sentence: string };

/** With fewer jobs than this they are seen at a glance. */
const SEARCHED = 3;

/** The door in the player's words, and the guitars on the bench. */
export function Home() {
  const { notebook } = usePorts();
  const [shelf, setShelf] = useState<Shelf>({ is: 'reading' });
  const [wanted, setWanted] = useState('');
  const [removals, setRemovals] = useState(0);
  // The doors come first, and all that is kept on the phone in a task after them.
  const whole = useGrowing(2) === 2;
  useEffect(() => {
    const look = () =>
      notebook.withPractice().then(
        (found) => setShelf({ is: 'ready', ...found }),
        (error: unknown) => setShelf({ is: 'failed', sentence: failureOf(error) }),
      );
    void look();
    // Another tab may work on the same guitars.
    return notebook.watch(() => void look());
  }, [notebook, removals]);
  return (
    <Screen name="home" title={homeWords().lugwise}>
      <p>{homeWords().findsWhatIsWrongInYourGuitars}</p>
      <a class="door" href={hrefOf({ at: 'new' })}>
        <span class="says">{homeWords().somethingIsWrong}</span>
        <span class="note">{homeWords().silentWeakThinHummingCrackling}</span>
      </a>
      <a class="door" href={hrefOf({ at: 'check' })}>
        <span class="says">{homeWords().checkAJobBeforeClosing}</span>
        <span class="note">{homeWords().proveItBeforeThePlateGoes}</span>
      </a>
      <a class="door" href={hrefOf({ at: 'leads' })}>
        <span class="says">{homeWords().whichLeadDoesWhat}</span>
        <span class="note">{homeWords().aPickupWithLeadsOfUnknown}</span>
      </a>
      <a class="door" href={hrefOf({ at: 'together' })}>
        <span class="says">{homeWords().doTwoPickupsFight}</span>
        <span class="note">{homeWords().thinAndHollowWhereTheyPlay}</span>
      </a>
      <StartPractice
        says={homeWords().practiseOnAMadeUpGuitar}
        note={homeWords().noGuitarAndNoMeterNeeded}
      />
      {whole && (
        <>
          <PutBack key={removals} onPutBack={() => setRemovals(removals + 1)} />
          {shelf.is === 'ready' && shelf.jobs.length >= SEARCHED && (
            <label class="field-tall">
              <span>{homeWords().findAJobOrAGuitar}</span>
              <input
                type="search"
                value={wanted}
                onInput={({ currentTarget }) => setWanted(currentTarget.value)}
              />
            </label>
          )}
          <Jobs shelf={shelf} wanted={wanted} onRemoved={() => setRemovals(removals + 1)} />
          <Sheets
            key={`sheets ${removals}`}
            wanted={wanted}
            onRemoved={() => setRemovals(removals + 1)}
          />
          {wanted.trim() === '' && <Drafts />}
          {shelf.is === 'ready' && shelf.practised.length > 0 && wanted.trim() === '' && (
            <>
              <h2>{homeWords().practice}</h2>
              <JobList jobs={shelf.practised} view="hunt" />
            </>
          )}
          {/* Under a list whose length is not known yet it would move away from under a thumb. */}
          {shelf.is !== 'reading' && (
            <p class="row">
              <a href={hrefOf({ at: 'import' })}>{homeWords().bringInAJobFromAFile}</a>
              <a href={hrefOf({ at: 'notebook' })}>{homeWords().saveAllAndWhatWasRemoved}</a>
              <a href={hrefOf({ at: 'bench' })}>{homeWords().hearingVoiceAndLight}</a>
            </p>
          )}
          <p class="soft offline">{offlineWords[offlineState.value]}</p>
        </>
      )}
    </Screen>
  );
}

const offlineWords = {
  get preparing() {
    return homeWords().gettingReadyToWorkOffline;
  },
  get ready() {
    return homeWords().worksOfflineOnThisPhone;
  },
  get unavailable() {
    return homeWords().needsAConnectionHereThisPage;
  },
} as const;

interface JobsProps {
  readonly shelf: Shelf;
  readonly wanted: string;
  onRemoved(): void;
}

function Jobs({ shelf, wanted, onRemoved }: JobsProps) {
  if (shelf.is === 'reading') return <p class="soft">{homeWords().lookingForYourJobs}</p>;
  if (shelf.is === 'failed')
    return (
      <p role="alert" class="sentence">
        {homeWords().yourJobsCouldNotBeReadSentence(shelf.sentence)}
      </p>
    );
  if (wanted.trim() !== '') return <Found jobs={shelf.jobs} wanted={wanted} />;
  const open = shelf.jobs.filter(({ closedAt }) => closedAt === undefined);
  const guitars = guitarsOf(shelf.jobs);
  return (
    <>
      <h2>{homeWords().onTheBench}</h2>
      {open.length === 0 ? (
        <p class="soft">
          {shelf.jobs.length === 0
            ? homeWords().noGuitarYetEveryReadingYou
            : homeWords().noJobIsOpen}
        </p>
      ) : (
        <JobList jobs={open} view="hunt" onRemoved={onRemoved} />
      )}
      {guitars.length > 0 && (
        <>
          <h2>{homeWords().guitars}</h2>
          <GuitarList guitars={guitars} />
        </>
      )}
    </>
  );
}

/** Jobs of which a name, a wiring or what was repaired holds the words. */
function Found({ jobs, wanted }: { jobs: readonly JobSummary[]; wanted: string }) {
  const found = jobs.filter(({ title, guitar, wiring, done }) =>
    isFound(wanted, [title, guitar.title, wiring, ...done]),
  );
  return (
    <>
      <h2>{homeWords().found}</h2>
      <p role="status" class={found.length > 0 ? 'unseen' : 'soft'}>
        {found.length === 0 && homeWords().noJobHasTrimInItsName(wanted.trim())}
        {found.length > 0 && homeWords().countJobs(found.length)}
      </p>
      {found.length > 0 && <JobList jobs={found} view="hunt" />}
    </>
  );
}
