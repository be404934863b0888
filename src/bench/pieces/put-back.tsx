import { useEffect, useState } from 'preact/hooks';
import type { Removed } from '../../notebook/bin.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { failureOf } from '../failure.ts';
import { usePorts } from '../ports.ts';
import { putBack, removedName } from '../put-back.ts';

/** So long the home screen offers to put back what was removed last, milliseconds. After that the notebook's page does. */
const OFFERED = 60 * 60_000;

/** On the home screen: what was removed last comes back at a touch. */
export function PutBack({ onPutBack = () => undefined }: { onPutBack?(): void }) {
  const ports = usePorts();
  const { notebook } = ports;
  const [last, setLast] = useState<Omit<Removed, 'record'> | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const look = () =>
    notebook.bin.list().then(
      ([newest]) => {
        const age = newest ? Date.parse(ports.now()) - Date.parse(newest.removedAt) : OFFERED;
        setLast(newest && age < OFFERED ? newest : null);
      },
      () => {
        // The list of jobs says that the notebook cannot be read.
        setLast(null);
      },
    );
  useEffect(() => void look(), [notebook]);
  if (!last) return null;
  return (
    <p role="status" class="row-between">
      <span>{failure ?? keepingWords().removedName(removedName(last))}</span>
      <button
        type="button"
        class="quiet"
        onClick={() =>
          putBack(ports, last)
            .then(onPutBack)
            .then(look, (error: unknown) => setFailure(failureOf(error)))
        }
      >
        {keepingWords().putBack}
      </button>
    </p>
  );
}
