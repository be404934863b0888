import { wiringWarnings } from '../checks/wiring-warnings.ts';
import { closingOf } from '../closing/check.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import { cardOf } from '../diagnosis/card.ts';
import { expectation } from '../diagnosis/expect.ts';
import { positionsOf as positionSounds } from '../diagnosis/positions.ts';
import { readingChanges } from '../diagnosis/reading-changes.ts';
import { trialOf } from '../diagnosis/trial.ts';
import { practiceFault, practiceReading, practiceStart } from '../practice/reading.ts';
import { positionsOf } from '../sorter/positions.ts';
import { sortLeads } from '../sorter/sort.ts';
import { speakIn } from '../words/speak.ts';
import { answer, type EngineFunctions } from './answer.ts';
import { Foresight } from './foresight.ts';
import { lookAhead } from './look-ahead.ts';
import type { EngineReply, EngineRequest } from './protocol.ts';

/** Entry of the worker: the engine behind one message port. What it keeps between requests only makes answers come sooner. */
const foresight = new Foresight();
const engine: EngineFunctions = {
  assess: (evidence) => foresight.answer(evidence),
  foresee: (evidence) => {
    foresight.keep(evidence);
    return null;
  },
  expect: ({ circuit, meter, ask }) => expectation(circuit, meter, ask),
  card: cardOf,
  close: closingOf,
  sort: sortLeads,
  check: wiringWarnings,
  trial: trialOf,
  changes: readingChanges,
  positionSounds,
  positions: positionsOf,
  practiceStart,
  practiceReading,
  practiceFault,
};

let endLookAhead = () => {};

self.onmessage = async ({ data }: MessageEvent<EngineRequest>) => {
  // Where the messages cannot be fetched the answer comes in the language spoken before.
  await speakIn(data.tongue).catch(() => {});
  // What is likely does not count any more once the answer is on its way.
  if (data.call === 'assess' || data.call === 'foresee') endLookAhead();
  const reply = answer(data, engine);
  self.postMessage(reply);
  if (isAssessed(data, reply))
    endLookAhead = lookAhead(data.input as Evidence, reply.output, (one) => foresight.keep(one));
};

const isAssessed = (
  { call }: EngineRequest,
  reply: EngineReply,
): reply is Extract<EngineReply, { ok: true }> & { readonly output: Assessment } =>
  call === 'assess' && reply.ok;
