/** What can be wrong with a circuit or a question about it, as data: the screen and the tests read `code` and `name`. */
export type CircuitErrorCode =
  | 'empty-circuit'
  | 'unknown-part'
  | 'unknown-lug'
  | 'unknown-lead'
  | 'unknown-position'
  | 'duplicate-name'
  | 'value-out-of-range'
  | 'lead-to-itself'
  | 'already-joined'
  | 'unknown-site'
  | 'bad-shape';

/** Thrown at the door (import, editor, message): names the thing, says what was got and what was expected. */
export class CircuitError extends Error {
  readonly code: CircuitErrorCode;
  /** The part, lug, lead or setting that the sentence is about. */
  readonly thing: string;
  constructor(code: CircuitErrorCode, thing: string, sentence: string) {
    super(sentence);
    this.name = 'CircuitError';
    this.code = code;
    this.thing = thing;
  }
}
