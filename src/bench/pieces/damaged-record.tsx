import { useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { failureOf } from '../failure.ts';
import { saveText } from './save-text.ts';

interface DamagedRecordProps {
  readonly title: string;
  /** Why it cannot be opened. */
  readonly sentence: string;
  readonly record: Parameters<typeof saveText>[1] & { readonly id: string };
  /** Where it lies. */
  readonly shelf: {
    rescue(id: string): Promise<string>;
    remove(id: string): Promise<void>;
  };
  onRemoved(): void;
}

/** What cannot be opened can still be carried away, and removed: it lies with what was removed and can be put back as it was. */
export function DamagedRecord({ title, sentence, record, shelf, onRemoved }: DamagedRecordProps) {
  const [failure, setFailure] = useState<string | null>(null);
  const save = async () => {
    try {
      saveText(await shelf.rescue(record.id), record);
    } catch (error) {
      setFailure(failureOf(error, pieceWords().itCouldNotBeReadAtAll));
    }
  };
  const remove = () =>
    shelf.remove(record.id).then(onRemoved, (error: unknown) => setFailure(failureOf(error)));
  return (
    <div class="list-row">
      <span class="says">{title}</span>
      <span class="note">{failure ?? sentence}</span>
      <button type="button" class="quiet" onClick={save}>
        {pieceWords().saveAsAFile}
      </button>
      <button type="button" class="quiet" onClick={remove}>
        {pieceWords().remove}
      </button>
    </div>
  );
}
