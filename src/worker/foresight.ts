import { assess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { tongue } from '../words/area.ts';

/** Answers kept; one takes some tens of kilobytes. */
const KEPT = 16;

/** Whole answers worked out before they are asked for. They are what `work` gives, so that nothing depends on whether they came in time. */
export class Foresight {
  private readonly work: (evidence: Evidence) => Assessment;
  private readonly ready = new Map<string, Assessment>();

  constructor(work: (evidence: Evidence) => Assessment = assess) {
    this.work = work;
  }

  /** Works out the answer to this evidence, unless it is there. */
  keep(evidence: Evidence): void {
    this.answer(evidence);
  }

  /** The answer to this evidence, at once where it was foreseen. */
  answer(evidence: Evidence): Assessment {
    const key = keyOf(evidence);
    const known = this.ready.get(key);
    if (known) return renamed(known, evidence);
    const made = this.work(evidence);
    const oldest = this.ready.size >= KEPT ? this.ready.keys().next().value : undefined;
    if (oldest !== undefined) this.ready.delete(oldest);
    this.ready.set(key, made);
    return made;
  }
}

/** Equal for evidence that has the same answer but for the names of its readings, which do not exist before they are taken. */
function keyOf({ readings, ...rest }: Evidence): string {
  const taken = readings.map(({ ask, seen, round }) => [ask, seen, round]);
  return JSON.stringify([
    tongue(),
    Object.entries(rest).sort(([x], [y]) => (x < y ? -1 : 1)),
    taken,
  ]);
}

/** The reports of the readings stand last, in the order of the readings. */
function renamed(assessment: Assessment, { readings }: Evidence): Assessment {
  const first = assessment.readings.length - readings.length;
  return {
    ...assessment,
    readings: assessment.readings.map((report, at) => ({
      ...report,
      id: readings[at - first]?.id ?? report.id,
    })),
  };
}
