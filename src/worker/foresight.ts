import { type Begun, beginToAssess } from '../diagnosis/assess.ts';
import type { Assessment, Evidence, Standing } from '../diagnosis/assessment.ts';
import type { Rests } from '../diagnosis/rests.ts';
import { tongue } from '../words/area.ts';

/** Answers kept; one takes some tens of kilobytes. */
const KEPT = 16;
/** Answers that were begun and left, to be gone on with where they were: those that are looked ahead to, and what is typed. */
const BEGUN = 12;
/** Faults told of each repair: the screens name no more, and what is not sent need not be read. */
const FAULTS = 1;

/** Whole answers worked out before they are asked for. They are what `begin` gives, so that nothing depends on whether they came in time. */
export class Foresight {
  private readonly begin: (evidence: Evidence) => Begun;
  private readonly ready = new Map<string, Assessment>();
  private readonly begun = new Map<string, Begun>();

  constructor(begin: (evidence: Evidence) => Begun = beginToAssess) {
    this.begin = begin;
  }

  /** What is believed after this evidence: in one piece, as somebody waits for it. */
  stand(evidence: Evidence): Standing {
    const key = keyOf(evidence);
    try {
      const { suspects, readings, suspicion, liveSuspects } =
        this.ready.get(key) ?? brief(this.under(key, evidence).stand());
      return renamed({ suspects, readings, suspicion, liveSuspects }, evidence);
    } catch (error) {
      this.begun.delete(key);
      throw error;
    }
  }

  /** Works out what is believed after this evidence, and leaves the rest of its answer for later. */
  *believe(evidence: Evidence): Rests<void> {
    const key = keyOf(evidence);
    if (!this.ready.has(key)) yield* this.under(key, evidence).believed;
  }

  /** The answer to this evidence, at once where it was foreseen, and from where it was left where it was begun. */
  *answer(evidence: Evidence): Rests<Assessment> {
    const key = keyOf(evidence);
    const known = this.ready.get(key);
    if (known) return renamed(known, evidence);
    const { rest } = this.under(key, evidence);
    yield;
    try {
      const made = brief(yield* rest);
      keep(this.ready, key, made, KEPT);
      return renamed(made, evidence);
    } finally {
      // Whoever is left in the middle never comes here: then it stays, to be gone on with.
      this.begun.delete(key);
    }
  }

  private under(key: string, evidence: Evidence): Begun {
    const known = this.begun.get(key);
    if (known) return known;
    const fresh = this.begin(evidence);
    keep(this.begun, key, fresh, BEGUN);
    return fresh;
  }
}

/** The oldest makes room. */
function keep<Value>(kept: Map<string, Value>, key: string, value: Value, most: number): void {
  const oldest = kept.size >= most ? kept.keys().next().value : undefined;
  if (oldest !== undefined) kept.delete(oldest);
  kept.set(key, value);
}

const brief = <Told extends Standing>(told: Told): Told => ({
  ...told,
  suspects: told.suspects.map((one) => ({ ...one, faults: one.faults.slice(0, FAULTS) })),
});

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
function renamed<Told extends Standing>(told: Told, { readings }: Evidence): Told {
  const first = told.readings.length - readings.length;
  return {
    ...told,
    readings: told.readings.map((report, at) => ({
      ...report,
      id: readings[at - first]?.id ?? report.id,
    })),
  };
}
