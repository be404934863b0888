import type { Circuit } from '../circuit/circuit.ts';
import { askText, observe, seenText } from '../readings/index.ts';
import type { Meter, Reading } from '../readings/reading.ts';
import type { ReadingReport } from './assessment.ts';
import { expectation } from './expect.ts';
import type { Hypothesis } from './hypothesis.ts';
import { type Predictor, varianceOf } from './predictor.ts';

const healthy: Hypothesis = { index: 0, faults: [], edits: [], logPrior: 0 };

/** A reading beside what a guitar as intended would show. */
export function reportOf(
  reading: Reading,
  circuit: Circuit,
  meter: Meter,
  predictor: Predictor,
  stale: boolean,
): ReadingReport {
  return {
    id: reading.id,
    ask: reading.ask,
    askText: askText(predictor.layout, reading.ask),
    expected: expectation(circuit, meter, reading.ask),
    measuredText: seenText(reading.seen),
    fits: fitOf(reading, predictor),
    stale,
  };
}

/** Deviations from the expected figure up to which a level fits, and from which it is off. */
const FITS = 2.5;
const OFF = 4;

function fitOf(reading: Reading, predictor: Predictor): ReadingReport['fits'] {
  const predictions = predictor.predict(healthy, reading.ask);
  const deviations = predictor.deviations(healthy);
  let worst: ReadingReport['fits'] = 'fits';
  const mark = (fit: ReadingReport['fits']): void => {
    if (fit === 'off' || (fit === 'doubtful' && worst === 'fits')) worst = fit;
  };
  observe(reading.seen).forEach((seen, at) => {
    const prediction = predictions[at];
    if (!seen || !prediction) return;
    if (prediction.type === 'level' && seen.type === 'level') {
      const distance =
        Math.abs(seen.value - prediction.mean) / Math.sqrt(varianceOf(prediction, deviations));
      mark(distance <= FITS ? 'fits' : distance <= OFF ? 'doubtful' : 'off');
    } else if (prediction.type === 'threshold' && seen.type === 'threshold') {
      mark(
        prediction.ohms > 15 && prediction.ohms < 200
          ? 'doubtful'
          : prediction.ohms < 50 === seen.beeps
            ? 'fits'
            : 'off',
      );
    } else if (prediction.type === 'choice' && seen.type === 'choice') {
      // A sign alone has nothing to be compared with: whether it swings at all is what counts.
      const chance = Math.max(
        prediction.chances[seen.word] ?? 0,
        prediction.mirrored?.[seen.word] ?? 0,
      );
      mark(chance > 0.2 ? 'fits' : chance > 0.08 ? 'doubtful' : 'off');
    } else if (prediction.type !== seen.type) mark('off');
  });
  return worst;
}
