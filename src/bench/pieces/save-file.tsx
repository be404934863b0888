import { useState } from 'preact/hooks';
import { exportJob } from '../../notebook/exchange.ts';
import type { Job, Sheet } from '../../notebook/index.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { usePorts } from '../ports.ts';
import { withPhotos } from '../save-all.ts';
import { saveText } from './save-text.ts';

/** Hands the job over as a file, with its photos if it has any, or as text where a phone keeps no files. */
export function SaveFile({ job }: { job: Job | Sheet }) {
  const ports = usePorts();
  const [said, setSaid] = useState('');
  const save = async () => {
    // Where photos cannot be read the job alone is saved: it matters more.
    const photos = await ports.notebook.photos.of(job.id).catch(() => []);
    if (photos.length === 0 || job.format !== 'lugwise-job') {
      saveText(exportJob(job), job);
      setSaid(pieceWords().savedAsAFile);
    } else {
      saveText(await withPhotos(ports, [job]), job);
      setSaid(pieceWords().savedAsAFileWithItsPhotos);
    }
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(exportJob(job));
      setSaid(pieceWords().copied);
    } catch {
      setSaid(pieceWords().thisPhoneDoesNotLetAnApp);
    }
  };
  return (
    <div class="row">
      <button type="button" class="plain" onClick={save}>
        {pieceWords().saveAsAFile}
      </button>
      <button type="button" class="plain" onClick={copy}>
        {pieceWords().copyAsText}
      </button>
      <span role="status" class="soft">
        {said}
      </span>
    </div>
  );
}
