import type { Circuit } from '../../src/circuit/circuit.ts';
import { closingOf } from '../../src/closing/check.ts';
import type { Closing, ClosingEvidence } from '../../src/closing/closing.ts';
import { closingBench, type Plan, planOf } from '../../src/closing/plan.ts';
import type { Stage } from '../../src/closing/stage.ts';
import type { Hypothesis } from '../../src/diagnosis/hypothesis.ts';
import type { Ask, Meter, Reading } from '../../src/readings/reading.ts';
import { Dice, simulate } from '../simulated/index.ts';

/** What the guitar under the check has: nothing, one fault that the plan claims to show, or two of them. */
export type Trouble = 'healthy' | 'single' | 'double';

export interface ClosingOptions {
  readonly wiring: string;
  readonly circuit: Circuit;
  readonly stage: Stage;
  readonly trouble: Trouble;
  readonly seed: number;
  /** Guitars with the same word are read with meters that look alike, so that one list serves them. */
  readonly meter: string;
}

export interface ClosingResult {
  readonly wiring: string;
  readonly stage: Stage;
  readonly seed: number;
  readonly trouble: Trouble;
  /** The faults in words. */
  readonly faults: readonly string[];
  readonly state: Closing['state'];
  /** Readings taken until the check was through or had failed, repeats included. */
  readonly taken: number;
  readonly planReadings: number;
  readonly lowerBoundReadings: number;
  /** Our estimate for all of the list, and its head: readings, minutes, share of what goes wrong. */
  readonly minutes: number;
  readonly firstReadings: number;
  readonly firstMinutes: number;
  readonly firstShare: number;
  /** Of a check that failed: what was asked, shown and expected. */
  readonly failed: readonly string[];
}

/** Lines read before the list is looked at again: to look after each would cost more than the simulator. */
const AT_ONCE = 8;

/** More than any list and its repeats; a check that is not through by then is counted as not through. */
const LIMIT = 400;

/** A whole closing check on a guitar that a circuit simulator plays. */
export function close({
  wiring,
  circuit,
  stage,
  trouble,
  seed,
  meter: lookOf,
}: ClosingOptions): ClosingResult {
  const dice = new Dice(`closing ${seed} ${trouble}`);
  // The list is made for the meter in the hand, so that is drawn first; the faults are those the list claims.
  const { meter } = simulate(circuit, [], seed, { meter: lookOf });
  const plan = planFor(circuit, meter, stage);
  const faults = draw(plan, trouble, dice);
  const guitar = simulate(
    circuit,
    faults.flatMap((fault) => sized(fault, dice)),
    seed,
    { meter: lookOf },
  );
  guitar.prepare(plan.items.map(({ ask }) => ask));
  const readings: Reading[] = [];
  let closing = look();
  while (closing.state === 'checking' && readings.length < LIMIT) {
    const again = closing.items.find(({ mark }) => mark === 'again');
    const next = again
      ? [again]
      : closing.items.filter(({ mark }) => mark === 'open').slice(0, AT_ONCE);
    if (next.length === 0) break;
    for (const item of next)
      for (let time = again ? item.times - 1 : item.taken; time < item.times; time += 1)
        read(item.ask);
    closing = look();
  }
  return {
    wiring,
    stage,
    seed,
    trouble,
    faults: faults.flatMap((hypothesis) => hypothesis.faults.map(({ sentence }) => sentence)),
    state: closing.state,
    taken: readings.length,
    planReadings: closing.readings,
    lowerBoundReadings: closing.atLeast,
    minutes: closing.effort / 60,
    firstReadings: closing.first.readings,
    firstMinutes: closing.first.effort / 60,
    firstShare: closing.first.share,
    failed: closing.items
      .filter(({ mark }) => mark === 'failed')
      .map(
        ({ askText, ask, answers, expected, passes }) =>
          `${askText} ${JSON.stringify(ask.setting.positions)} ${JSON.stringify(ask.setting.knobs)}: ${answers.join(', ')}; expected ${expected.text}${passes ? ` (${Math.round(passes.low * 10) / 10} to ${Math.round(passes.high * 10) / 10})` : ''}`,
      ),
  };

  function read(ask: Ask): void {
    readings.push({
      id: `r${readings.length + 1}`,
      ask,
      seen: guitar.answer(ask),
      at: '2026-01-01T00:00:00Z',
      round: 0,
    });
  }

  function look(): Closing {
    const evidence: ClosingEvidence = {
      circuit,
      meter: guitar.meter,
      stage,
      readings,
      refused: [],
      repairs: [],
    };
    return closingOf(evidence);
  }
}

const planFor = (circuit: Circuit, meter: Meter, stage: Stage): Plan =>
  planOf(closingBench(circuit, meter), stage);

/** Faults evenly over those that the list claims, and evenly over their sizes that it claims; two are at two places, and not a pair that the list says undoes itself. */
function draw(
  { showable, hiddenPairs }: Plan,
  trouble: Trouble,
  dice: Dice,
): readonly Hypothesis[] {
  const claimed = showable.ladders.filter(({ ladder, hidden }) => hidden < ladder.length);
  const one = (): Hypothesis => {
    const { ladder, hidden } = dice.pick(claimed);
    return dice.pick(ladder.slice(hidden));
  };
  if (trouble === 'healthy') return [];
  const first = one();
  if (trouble === 'single') return [first];
  for (;;) {
    const second = one();
    const ids = [first, second].map(({ faults: [fault] }) => fault?.id);
    const said = hiddenPairs.some(({ faults }) => faults.every(({ id }) => ids.includes(id)));
    if (!said && second.faults[0]?.remedy.key !== first.faults[0]?.remedy.key)
      return [first, second];
  }
}

/** A size known only roughly is drawn anew, so that it is not one of the engine's own steps. */
const sized = (fault: Hypothesis, dice: Dice) =>
  fault.edits.map((edit) => {
    if (edit.op !== 'resist' && !(edit.op === 'bridge' && edit.ohms > 2)) return edit;
    return { ...edit, ohms: (edit.ohms * 10 ** dice.between(-0.25, 0.25)) as typeof edit.ohms };
  });
