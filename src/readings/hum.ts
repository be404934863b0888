import type { Setting } from '../circuit/circuit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { called } from '../words/called.ts';
import { readingWords } from '../words/en/readings.ts';
import { fixed } from '../words/figures.ts';
import { MAGNETIC, ROOMS, rise } from './hearing.ts';
import type { ReadingKind } from './kind.ts';
import { meanOf } from './rooms.ts';
import { humAt } from './sound.ts';
import type { View } from './view.ts';

/** Hum is measured up to the tenth harmonic; its fifth stands for it, as coils below their resonance change little with frequency. */
const HERTZ = 250;

/** Decibels in a word of the prediction, and the last of them on either side, which holds all beyond. */
const STEP = 3;
const LAST = 36;
const WORDS = Array.from({ length: (2 * LAST) / STEP + 1 }, (_, at) => STEP * at - LAST);

/**
 * Standard deviation of a difference between two positions, decibels: pickups wound for other outputs, and hands and guitar that do not
 * stay quite where they were (common practice, no source). One figure in twenty is something else.
 */
const SPREAD = 3;
const STRANGE = 0.05;

/** What the amplifier hums by itself and the room is never without, in the powers of `MAGNETIC`'s middle (estimates of ours). */
const ALONE = [-30, -20, -10].map((level) => 10 ** (level / 10) * (MAGNETIC[1] as number));

/** Chance that a quantity about `mean` lies below `edge`: a logistic step of the standard deviation. */
const below = (edge: number, mean: number): number =>
  1 / (1 + Math.exp((-(edge - mean) * Math.PI) / (SPREAD * Math.sqrt(3))));

const wordOf = (decibels: number): string =>
  `${Math.max(-LAST, Math.min(LAST, STEP * Math.round(decibels / STEP))) + 0}`;

/**
 * Hum that a microphone measures in one position against another, in one sitting: how loud the amplifier stands and what the microphone
 * makes of it are unknown, and fall out of the difference. The hand stays on the strings, so that they do not sound.
 */
export const humReading: ReadingKind<'hum'> = {
  predict(view, ask) {
    const [here, there] = [handOn(view), handOn(view.in(ask.against))];
    const rooms = ROOMS.map(({ magnetic, electric }) => {
      const chances = new Map(WORDS.map((word) => [word, STRANGE / WORDS.length]));
      for (const alone of ALONE) {
        const power = (hum: ReturnType<typeof handOn>) =>
          magnetic * hum.magnetic + electric * hum.electric + alone;
        const mean = rise(power(here), power(there));
        for (const word of WORDS) {
          const low = word === -LAST ? 0 : below(word - STEP / 2, mean);
          const high = word === LAST ? 1 : below(word + STEP / 2, mean);
          const share = ((1 - STRANGE) * (high - low)) / ALONE.length;
          chances.set(word, (chances.get(word) as number) + share);
        }
      }
      return Object.fromEntries([...chances].map(([word, chance]) => [`${word}`, chance]));
    });
    return [{ type: 'choice', chances: meanOf(rooms), rooms }];
  },
  like: (guitar, ask) => `${guitar.in(ask.setting).whole}|${guitar.in(ask.against).whole}`,
  observe: (seen) => [{ type: 'choice', word: wordOf(seen.decibels) }],
  askText: (layout, ask) =>
    readingWords().measureTheHumAgainst(
      standsApart(layout, ask.setting, ask.against),
      standsApart(layout, ask.against, ask.setting),
    ),
  seenText: (seen) => humText(seen.decibels),
};

function handOn(view: View): ReturnType<typeof humAt> {
  const strings = view.layout.circuit.parts.find(
    (part) => part.kind === 'metal' && part.role === 'strings',
  );
  return humAt(view, strings ? `${strings.id}.metal` : null, HERTZ);
}

/** "12 dB softer", "as loud". Half a decibel is nothing. */
export function humText(decibels: number): string {
  const whole = Math.round(decibels);
  if (whole === 0) return readingWords().humSame;
  const figure = fixed(Math.abs(whole), 0);
  return whole > 0 ? readingWords().humLouder(figure) : readingWords().humSofter(figure);
}

/** How the controls stand of which the other setting has another: "bridge", "volume at 0". */
function standsApart({ circuit }: Layout, setting: Setting, other: Setting): string {
  return circuit.parts
    .flatMap((part) => {
      if (part.kind === 'switch' && setting.positions[part.id] !== other.positions[part.id]) {
        const position = part.positions.find(({ name }) => name === setting.positions[part.id]);
        return position ? [called(position.title)] : [];
      }
      const figure = setting.knobs[part.id] ?? 10;
      return part.kind === 'pot' && figure !== (other.knobs[part.id] ?? 10)
        ? [readingWords().knobStands(called(part.title), figure)]
        : [];
    })
    .join(', ');
}
