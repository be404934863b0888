import { useEffect, useErrorBoundary, useMemo } from 'preact/hooks';
import { decimalSign } from '../words/figures.ts';
import './styles/index.css';
import { nextTask } from './next-task.ts';
import { phonePorts } from './phone-ports.ts';
import { Announcer } from './pieces/announce.tsx';
import { StorageBar, UpdateBar } from './pieces/bars.tsx';
import { later } from './pieces/later.tsx';
import { type Ports, PortsProvider } from './ports.ts';
import { route } from './route.ts';
import { Broken } from './screens/broken.tsx';
import { Home } from './screens/home.tsx';

// The first screen needs none of these: they come while it is read.
const conversations = [() => import('../flows/hunt.ts'), () => import('../flows/closing.ts')];
const job = later(() => import('./screens/job.tsx').then(({ JobPage }) => JobPage), conversations);
const newJob = later(
  () => import('./screens/new-job.tsx').then(({ NewJob }) => NewJob),
  conversations,
);
const importing = later(() =>
  import('./screens/import-job.tsx').then(({ ImportJob }) => ImportJob),
);
const checking = later(() => import('./screens/check.tsx').then(({ CheckDoor }) => CheckDoor));
const editor = later(() => import('./screens/editor.tsx').then(({ EditorPage }) => EditorPage));
const benchPage = later(() => import('./screens/bench.tsx').then(({ BenchPage }) => BenchPage));
const leads = later(() =>
  import('./screens/sort-telling.tsx').then(({ SortTelling }) => SortTelling),
);
const pickup = later(() => import('./screens/sort.tsx').then(({ PickupPage }) => PickupPage));
const together = later(() =>
  import('./screens/together.tsx').then(({ TogetherPage }) => TogetherPage),
);

const notebookPage = later(() =>
  import('./screens/notebook.tsx').then(({ NotebookPage }) => NotebookPage),
);
const guitar = later(() => import('./screens/guitar.tsx').then(({ GuitarPage }) => GuitarPage));

/** What the first screen leads to, one after the other: all at once they hold up what is touched meanwhile. */
async function fetchAhead(): Promise<void> {
  for (const screen of [
    newJob,
    job,
    importing,
    leads,
    pickup,
    together,
    editor,
    checking,
    benchPage,
    notebookPage,
    guitar,
  ]) {
    await nextTask();
    await screen.fetchAhead();
  }
}

/** The whole bench. Tests hand in their own ports. */
export function App({ ports }: { ports?: Ports }) {
  const used = useMemo(() => ports ?? phonePorts(), [ports]);
  return (
    <PortsProvider value={used}>
      <UpdateBar />
      <StorageBar />
      <Place />
      <Announcer />
    </PortsProvider>
  );
}

function Place() {
  const to = route.value;
  const [broken, mend] = useErrorBoundary((error: unknown) => console.error(error));
  useEffect(() => {
    void fetchAhead();
    // Some locale's decimal sign is asked of the browser, which takes longer than a frame: now, and not under a finger.
    const timer = setTimeout(decimalSign, 1500);
    return () => clearTimeout(timer);
  }, []);
  if (broken) return <Broken onAgain={mend} />;
  switch (to.at) {
    case 'home':
      return <Home />;
    case 'new':
      return <newJob.Screen />;
    case 'new-check':
      return <newJob.Screen view="closing" />;
    case 'check':
      return <checking.Screen />;
    case 'import':
      return <importing.Screen />;
    case 'leads':
      return <leads.Screen />;
    case 'draw':
      return <editor.Screen key={to.id} id={to.id} />;
    case 'bench':
      return <benchPage.Screen />;
    case 'notebook':
      return <notebookPage.Screen />;
    case 'guitar':
      return <guitar.Screen key={`${to.id} ${to.view}`} id={to.id} view={to.view} />;
    case 'pickup':
      return <pickup.Screen key={to.id} id={to.id} view={to.view} />;
    case 'together':
      return <together.Screen key={`${to.id} ${to.beside}`} id={to.id} beside={to.beside} />;
    case 'job':
      // A hunt and a closing check each hold the job as they read it: going from one to the other reads it anew.
      return (
        <job.Screen
          key={`${to.id} ${to.view === 'closing' || to.view === 'proof' ? to.view : ''}`}
          id={to.id}
          view={to.view}
        />
      );
  }
}
