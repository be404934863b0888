import type { Circuit } from '../circuit/circuit.ts';
import { inRoom } from '../circuit/in-room.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { ohms } from '../circuit/units.ts';
import { humText } from '../readings/hum.ts';
import { predict } from '../readings/index.ts';
import { likeliestWord } from '../readings/likeliest.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask, Heard, Meter, SeenOf } from '../readings/reading.ts';
import { unknownsOf } from '../readings/unknowns.ts';
import { View } from '../readings/view.ts';
import { nanofaradsText, ohmsText } from '../readings/words.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { readingWords } from '../words/en/readings.ts';
import type { Expectation } from './assessment.ts';
import { varianceOf } from './predictor.ts';

/** What a guitar as intended shows for an ask, with the band of 95 % that parts and meter allow. */
export function expectation(circuit: Circuit, meter: Meter, ask: Ask): Expectation {
  const layout = layoutOf(inRoom(circuit, meter.room));
  const unknowns = unknownsOf(layout, meter);
  const deviations = Float64Array.from([...unknowns.list.map((one) => one.deviation), 0]);
  return expectationOf(
    predict(new View(layout, ask.setting, []), ask, { meter, unknowns }),
    ask,
    evenly((level) => ({ shift: 0, variance: varianceOf(level, deviations) })),
  );
}

type Level = Extract<Prediction, { type: 'level' }>;
/** How far readings so far move a level's mean, and the deviation of ln(shown) that is left on either side, noise included. */
export type Spread = (level: Level) => {
  readonly shift: number;
  readonly below: number;
  readonly above: number;
};

/** The same deviation on both sides. */
export const evenly =
  (of: (level: Level) => { readonly shift: number; readonly variance: number }): Spread =>
  (level) => {
    const { shift, variance } = of(level);
    return { shift, below: Math.sqrt(variance), above: Math.sqrt(variance) };
  };

/** Half the width of a band in standard deviations: 95.4 % of healthy guitars show a figure within it. */
export const BAND_SIGMA = 2;

/** Predictions as words, with a band of `BAND_SIGMA` deviations where they are ohms. */
export function expectationOf(
  predictions: readonly Prediction[],
  ask: Ask,
  spread: Spread,
): Expectation {
  const texts: string[] = [];
  let band: { low: number; high: number } | undefined;
  for (const prediction of predictions) {
    switch (prediction.type) {
      case 'over':
        texts.push(ohmsText('open'));
        break;
      case 'threshold':
        texts.push(prediction.ohms < 20 ? readingWords().beeps : readingWords().silent);
        break;
      case 'choice':
        texts.push(wordsFor(prediction.chances, ask));
        break;
      case 'level': {
        if (ask.kind === 'farads') {
          texts.push(nanofaradsText(Math.exp(prediction.mean) / 1000));
          break;
        }
        const { shift, below, above } = spread(prediction);
        const mean = prediction.mean + shift;
        band = {
          low: Math.exp(mean - BAND_SIGMA * below),
          high: Math.exp(mean + BAND_SIGMA * above),
        };
        if (prediction.ohms < 2) {
          band = { low: 0, high: Math.max(1, band.high) };
          texts.push(diagnosisWords().below1Ohm);
        } else if (band.high > 4 * band.low)
          texts.push(
            diagnosisWords().betweenOhmsAndOhms2(
              ohmsText(ohms(band.low)),
              ohmsText(ohms(band.high)),
            ),
          );
        else
          texts.push(
            diagnosisWords()[ask.kind === 'turn' ? 'highestAboutOhms' : 'aboutOhms'](
              ohmsText(ohms(Math.exp(mean))),
            ),
          );
      }
    }
  }
  const text = texts.filter(Boolean).join(', ');
  return band ? { text, low: ohms(band.low), high: ohms(band.high) } : { text };
}

/** The likeliest word, in the words of its kind. A tap's sign has no absolute meaning, so only whether it swings is told. */
function wordsFor(chances: Readonly<Record<string, number>>, ask: Ask): string {
  const word = likeliestWord(chances);
  switch (ask.kind) {
    case 'tap':
      return word === 'nothing'
        ? readingWords().swing.nothing
        : diagnosisWords().aSwingTheSameWayForEvery;
    case 'pole':
      return diagnosisWords().aPoleOppositeForCoilsThat;
    case 'turn':
      return word === 'stuck'
        ? diagnosisWords().noChange
        : word === 'smooth'
          ? diagnosisWords().changesSmoothly
          : diagnosisWords().jumps;
    case 'touch':
      return readingWords().hum[word as 'up' | 'down' | 'same'];
    case 'hum':
      return humText(Number(word));
    case 'farads':
      return word === 'value' ? '' : readingWords().farads[word as 'open' | 'short'];
    case 'listen':
      return readingWords().heard[word as Heard];
    case 'flex':
      return readingWords().flex[word as 'steady' | 'jumps'];
    case 'look':
      return readingWords().look[word as SeenOf<'look'>['how']];
    default:
      return word;
  }
}
