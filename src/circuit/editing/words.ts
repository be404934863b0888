import { circuitWords } from '../../words/en/circuit.ts';
import { CircuitError } from '../errors.ts';

/** Words that somebody typed, without blanks around and between. Throws CircuitError where none are left or they are too many. */
export function typedWords(text: string, what: string, longest: number): string {
  const words = text.trim().replace(/\s+/g, ' ');
  if (words === '')
    throw new CircuitError('bad-shape', what, circuitWords().whatTypeANameItIsEmpty(what));
  if (words.length > longest)
    throw new CircuitError(
      'bad-shape',
      what,
      circuitWords().whatAtMostLongestCharacters(what, longest, words.length),
    );
  return words;
}
