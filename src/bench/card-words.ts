import type { Circuit } from '../circuit/circuit.ts';
import { switchesOf } from '../circuit/setting.ts';
import type { CardCell } from '../diagnosis/card-cell.ts';
import type { JackRow } from '../diagnosis/card-jack.ts';
import type { Stand } from '../diagnosis/card-stands.ts';
import { selectorOf } from '../flows/index.ts';
import { formatOhms } from '../readings/entry.ts';
import { called } from '../words/called.ts';
import { benchWords } from '../words/en/bench.ts';
import { cardWords } from '../words/en/card.ts';
import { commonWords } from '../words/en/common.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { readingWords } from '../words/en/readings.ts';
import { bandWords, held } from './words.ts';

/** A figure of the card as it is set: large, and what goes with it. */
export interface CellWords {
  readonly figure: string;
  readonly notes: readonly string[];
}

const beepWords = (beeps: CardCell['beeps']): string =>
  beeps === 'yes' ? readingWords().beeps : beeps === 'some' ? cardWords().someMetersBeep : '';

/** "7.50 kΩ" with "6.7 to 8.4 kΩ"; "OL" with "open"; "below 1 Ω" with "beeps". */
export function cellWords({ ask, expected, beeps }: CardCell): CellWords {
  const { text, high } = expected;
  const note = (...notes: readonly string[]) => notes.filter(Boolean).map(held);
  if (diagnosisWords().saysOpen(text))
    return diagnosisWords().startsBetween(text)
      ? { figure: held(text.replace(readingWords().openOL, 'OL')), notes: note(beepWords(beeps)) }
      : { figure: 'OL', notes: note(readingWords().farads.open, beepWords(beeps)) };
  const highest = ask.kind === 'turn' ? cardWords().atItsHighest : '';
  if (beeps === 'yes') return { figure: held(text), notes: note(beepWords('yes')) };
  if (high !== undefined && beeps === 'some')
    return {
      figure: benchWords().belowHigh(held(formatOhms(high, 2))),
      notes: note(highest, beepWords('some')),
    };
  const about = diagnosisWords().readAbout(text);
  if (about) return { figure: held(about), notes: note(highest, bandWords(expected)) };
  const [low, top] = diagnosisWords().readBetween(text) ?? [];
  if (low !== undefined && top !== undefined)
    return { figure: held(benchWords().fromTo(low, top)), notes: note(highest) };
  return { figure: held(text), notes: [] };
}

/** Coils as one says them: whole pickups by their name, the rest coil by coil. */
export function heardWords(circuit: Circuit, { coils, heard }: JackRow): string {
  if (heard === 0) return cardWords().noCoil;
  if (coils.length === 0) return cardWords().heardCoilsTogether(heard);
  const whole = circuit.pickups.filter((pickup) => pickup.coils.every((id) => coils.includes(id)));
  const rest = coils.filter((id) => !whole.some((pickup) => pickup.coils.includes(id)));
  return [
    ...whole.map(({ title }) => called(title)),
    ...rest.map((id) => called(circuit.parts.find((part) => part.id === id)?.title ?? id)),
  ].join(', ');
}

/**
 * How the switches stand: "neck" for the selector ("selector at neck" where `named`), "split switch of the neck pickup: both coils"
 * for others. Empty for any way.
 */
export function standWords(circuit: Circuit, stand: Stand, named = false): string {
  const selector = selectorOf(circuit)?.id;
  return switchesOf(circuit)
    .flatMap(({ id, title, positions, style }) => {
      const names = stand[id];
      if (!names) return [];
      const words = commonWords().or(
        positions
          .filter(({ name }) => names.includes(name))

          .map((position) => called(position.title)),
      );
      const plain = id === selector && style !== 'mini-toggle' && style !== 'button';
      if (plain) return [named ? cardWords().titleAtWords(title, words) : words];
      return [`${called(title)}: ${words}`];
    })
    .join('; ');
}
