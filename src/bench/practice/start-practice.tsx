import { useState } from 'preact/hooks';
import { practiceWords } from '../../words/en/practice.ts';
import { usePorts } from '../ports.ts';

interface StartPracticeProps {
  readonly says: string;
  readonly note?: string;
}

/** One touch makes up a guitar and starts a hunt on it. */
export function StartPractice({ says, note }: StartPracticeProps) {
  const ports = usePorts();
  const [failure, setFailure] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const start = async () => {
    setBusy(true);
    try {
      const { startPractice } = await import('./start.ts');
      await startPractice(ports);
    } catch (error) {
      setFailure(error instanceof Error ? error.message : practiceWords().itCouldNotBeStarted);
    }
    setBusy(false);
  };
  return (
    <>
      <button type="button" class="door door-light" disabled={busy} onClick={start}>
        <span class="says">{says}</span>
        {note && <span class="note">{note}</span>}
      </button>
      {failure && <p role="alert">{failure}</p>}
    </>
  );
}
