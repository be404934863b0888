/** A network or question that cannot be solved, by what was got and what was expected. */
export class NetworkError extends Error {
  readonly thing: string;
  constructor(thing: string, sentence: string) {
    super(sentence);
    this.name = 'NetworkError';
    this.thing = thing;
  }
}
