import { useState } from 'preact/hooks';
import { DAYS_IN_BIN } from '../../notebook/bin.ts';
import { NotebookError } from '../../notebook/notebook-error.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';

interface RemoveProps {
  readonly title: string;
  readonly onRemove: (how?: 'forever') => Promise<void>;
}

/** Removes one record; where the phone has no room left even for the bin, for good and only when that is said. */
export function Remove({ title, onRemove }: RemoveProps) {
  const [failure, setFailure] = useState<{
    readonly full: boolean;
    readonly sentence: string;
  } | null>(null);
  const remove = (how?: 'forever') =>
    onRemove(how).catch((error: unknown) =>
      setFailure({
        full: error instanceof NotebookError && error.code === 'full',
        sentence: failureOf(error, keepingWords().couldNotRemove),
      }),
    );
  return (
    <details>
      <summary>{keepingWords().removeIt}</summary>
      <p>{keepingWords().canBePutBack(DAYS_IN_BIN)}</p>
      <button type="button" class="danger" onClick={() => remove()}>
        {keepingWords().removeTitle(title)}
      </button>
      {failure && (
        <p role="alert" class="sentence">
          {failure.full ? keepingWords().noRoomForBin : failure.sentence}
        </p>
      )}
      {failure?.full && (
        <button type="button" class="danger" onClick={() => remove('forever')}>
          {keepingWords().removeForGood(title)}
        </button>
      )}
    </details>
  );
}
