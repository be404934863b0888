import type { Evidence, Standing } from '../diagnosis/assessment.ts';
import type { Ports } from './ports.ts';

/** Has the engine say what is believed while what it is believed from is still being stored; it is shown once that is done. */
export function earlyStanding({ engine }: Pick<Ports, 'engine'>) {
  let early: { readonly told: string; readonly standing: Promise<Standing> } | undefined;
  return {
    begin(evidence: Evidence): void {
      const standing = engine.stand(evidence);
      // Whoever takes it up is told of a failure.
      standing.catch(() => {});
      early = { told: JSON.stringify(evidence), standing };
    },
    /** What was begun, where storing changed nothing in it, as another tab can. */
    of(evidence: Evidence): Promise<Standing> {
      const begun = early?.told === JSON.stringify(evidence) ? early.standing : undefined;
      early = undefined;
      return begun ?? engine.stand(evidence);
    },
  };
}
