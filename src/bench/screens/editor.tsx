import { useEffect, useState } from 'preact/hooks';
import { begunJob } from '../../notebook/begun-job.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import type { Job } from '../../notebook/job.ts';
import { refitted, rewired } from '../../notebook/rewire.ts';
import { deskWords } from '../../words/en/desk.ts';
import { Desk } from '../editor/desk.tsx';
import { usualMeter } from '../entry/meter-fields.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf } from '../route.ts';
import { placeWords, seenWords } from '../words.ts';

type Found =
  | { readonly is: 'reading' }
  | { readonly is: 'found'; readonly draft: WiringDraft; readonly job: Job | null }
  | { readonly is: 'missing'; readonly sentence: string };

/** A wiring on the drawing board, as its draft left it. */
export function EditorPage({ id }: { id: string }) {
  const ports = usePorts();
  const [found, setFound] = useState<Found>({ is: 'reading' });
  useEffect(() => {
    const look = async (): Promise<Found> => {
      const draft = await ports.drafts.read(id);
      if (!draft) return { is: 'missing', sentence: deskWords().itWasUsedAlreadyOrItIs };
      return { is: 'found', draft, job: draft.job ? await ports.notebook.read(draft.job) : null };
    };
    look().then(setFound, (error: unknown) =>
      setFound({
        is: 'missing',
        sentence: error instanceof Error ? error.message : deskWords().itCouldNotBeRead,
      }),
    );
  }, [id, ports]);
  if (found.is === 'reading')
    return <Screen name="waiting" title={deskWords().openingTheDrawing} />;
  if (found.is === 'missing')
    return (
      <Screen
        name="missing"
        title={deskWords().thisDrawingCannotBeOpened}
        acts={
          <a class="main" href={hrefOf({ at: 'home' })}>
            {deskWords().home}
          </a>
        }
      >
        <p role="alert">{found.sentence}</p>
      </Screen>
    );
  const { job } = found;
  const words = (reading: Job['readings'][number]) =>
    job ? `${placeWords(job.circuit, reading.ask)}: ${seenWords(reading.seen)}` : '';
  const use = async (draft: WiringDraft) => {
    const at = ports.now();
    const { circuit, places } = draft.now;
    // What other tabs did to the job since it was opened is in the notebook.
    const next = draft.job
      ? rewired(await ports.notebook.read(draft.job), { circuit, places }, words, at)
      : begunJob(
          {
            id: ports.newId(),
            title: draft.title.trim() || deskWords().myGuitar,
            circuit,
            places,
            meter: usualMeter,
            access: draft.access,
          },
          at,
        );
    await ports.notebook.write(next);
    await ports.drafts.remove(draft.id);
    go({ at: 'job', id: next.id, view: 'hunt' });
  };
  return (
    <Desk
      opened={found.draft}
      lostIn={({ now }) =>
        job
          ? job.readings
              .filter(({ ask }) => refitted(job.circuit, now.circuit, ask) === null)
              .map(words)
          : []
      }
      use={use}
    />
  );
}
