import type { Warning } from '../checks/warning.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Closing, ClosingEvidence } from '../closing/closing.ts';
import type { Assessment, Evidence, Expectation, Standing } from '../diagnosis/assessment.ts';
import type { Card, CardQuestion } from '../diagnosis/card.ts';
import type { PositionSound } from '../diagnosis/positions.ts';
import type { ChangesQuestion, ReadingChange } from '../diagnosis/reading-changes.ts';
import type { Trial, TrialQuestion } from '../diagnosis/trial.ts';
import type { PlayedPosition, PositionsQuestion } from '../sorter/positions.ts';
import type { SortEvidence, Sorting } from '../sorter/sort.ts';
import { tongue } from '../words/area.ts';
import { workerWords } from '../words/en/worker.ts';
import { EngineError } from './engine-error.ts';
import type { EngineCallName, EngineCalls, EngineReply, EngineRequest } from './protocol.ts';
import { CircuitsSent, type SentRequest } from './sent-circuits.ts';

/** The engine as the screens see it. Every failure is an EngineError with a sentence. */
export interface Engine {
  /** What is believed, while the rest of the assessment is still worked out. */
  stand(evidence: Evidence): Promise<Standing>;
  /** A newer call puts an older one that waits or runs out of date: that one rejects with `outdated`. */
  assess(evidence: Evidence): Promise<Assessment>;
  /** Has the answer to what may be asked about next worked out; the newest such wish counts. What comes of it nobody needs to know. */
  foresee(evidence: Evidence): void;
  expect(input: EngineCalls['expect']['input']): Promise<Expectation>;
  card(question: CardQuestion): Promise<Card>;
  close(evidence: ClosingEvidence): Promise<Closing>;
  sort(evidence: SortEvidence): Promise<Sorting>;
  check(circuit: Circuit): Promise<readonly Warning[]>;
  /** The newest call alone is answered, as with `assess`: a knob that is dragged asks many times a second. */
  trial(question: TrialQuestion): Promise<Trial>;
  changes(question: ChangesQuestion): Promise<readonly ReadingChange[]>;
  positionSounds(circuit: Circuit): Promise<readonly PositionSound[]>;
  positions(question: PositionsQuestion): Promise<readonly PlayedPosition[]>;
  practiceStart(seed: string): Promise<EngineCalls['practiceStart']['output']>;
  practiceReading(
    question: EngineCalls['practiceReading']['input'],
  ): Promise<EngineCalls['practiceReading']['output']>;
  practiceFault(
    question: EngineCalls['practiceFault']['input'],
  ): Promise<EngineCalls['practiceFault']['output']>;
  /** Ends the worker; what waits rejects with `disposed`. */
  dispose(): void;
}

