import { useState } from 'preact/hooks';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';

interface RenameProps {
  readonly title: string;
  readonly what: 'job' | 'guitar';
  onRename(title: string): Promise<void>;
}

const words = (what: RenameProps['what']) => {
  const { anotherNameJob, nameOfJob, anotherNameGuitar, nameOfGuitar } = keepingWords();
  return what === 'job'
    ? { summary: anotherNameJob, field: nameOfJob }
    : { summary: anotherNameGuitar, field: nameOfGuitar };
};

export function Rename({ title, what, onRename }: RenameProps) {
  const [typed, setTyped] = useState(title);
  const [said, setSaid] = useState('');
  const wanted = typed.trim();
  return (
    <details>
      <summary>{words(what).summary}</summary>
      <label class="field-tall">
        <span>{words(what).field}</span>
        <input
          value={typed}
          maxLength={80}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <p class="row">
        <button
          type="button"
          class="plain"
          disabled={wanted === '' || wanted === title}
          onClick={() =>
            onRename(wanted).then(
              () => setSaid(keepingWords().renamed),
              (error: unknown) => setSaid(failureOf(error)),
            )
          }
        >
          {keepingWords().rename}
        </button>
        <span role="status" class="soft">
          {said}
        </span>
      </p>
    </details>
  );
}
