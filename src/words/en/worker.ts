import { area } from '../area.ts';

const worker = {
  theWiringCannotBeWorkedOut: (message: string) => `The wiring cannot be worked out: ${message}`,
  theEngineFailedDetailYour: (detail: string) =>
    `The engine failed: ${detail}. Your readings are safe.`,
  theEngineCouldNotStartError: (error: string) => `The engine could not start: ${error}`,
  aMessageCouldNotBeRead: 'a message could not be read',
  theEngineStoppedTwiceInARow: (detail: string) =>
    `The engine stopped twice in a row${detail === '' ? '' : ` (${detail})`}. Your readings are safe: try again, or save the job as a file.`,
  theEngineHasNotAnsweredFor: (seconds: number) =>
    `The engine has not answered for ${seconds} seconds and was started again. Your readings are safe: try again.`,
  aNewerQuestionTookItsPlace: 'A newer question took its place.',
  theEngineWasPutAway: 'The engine was put away.',
};
export const workerWords = area('worker', worker);
