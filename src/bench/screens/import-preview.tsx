import { useState } from 'preact/hooks';
import type { Brought } from '../../notebook/collection.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import type { Plan, Planned } from '../../notebook/import-plan.ts';
import type { Sheet } from '../../notebook/index.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';
import { announce } from '../pieces/announce.tsx';
import { Screen } from '../pieces/screen.tsx';
import { type Ports, usePorts } from '../ports.ts';
import { go } from '../route.ts';
import { routeOfSheet } from '../sheet-route.ts';
import { capital } from '../words.ts';

interface PreviewProps {
  readonly brought: Brought;
  readonly plan: Plan;
  onBack(): void;
}

const doesWords = (does: Planned['does']): string => {
  const { isNew, isTheSame, isJoined, isCopied, isRefused } = keepingWords();
  return { new: isNew, nothing: isTheSame, joins: isJoined, copy: isCopied, refused: isRefused }[
    does
  ];
};

const keyOf = ({ what, id }: Pick<Planned, 'what' | 'id'>): string => `${what} ${id}`;

/** What a file would change on this phone, record by record, before anything does. */
export function ImportPreview({ brought, plan, onBack }: PreviewProps) {
  const ports = usePorts();
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [failure, setFailure] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const lines = plan.records.filter(({ what }) => what !== 'photos');
  const photos = plan.records.filter(({ what }) => what === 'photos');
  const newPhotos = photos.filter(({ does }) => does === 'new').length;
  const lost = photos.filter(({ does }) => does === 'refused').length;
  const chosen = wished(brought, left);
  const changes = lines.filter((one) => one.put && !left.has(keyOf(one))).length;
  const nothing = changes === 0 && newPhotos === 0 && brought.drafts.length === 0;

  const take = async () => {
    setBusy(true);
    try {
      await ports.notebook.takeIn(chosen);
      for (const draft of brought.drafts) await takeDraft(ports, draft);
      announce(keepingWords().isBroughtIn);
      go(
        placeAfter(
          lines.filter((one) => !left.has(keyOf(one))),
          chosen.sheets,
        ),
      );
    } catch (error) {
      setBusy(false);
      setFailure(keepingWords().nothingWasChanged(failureOf(error)));
    }
  };

  return (
    <Screen
      name="import-preview"
      title={keepingWords().whatItWouldChange}
      acts={
        <>
          <button type="button" class="plain" onClick={onBack}>
            {keepingWords().back}
          </button>
          <button type="button" class="main" disabled={nothing || busy} onClick={take}>
            {keepingWords().bringItIn}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      {nothing && plan.refused.length === 0 && <p>{keepingWords().nothingNew}</p>}
      <ul class="list">
        {lines.map((one) => (
          <li key={keyOf(one)}>
            <Line
              one={one}
              taken={!left.has(keyOf(one))}
              onTaken={(taken) => {
                const next = new Set(left);
                if (taken) next.delete(keyOf(one));
                else next.add(keyOf(one));
                setLeft(next);
              }}
            />
          </li>
        ))}
        {plan.refused.map(({ title, sentence }, at) => (
          <li key={`refused ${at}`} class="list-row">
            <span class="says">{title}</span>
            <span class="note">{keepingWords().cannotBeRead(sentence)}</span>
          </li>
        ))}
      </ul>
      {newPhotos > 0 && <p>{keepingWords().photosCome(newPhotos)}</p>}
      {lost > 0 && <p class="sentence">{keepingWords().photosStayOut(lost)}</p>}
      {brought.drafts.length > 0 && <p>{keepingWords().drawingsCome(brought.drafts.length)}</p>}
    </Screen>
  );
}

function Line({
  one,
  taken,
  onTaken,
}: {
  readonly one: Planned;
  readonly taken: boolean;
  onTaken(taken: boolean): void;
}) {
  const words = (
    <span class="option-title">
      <span class="says">{capital(one.title || keepingWords().withoutAName)}</span>
      <span class="note">
        {doesWords(one.does)} {one.notes.join(' ')}
      </span>
    </span>
  );
  if (!one.put) return <div class="list-row">{words}</div>;
  return (
    <label class="list-row tick">
      <input
        type="checkbox"
        checked={taken}
        onChange={({ currentTarget }) => onTaken(currentTarget.checked)}
      />
      {words}
    </label>
  );
}

/** A drawing that is here under the same id and is not the same stays; the other comes beside it. */
async function takeDraft({ drafts, newId }: Ports, draft: WiringDraft): Promise<void> {
  const here = await drafts.read(draft.id);
  if (here && JSON.stringify(here) === JSON.stringify(draft)) return;
  await drafts.write(here ? { ...draft, id: newId() } : draft);
}

/** What is left of the file once the records in `left` are taken out, with their photos. */
function wished(brought: Brought, left: ReadonlySet<string>): Brought {
  const stays = (what: Planned['what']) => (one: { readonly id: string }) =>
    !left.has(keyOf({ what, id: one.id }));
  return {
    ...brought,
    jobs: brought.jobs.filter(stays('jobs')),
    sheets: brought.sheets.filter(stays('sheets')),
    photos: brought.photos.filter(({ job }) => stays('jobs')({ id: job })),
  };
}

/** Into the one record that was brought, or home where there are more. */
function placeAfter(lines: readonly Planned[], sheets: readonly Sheet[]) {
  const [only, more] = lines.filter(({ put }) => put);
  if (!only?.put || more) return { at: 'home' } as const;
  if (only.what === 'jobs') return { at: 'job', id: only.put.id, view: 'hunt' } as const;
  const sheet = sheets.find(({ id }) => id === only.id);
  return sheet ? routeOfSheet({ ...sheet, id: only.put.id }) : ({ at: 'home' } as const);
}