/** The part of a Worker that is needed. */
export interface EngineWorker {
  onmessage: ((event: MessageEvent<EngineReply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  postMessage(request: SentRequest): void;
  terminate(): void;
}

export interface EngineOptions {
  /** Milliseconds for one answer. */
  readonly patience?: number;
}

/** A phone at a quarter of a desk computer's speed, with room to spare. */
const PATIENCE = 30_000;
/** The list of a closing check is looked for once a guitar, over all pairs of faults: so many times longer. */
const LONGER = 3;
/** The worker is started again once; a second crash without an answer between ends the question. */
const CRASHES_ALLOWED = 1;

/** Calls whose older questions nobody waits for any more once there is a newer one. */
const NEWEST_ONLY: ReadonlySet<EngineCallName> = new Set(['assess', 'trial']);

const makeEngineWorker = (): EngineWorker =>
  new Worker(new URL('./host.ts', import.meta.url), { type: 'module', name: 'engine' });

interface Waiting {
  readonly request: EngineRequest;
  readonly resolve: (output: never) => void;
  readonly reject: (error: EngineError) => void;
  timer?: ReturnType<typeof setTimeout>;
}

/**
 * Starts the engine in its worker when the first question comes. What the worker keeps is here too, so after
 * a crash it is started again and asked again with the same evidence.
 */
export function createEngine(
  makeWorker: () => EngineWorker = makeEngineWorker,
  { patience = PATIENCE }: EngineOptions = {},
): Engine {
  let worker: EngineWorker | undefined;
  let circuits = new CircuitsSent();
  let disposed = false;
  let lastId = 0;
  let crashes = 0;
  /** Questions that the worker has, in the order given. */
  const sent = new Map<number, Waiting>();
  /** Of these the worker does one at a time; the newest waits here, so that none is done for nothing. */
  const next = new Map<EngineCallName, Waiting>();
  const runningOf = (call: EngineCallName) =>
    [...sent.values()].find(({ request }) => request.call === call);

  function ask<Name extends EngineCallName>(
    call: Name,
    input: EngineCalls[Name]['input'],
  ): Promise<EngineCalls[Name]['output']> {
    if (disposed) return Promise.reject(putAway());
    return new Promise((resolve, reject) => {
      lastId += 1;
      const waiting: Waiting = {
        request: { id: lastId, call, input, tongue: tongue() },
        resolve,
        reject,
      };
      if (!NEWEST_ONLY.has(call)) {
        send(waiting);
        return;
      }
      next.get(call)?.reject(outdated());
      const running = runningOf(call);
      running?.reject(outdated());
      if (running) next.set(call, waiting);
      else send(waiting);
    });
  }

  function send(waiting: Waiting): void {
    sent.set(waiting.request.id, waiting);
    try {
      worker ??= started();
      startClock(waiting);
      worker.postMessage(circuits.pack(waiting.request));
    } catch (error) {
      // Whether the wiring went is not known.
      circuits = new CircuitsSent();
      settle(waiting);
      waiting.reject(
        new EngineError('crashed', workerWords().theEngineCouldNotStartError(String(error))),
      );
    }
  }

  function started(): EngineWorker {
    const fresh = makeWorker();
    circuits = new CircuitsSent();
    fresh.onmessage = ({ data }) => take(data);
    fresh.onerror = (event) => {
      event.preventDefault?.();
      crashed(event.message);
    };
    fresh.onmessageerror = () => crashed(workerWords().aMessageCouldNotBeRead);
    return fresh;
  }

  function take(reply: EngineReply): void {
    const waiting = sent.get(reply.id);
    if (!waiting) return;
    crashes = 0;
    settle(waiting);
    if (reply.ok) waiting.resolve(reply.output as never);
    else waiting.reject(new EngineError('refused', reply.sentence));
    sendNext();
  }

  function settle(waiting: Waiting): void {
    clearTimeout(waiting.timer);
    sent.delete(waiting.request.id);
  }

  function sendNext(): void {
    for (const [call, waiting] of next) {
      if (runningOf(call)) continue;
      next.delete(call);
      send(waiting);
    }
  }

  function crashed(detail: string): void {
    crashes += 1;
    if (crashes > CRASHES_ALLOWED) {
      const error = new EngineError('crashed', workerWords().theEngineStoppedTwiceInARow(detail));
      crashes = 0;
      endWorker();
      rejectAll(error);
      return;
    }
    restart();
  }

  /** A new worker gets what the old one still owed, save what is out of date. */
  function restart(): void {
    const owed = [...sent.values()];
    endWorker();
    for (const waiting of owed) {
      settle(waiting);
      if (!next.has(waiting.request.call)) send(waiting);
    }
    sendNext();
  }

  function endWorker(): void {
    if (worker) worker.onmessage = worker.onerror = worker.onmessageerror = null;
    worker?.terminate();
    worker = undefined;
  }

  function startClock(waiting: Waiting): void {
    clearTimeout(waiting.timer);
    const allowed = waiting.request.call === 'close' ? LONGER * patience : patience;
    waiting.timer = setTimeout(() => {
      settle(waiting);
      waiting.reject(
        new EngineError(
          'timeout',
          workerWords().theEngineHasNotAnsweredFor(Math.round(allowed / 1000)),
        ),
      );
      restart();
    }, allowed);
  }

  function rejectAll(error: EngineError): void {
    const all = [...sent.values(), ...next.values()];
    next.clear();
    for (const waiting of all) {
      settle(waiting);
      waiting.reject(error);
    }
  }

  return {
    stand: (evidence) => ask('stand', evidence),
    assess: (evidence) => ask('assess', evidence),
    foresee(evidence) {
      ask('foresee', evidence).catch(() => {
        // The question itself will come, and say then what is wrong.
      });
    },
    close: (evidence) => ask('close', evidence),
    sort: (evidence) => ask('sort', evidence),
    positions: (question) => ask('positions', question),
    expect: (input) => ask('expect', input),
    card: (question) => ask('card', question),
    check: (circuit) => ask('check', circuit),
    trial: (question) => ask('trial', question),
    changes: (question) => ask('changes', question),
    positionSounds: (circuit) => ask('positionSounds', circuit),
    practiceStart: (seed) => ask('practiceStart', seed),
    practiceReading: (question) => ask('practiceReading', question),
    practiceFault: (question) => ask('practiceFault', question),
    dispose() {
      disposed = true;
      endWorker();
      rejectAll(putAway());
    },
  };
}

const outdated = () => new EngineError('outdated', workerWords().aNewerQuestionTookItsPlace);
const putAway = () => new EngineError('disposed', workerWords().theEngineWasPutAway);
