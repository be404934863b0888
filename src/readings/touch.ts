import { lugTitle } from '../circuit/names.ts';
import { readingWords } from '../words/en/readings.ts';
import { ELECTRIC, HISS, heardAs, rise } from './hearing.ts';
import type { ReadingKind } from './kind.ts';
import { electricHum } from './sound.ts';

/** One answer in twenty is not what was heard (common practice, no source). */
const CONFUSED = 0.05;

/**
 * A hand is a large aerial: on grounded metal it shields, on floating metal it changes little, on hot metal it feeds hum in. None of that is a rule
 * here: the circuit is solved with the hand beside the guitar, and on it. Buzz of electric fields lies far from the hum of coils in pitch, so
 * it is heard by itself.
 */
export const touchReading: ReadingKind<'touch'> = {
  predict(view, ask) {
    const [before, now] = [electricHum(view, null), electricHum(view, ask.metal)];
    let [up, down] = [0, 0];
    for (const room of ELECTRIC) {
      const change = rise(room * now + HISS, room * before + HISS);
      up += heardAs('compared', change) / ELECTRIC.length;
      down += heardAs('compared', -change) / ELECTRIC.length;
    }
    const all = { up, same: Math.max(0, 1 - up - down), down };
    const mixed = (chance: number) => (1 - CONFUSED) * chance + CONFUSED / 3;
    const sum = all.up + all.same + all.down;
    return [
      {
        type: 'choice',
        chances: {
          up: mixed(all.up / sum),
          same: mixed(all.same / sum),
          down: mixed(all.down / sum),
        },
      },
    ];
  },
  like: (guitar, ask) => guitar.in(ask.setting).whole,
  observe: (seen) => [{ type: 'choice', word: seen.hum }],
  askText: (layout, ask) => readingWords().plugInAtLowVolumeAndTouch(lugTitle(layout, ask.metal)),
  seenText: (seen) => readingWords().hum[seen.hum],
};
