import { useEffect, useState } from 'preact/hooks';
import type { Warning } from '../../checks/warning.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import { editorWords } from '../../words/en/editor.ts';
import { usePorts } from '../ports.ts';

/** What stands out in the wiring as it is now. */
export type Findings =
  | { readonly is: 'looking'; readonly warnings: readonly Warning[] }
  | { readonly is: 'looked'; readonly warnings: readonly Warning[] }
  | { readonly is: 'failed'; readonly warnings: readonly Warning[]; readonly sentence: string };

/** Milliseconds without an act before the engine is asked. */
const PAUSE = 150;

/** Asks the engine after each act; while it works, what stood out before stays. */
export function useWarnings(circuit: Circuit): Findings {
  const { engine } = usePorts();
  const [findings, setFindings] = useState<Findings>({ is: 'looking', warnings: [] });
  useEffect(() => {
    if (circuit.parts.length === 0) {
      setFindings({ is: 'looked', warnings: [] });
      return;
    }
    let newest = true;
    setFindings(({ warnings }) => ({ is: 'looking', warnings }));
    const timer = setTimeout(() => {
      engine.check(circuit).then(
        (warnings) => newest && setFindings({ is: 'looked', warnings }),
        (error: unknown) =>
          newest &&
          setFindings({
            is: 'failed',
            warnings: [],
            sentence: error instanceof Error ? error.message : editorWords().noReasonWasGiven,
          }),
      );
    }, PAUSE);
    return () => {
      newest = false;
      clearTimeout(timer);
    };
  }, [circuit, engine]);
  return findings;
}
