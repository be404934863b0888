import { useState } from 'preact/hooks';
import { type Brought, LONGEST_COLLECTION, openFile } from '../../notebook/collection.ts';
import type { Plan } from '../../notebook/import-plan.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';
import { announce } from '../pieces/announce.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';
import { size } from '../storage.ts';
import { capital } from '../words.ts';
import { ImportPreview } from './import-preview.tsx';

/** Jobs, pickups or a whole notebook from a file, or from text that was copied on another phone. */
export function ImportJob() {
  const { notebook } = usePorts();
  const [text, setText] = useState('');
  const [failure, setFailure] = useState<string | null>(null);
  const [read, setRead] = useState<{ readonly brought: Brought; readonly plan: Plan } | null>(null);
  const fail = (sentence: string) => {
    setFailure(sentence);
    announce(sentence);
  };
  const look = async (from: string) => {
    const brought = openFile(from);
    if (!brought.ok) return fail(keepingWords().noJobToBringIn(capital(brought.sentence)));
    try {
      setRead({ brought, plan: await notebook.plan(brought) });
      setFailure(null);
    } catch (error) {
      fail(failureOf(error));
    }
  };
  const readFile = async (file: File | undefined) => {
    if (!file) return;
    // Before it is read: what is longer would fill the phone's memory first.
    if (file.size > LONGEST_COLLECTION)
      return fail(
        keepingWords().fileIsTooLarge(file.name, size(file.size), size(LONGEST_COLLECTION)),
      );
    const from = await file.text().catch(() => null);
    if (from === null) fail(keepingWords().fileCouldNotBeRead(file.name));
    else await look(from);
  };
  if (read)
    return <ImportPreview brought={read.brought} plan={read.plan} onBack={() => setRead(null)} />;
  return (
    <Screen
      name="import"
      title={keepingWords().bringInAJob}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {keepingWords().back}
          </a>
          <button
            type="button"
            class="main"
            disabled={text.trim() === ''}
            onClick={() => look(text)}
          >
            {keepingWords().lookAtTheText}
          </button>
        </>
      }
    >
      <p>{keepingWords().whatAFileHolds}</p>
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <label class="field-tall">
        <span>{keepingWords().fromAFile}</span>
        <input
          type="file"
          accept="application/json,.json"
          onChange={({ currentTarget }) => readFile(currentTarget.files?.[0])}
        />
      </label>
      <label class="field-tall">
        <span>{keepingWords().orPasteItsText}</span>
        <textarea
          rows={6}
          spellcheck={false}
          value={text}
          onInput={({ currentTarget }) => setText(currentTarget.value)}
        />
      </label>
    </Screen>
  );
}
