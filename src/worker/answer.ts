import { CircuitError } from '../circuit/errors.ts';
import { workerWords } from '../words/en/worker.ts';
import type { EngineCallName, EngineCalls, EngineReply, EngineRequest } from './protocol.ts';

/** What stands behind each call. */
export type EngineFunctions = {
  readonly [Name in EngineCallName]: (
    input: EngineCalls[Name]['input'],
  ) => EngineCalls[Name]['output'];
};

/** Answers one request. Never throws: a failure is a reply with a sentence. */
export function answer(request: EngineRequest, engine: EngineFunctions): EngineReply {
  try {
    const call = engine[request.call] as (input: unknown) => EngineCalls[EngineCallName]['output'];
    return { id: request.id, ok: true, output: call(request.input) };
  } catch (error) {
    return { id: request.id, ok: false, sentence: sentenceOf(error) };
  }
}

function sentenceOf(error: unknown): string {
  if (error instanceof CircuitError) return workerWords().theWiringCannotBeWorkedOut(error.message);
  const detail = error instanceof Error ? error.message : String(error);
  return workerWords().theEngineFailedDetailYour(detail);
}
