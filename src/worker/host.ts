import { wiringWarnings } from '../checks/wiring-warnings.ts';
import { closingOf } from '../closing/check.ts';
import type { Evidence } from '../diagnosis/assessment.ts';
import { cardOf } from '../diagnosis/card.ts';
import { expectation } from '../diagnosis/expect.ts';
import { positionsOf as positionSounds } from '../diagnosis/positions.ts';
import { readingChanges } from '../diagnosis/reading-changes.ts';
import { trialOf } from '../diagnosis/trial.ts';
import { practiceFault, practiceReading, practiceStart } from '../practice/reading.ts';
import { positionsOf } from '../sorter/positions.ts';
import { sortLeads } from '../sorter/sort.ts';
import { speakIn } from '../words/speak.ts';
import { answer, answerInPieces, type EngineFunctions } from './answer.ts';
import { Foresight } from './foresight.ts';
import { lookAhead } from './look-ahead.ts';
import { Pieces } from './pieces.ts';
import type { EngineReply } from './protocol.ts';
import { CircuitsKept, type SentRequest } from './sent-circuits.ts';

/** Entry of the worker: the engine behind one message port. What it keeps between requests only makes answers come sooner. */
const foresight = new Foresight();
const pieces = new Pieces();
const circuits = new CircuitsKept();
const engine: EngineFunctions = {
  stand: (evidence) => foresight.stand(evidence),
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

self.onmessage = async ({ data: sent }: MessageEvent<SentRequest>) => {
  const data = circuits.unpack(sent);
  // Where the messages cannot be fetched the answer comes in the language spoken before.
  await speakIn(data.tongue).catch(() => {});
  const { id, call } = data;
  // Nobody waits for what is foreseen: the next wish may come at once, and takes its place.
  if (call === 'foresee') self.postMessage({ id, ok: true, output: null } satisfies EngineReply);
  if (call === 'foresee' || call === 'assess') {
    const evidence = data.input as Evidence;
    const reply = await answerInPieces(id, pieces.do(foresight.answer(evidence)));
    if (call === 'foresee') return;
    self.postMessage(reply);
    // What is likely does not count any more once the answer is on its way.
    if (reply.ok)
      pieces.do(lookAhead(evidence, reply.output, foresight)).catch(() => {
        // The question itself will come, and say then what is wrong.
      });
    return;
  }
  self.postMessage(answer(data as Parameters<typeof answer>[0], engine));
};
