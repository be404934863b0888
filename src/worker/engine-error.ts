export type EngineErrorCode =
  /** A newer question took its place. */
  | 'outdated'
  /** The engine answered that it could not. */
  | 'refused'
  /** The worker died twice in a row. */
  | 'crashed'
  /** No answer in time. */
  | 'timeout'
  /** The engine was put away. */
  | 'disposed';

/** Why a question to the engine has no answer. The message is fit to show. */
export class EngineError extends Error {
  readonly code: EngineErrorCode;
  constructor(code: EngineErrorCode, sentence: string) {
    super(sentence);
    this.name = 'EngineError';
    this.code = code;
  }
}
