import { CircuitError } from '../circuit/errors.ts';
import type { Assessment } from '../diagnosis/assessment.ts';
import { workerWords } from '../words/en/worker.ts';
import type { EngineCallName, EngineCalls, EngineReply, EngineRequest } from './protocol.ts';

/** Calls that are worked on in pieces. */
type Long = 'assess' | 'foresee';

/** What stands behind each of the other calls. */
export type EngineFunctions = {
  readonly [Name in Exclude<EngineCallName, Long>]: (
    input: EngineCalls[Name]['input'],
  ) => EngineCalls[Name]['output'];
};

/** Answers one request. Never throws: a failure is a reply with a sentence. */
export function answer(
  request: EngineRequest<Exclude<EngineCallName, Long>>,
  engine: EngineFunctions,
): EngineReply {
  try {
    const call = engine[request.call] as (input: unknown) => EngineCalls[EngineCallName]['output'];
    return { id: request.id, ok: true, output: call(request.input) };
  } catch (error) {
    return { id: request.id, ok: false, sentence: sentenceOf(error) };
  }
}

/** The reply once an assessment is there; null stands for one that a newer took the place of. Never rejects. */
export async function answerInPieces(
  id: number,
  work: Promise<Assessment | null>,
): Promise<{ id: number; ok: true; output: Assessment } | (EngineReply & { ok: false })> {
  try {
    const output = await work;
    if (output) return { id, ok: true, output };
    return { id, ok: false, sentence: workerWords().aNewerQuestionTookItsPlace };
  } catch (error) {
    return { id, ok: false, sentence: sentenceOf(error) };
  }
}

function sentenceOf(error: unknown): string {
  if (error instanceof CircuitError) return workerWords().theWiringCannotBeWorkedOut(error.message);
  const detail = error instanceof Error ? error.message : String(error);
  return workerWords().theEngineFailedDetailYour(detail);
}
