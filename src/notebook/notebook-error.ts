import { notebookWords } from '../words/en/notebook.ts';
/** Why the notebook could not do what was asked. */
export type NotebookErrorCode =
  /** The database or the job was written by a newer version of the app. */
  | 'newer-version'
  /** Another tab keeps an older database open. */
  | 'blocked'
  /** The device or the browser gives no more room. */
  | 'full'
  /** The browser stores nothing, as in some private windows. */
  | 'unavailable'
  /** What is stored under this id is no job that can be read. */
  | 'damaged'
  /** The database itself is not as any Lugwise made it. */
  | 'broken'
  /** A job, or the device, has as many photos as are kept. */
  | 'photos-full'
  | 'missing'
  | 'failed';

const SENTENCES: Readonly<Record<NotebookErrorCode, string>> = {
  get 'newer-version'() {
    return notebookWords().theJobsOnThisDeviceWereWritten;
  },
  get blocked() {
    return notebookWords().anotherTabOfLugwiseHoldsThe;
  },
  get full() {
    return notebookWords().thereIsNoRoomLeftOnThis;
  },
  get unavailable() {
    return notebookWords().thisBrowserStoresNothingFor;
  },
  get damaged() {
    return notebookWords().theStoredJobIsDamagedSave;
  },
  get broken() {
    return notebookWords().whatThisDeviceStoredIsDamaged;
  },
  get 'photos-full'() {
    return notebookWords().thereIsNoRoomForAnotherPhoto;
  },
  get missing() {
    return notebookWords().thisJobIsNotOnThisDevice;
  },
  get failed() {
    return notebookWords().theJobCouldNotBeStoredSave;
  },
};

export class NotebookError extends Error {
  readonly code: NotebookErrorCode;
  /** Fit to show: what happened and what to do. */
  readonly sentence: string;
  constructor(code: NotebookErrorCode, detail = '', cause?: unknown) {
    const sentence =
      detail === '' ? SENTENCES[code] : notebookWords().codeDetail(SENTENCES[code], detail);
    super(sentence, { cause });
    this.name = 'NotebookError';
    this.code = code;
    this.sentence = sentence;
  }
}

/** Names by which the database reports its troubles (Indexed Database API 3.0, W3C, its exceptions table). */
const CODES: Readonly<Record<string, NotebookErrorCode>> = {
  QuotaExceededError: 'full',
  VersionError: 'newer-version',
  SecurityError: 'unavailable',
  InvalidStateError: 'unavailable',
  InvalidAccessError: 'unavailable',
  NotAllowedError: 'unavailable',
  UnknownError: 'unavailable',
};

export function notebookErrorOf(error: unknown): NotebookError {
  if (error instanceof NotebookError) return error;
  const { name = '', message = '' } = (error ?? {}) as { name?: string; message?: string };
  const code = CODES[name] ?? 'failed';
  return new NotebookError(code, code === 'failed' ? message.slice(0, 200) : '', error);
}
