import { useEffect, useState } from 'preact/hooks';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import type { ReadingChange } from '../../diagnosis/reading-changes.ts';
import type { Trial } from '../../diagnosis/trial.ts';
import type { Job } from '../../notebook/job.ts';
import { tryingWords } from '../../words/en/trials.ts';
import { usePorts } from '../ports.ts';
import { CABLE_PER_METRE } from './trial-subject.ts';

/** A usual guitar cable, metres. */
export const USUAL_CABLE = 4.5;
const AMPLIFIER_OHMS = 1e6;
const loadOf = (metres: number) => ({ ohms: AMPLIFIER_OHMS, farads: metres * CABLE_PER_METRE });

/** Figures that change in less than this cannot be read, milliseconds. */
const UNREAD = 120;

/** The first one at once, and whatever follows once it has stood for a moment: a table that is laid out anew each frame holds up a drag. */
export function useSettled<T>(value: T | null): T | null {
  const [settled, settle] = useState(value);
  useEffect(() => {
    if (settled === null) return settle(value);
    const timer = setTimeout(() => settle(value), UNREAD);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}

/** Curves of the newest question; the last ones stay until newer ones are there. */
export function useTrial(
  before: Circuit,
  after: Circuit,
  setting: Setting,
  sweep: string | null,
  metres: number,
) {
  const { engine } = usePorts();
  const [trial, setTrial] = useState<Trial | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let here = true;
    engine
      .trial({
        before: { circuit: before, load: loadOf(USUAL_CABLE) },
        after: { circuit: after, load: loadOf(metres) },
        setting,
        sweep,
      })
      .then(
        (found) => {
          if (!here) return;
          setTrial(found);
          setFailed(null);
        },
        (error: unknown) => {
          const outdated = error instanceof Error && 'code' in error && error.code === 'outdated';
          if (here && !outdated)
            setFailed(error instanceof Error ? error.message : tryingWords().itCouldNotBeWorkedOut);
        },
      );
    return () => {
      here = false;
    };
  }, [before, after, setting, sweep, metres, engine]);
  return { trial, failed };
}

export function useChanges(job: Job, after: Circuit): readonly ReadingChange[] | null {
  const { engine } = usePorts();
  const [changes, setChanges] = useState<readonly ReadingChange[] | null>(null);
  useEffect(() => {
    let here = true;
    setChanges(null);
    if (after !== job.circuit)
      engine.changes({ before: job.circuit, after, meter: job.meter }).then(
        (found) => here && setChanges(found),
        () => here && setChanges(null),
      );
    return () => {
      here = false;
    };
  }, [job.circuit, job.meter, after, engine]);
  return changes;
}
