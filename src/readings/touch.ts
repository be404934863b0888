import { lugTitle } from '../circuit/names.ts';
import { readingWords } from '../words/en/readings.ts';
import { HISS, heardAs, ROOMS, rise } from './hearing.ts';
import type { ReadingKind } from './kind.ts';
import { meanOf } from './rooms.ts';
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
    const rooms = ROOMS.map(({ electric }) => {
      const change = rise(electric * now + HISS, electric * before + HISS);
      const [up, down] = [heardAs('compared', change), heardAs('compared', -change)];
      const same = Math.max(0, 1 - up - down);
      const mixed = (chance: number) =>
        ((1 - CONFUSED) * chance) / (up + same + down) + CONFUSED / 3;
      return { up: mixed(up), same: mixed(same), down: mixed(down) };
    });
    return [{ type: 'choice', chances: meanOf(rooms), rooms }];
  },
  like: (guitar, ask) => guitar.in(ask.setting).whole,
  observe: (seen) => [{ type: 'choice', word: seen.hum }],
  askText: (layout, ask) => readingWords().plugInAtLowVolumeAndTouch(lugTitle(layout, ask.metal)),
  seenText: (seen) => readingWords().hum[seen.hum],
};
