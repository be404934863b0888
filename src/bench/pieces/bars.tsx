import { useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { failureOf } from '../failure.ts';
import { retryStorage, storageTrouble } from '../phone-ports.ts';
import { usePorts } from '../ports.ts';
import { saveAll } from '../save-all.ts';
import { acceptUpdate, updateWaiting } from '../update.ts';

/** A newer version waits for a yes; until then nothing changes under the person's hands. */
export function UpdateBar() {
  if (!updateWaiting.value) return null;
  return (
    <aside class="update" aria-label={pieceWords().update}>
      <span>{pieceWords().aNewerVersionIsReadyYourJobs}</span>
      <button type="button" class="quiet" onClick={acceptUpdate}>
        {pieceWords().useItNow}
      </button>
    </aside>
  );
}

/** Work that this page alone holds: said on every screen until it is on the disk. */
export function StorageBar() {
  const ports = usePorts();
  const [said, setSaid] = useState<string | null>(null);
  const [trying, setTrying] = useState(false);
  if (storageTrouble.value === null) return null;
  const save = () =>
    saveAll(ports).then(
      () => setSaid(pieceWords().savedAsAFile),
      (error: unknown) => setSaid(failureOf(error)),
    );
  const again = async () => {
    setTrying(true);
    setSaid(null);
    await retryStorage();
    setTrying(false);
    // Where it went well the bar is gone.
    setSaid(pieceWords().triedAgainInVain);
  };
  return (
    <aside class="update trouble" aria-label={pieceWords().storage}>
      <span>
        {storageTrouble.value} <span role="status">{said}</span>
      </span>
      <span class="row">
        <button type="button" class="quiet" onClick={save}>
          {pieceWords().saveAllAsAFile}
        </button>
        <button type="button" class="quiet" disabled={trying} onClick={again}>
          {pieceWords().tryAgain}
        </button>
      </span>
    </aside>
  );
}
