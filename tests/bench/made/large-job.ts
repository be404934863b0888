import { switchSettings } from '../../../src/circuit/setting.ts';
import type { Job } from '../../../src/notebook/job.ts';
import { atJack, jobCalled } from '../../e2e/notebook-data.ts';
import { sizedWiring } from './sized-wiring.ts';

export const LUGS = 80;

/** A job on a wiring of 80 lugs, one odd reading entered, so that pairs of faults are weighed. */
export function largeJob(): Job {
  const circuit = sizedWiring(LUGS, 'open');
  const [setting] = switchSettings(circuit);
  const reading = atJack('r1', '2026-03-01T11:00:00Z');
  return jobCalled('large', 'Large', {
    circuit,
    readings: [{ ...reading, ask: { ...reading.ask, setting: setting! } }],
  });
}
