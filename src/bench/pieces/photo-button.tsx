import { useState } from 'preact/hooks';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';
import { smallPhoto } from '../photo-file.ts';
import { usePorts } from '../ports.ts';
import { announce } from './announce.tsx';

interface PhotoButtonProps {
  /** Id of the job. */
  readonly job: string;
  /** What the photo will show. */
  readonly words: string;
  readonly label: string;
  readonly onAdded?: () => void;
}

/** Takes a photo, or one from the phone, makes it small and keeps it with the job. */
export function PhotoButton({ job, words, label, onAdded }: PhotoButtonProps) {
  const ports = usePorts();
  const [said, setSaid] = useState<{ readonly words: string; readonly bad: boolean } | null>(null);
  const add = async (file: File | undefined) => {
    if (!file) return;
    setSaid({ words: keepingWords().makingSmall, bad: false });
    try {
      const photo = await smallPhoto(file);
      await ports.notebook.photos.add({ ...photo, id: ports.newId(), job, words, at: ports.now() });
      setSaid({ words: keepingWords().photoKept, bad: false });
      announce(keepingWords().photoKept);
      onAdded?.();
    } catch (error) {
      setSaid({ words: failureOf(error, keepingWords().photoCouldNotBeKept), bad: true });
    }
  };
  return (
    <>
      <label class="pick quiet">
        {label}
        <input
          type="file"
          class="unseen"
          accept="image/*"
          onChange={async ({ currentTarget }) => {
            await add(currentTarget.files?.[0]);
            // The same picture may be chosen again.
            currentTarget.value = '';
          }}
        />
      </label>
      {said && (
        <span role={said.bad ? 'alert' : 'status'} class={said.bad ? undefined : 'soft'}>
          {said.words}
        </span>
      )}
    </>
  );
}
