import { useEffect, useState } from 'preact/hooks';
import { DAYS_IN_BIN, type Removed } from '../../notebook/bin.ts';
import { guitarsOf } from '../../notebook/guitar.ts';
import { MOST_PHOTOS } from '../../notebook/photo.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { putBack, removedName } from '../put-back.ts';
import { hrefOf } from '../route.ts';
import { saveAll } from '../save-all.ts';
import { askToKeep, lookAtRoom, room, size } from '../storage.ts';

interface Kept {
  readonly jobs: number;
  readonly guitars: number;
  readonly sheets: number;
  readonly photos: { readonly count: number; readonly bytes: number };
  readonly bin: readonly Omit<Removed, 'record'>[];
}

/** What is kept on this phone, how safely, and what was removed from it. */
export function NotebookPage() {
  const ports = usePorts();
  const { notebook } = ports;
  const [kept, setKept] = useState<Kept | null>(null);
  const [said, setSaid] = useState('');
  const [failure, setFailure] = useState<string | null>(null);
  const look = async () => {
    const [jobs, sheets, photos, bin] = await Promise.all([
      notebook.list(),
      notebook.sheets.list(),
      notebook.photos.size(),
      notebook.bin.list(),
    ]);
    const guitars = guitarsOf(jobs).length;
    setKept({ jobs: jobs.length, guitars, sheets: sheets.length, photos, bin });
    await lookAtRoom();
  };
  const tried = (act: () => Promise<unknown>) =>
    act().catch((error: unknown) => setFailure(failureOf(error)));
  useEffect(() => {
    void tried(look);
    return notebook.watch(() => void tried(look));
  }, [notebook]);
  return (
    <Screen
      name="notebook"
      title={keepingWords().yourNotebook}
      acts={
        <a class="main" href={hrefOf({ at: 'home' })}>
          {keepingWords().home}
        </a>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      {kept && <Contents kept={kept} />}
      <h2>{keepingWords().saveIt}</h2>
      <p>{keepingWords().oneFileWithAll}</p>
      <div class="row">
        <button
          type="button"
          class="plain"
          onClick={() =>
            tried(async () => {
              await saveAll(ports);
              setSaid(keepingWords().savedAsAFile);
            })
          }
        >
          {keepingWords().saveAllAsAFile}
        </button>
        <a href={hrefOf({ at: 'import' })}>{keepingWords().bringInFromAFile}</a>
        <span role="status" class="soft">
          {said}
        </span>
      </div>
      <h2>{keepingWords().storage}</h2>
      <Storage />
      <h2>{keepingWords().removed}</h2>
      {kept && (
        <Bin
          bin={kept.bin}
          onPutBack={(one) =>
            tried(async () => {
              await putBack(ports, one);
              await look();
            })
          }
          onEmpty={() =>
            tried(async () => {
              await notebook.bin.empty();
              await look();
            })
          }
        />
      )}
    </Screen>
  );
}

function Contents({ kept: { jobs, guitars, sheets, photos } }: { kept: Kept }) {
  const words = keepingWords();
  const rows: readonly (readonly [string, string])[] = [
    [words.jobs, String(jobs)],
    [words.guitars, String(guitars)],
    [words.pickups, String(sheets)],
    [
      words.photos,
      photos.count === 0
        ? words.noPhotos(size(MOST_PHOTOS.ofAll))
        : words.photosOf(photos.count, size(photos.bytes), size(MOST_PHOTOS.ofAll)),
    ],
  ];
  return (
    <dl class="facts">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Storage() {
  const now = room.value;
  if (!now) return <p class="soft">{keepingWords().looking}</p>;
  return (
    <>
      <p>{now.kept ? keepingWords().browserKeeps : keepingWords().browserMayClear}</p>
      {now.kept === false && (
        <p>
          <button type="button" class="plain" onClick={() => void askToKeep()}>
            {keepingWords().askToKeep}
          </button>
        </p>
      )}
      {now.used !== null && now.left !== null && (
        <p class="soft">{keepingWords().roomTaken(size(now.used), size(now.left))}</p>
      )}
    </>
  );
}

interface BinProps {
  readonly bin: Kept['bin'];
  onPutBack(one: Kept['bin'][number]): void;
  onEmpty(): void;
}

function Bin({ bin, onPutBack, onEmpty }: BinProps) {
  const [doubted, setDoubted] = useState(false);
  if (bin.length === 0) return <p class="soft">{keepingWords().nothingRemoved(DAYS_IN_BIN)}</p>;
  return (
    <>
      <ul class="list">
        {bin.map((one) => (
          <li key={one.id} class="row-between">
            <span>
              <span class="says">{removedName(one)}</span>
              <span class="note">{keepingWords().removedOn(dateText(one.removedAt))}</span>
            </span>
            <button
              type="button"
              class="quiet"
              aria-label={keepingWords().putBackName(removedName(one))}
              onClick={() => onPutBack(one)}
            >
              {keepingWords().putBack}
            </button>
          </li>
        ))}
      </ul>
      <p>
        <button
          type="button"
          class={doubted ? 'danger' : 'quiet'}
          onClick={() => {
            if (doubted) onEmpty();
            setDoubted(!doubted);
          }}
        >
          {doubted ? keepingWords().reallyForGood : keepingWords().emptyForGood}
        </button>
      </p>
      <p class="soft">{keepingWords().keptForDays(DAYS_IN_BIN)}</p>
    </>
  );
}
