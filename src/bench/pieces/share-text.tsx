import { useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { saveText } from './save-text.ts';

interface ShareProps {
  /** Made when it is asked for. */
  text(): string;
  readonly title: string;
  /** ISO 8601, for the name of the file. */
  readonly at: string;
}

/** Hands a page over as a text file: by the phone's own way of sharing where it has one, else as a download. */
export function ShareText({ text, title, at }: ShareProps) {
  const [said, setSaid] = useState('');
  const save = () => {
    saveText(text(), { title, changedAt: at }, 'txt');
    setSaid(pieceWords().savedAsAFile);
  };
  const share = async () => {
    const file = new File([text()], `${title}.txt`, { type: 'text/plain' });
    try {
      await navigator.share({ title, files: [file] });
      setSaid(pieceWords().shared);
    } catch (error) {
      // Put away by the person: nothing to say.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      save();
    }
  };
  const can = 'share' in navigator;
  return (
    <div class="row">
      {can && (
        <button type="button" class="plain" onClick={share}>
          {pieceWords().share}
        </button>
      )}
      <button type="button" class="plain" onClick={save}>
        {pieceWords().saveAsAFile}
      </button>
      <span role="status" class="soft">
        {said}
      </span>
    </div>
  );
}
