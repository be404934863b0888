import { afterEach, describe, expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { Assessment, Evidence } from '../diagnosis/assessment.ts';
import type { TrialQuestion } from '../diagnosis/trial.ts';
import { createEngine, type EngineWorker } from './client.ts';
import { EngineError } from './engine-error.ts';
import type { EngineReply, EngineRequest } from './protocol.ts';
import { CircuitsKept, type SentRequest } from './sent-circuits.ts';

/** A worker in the hands of the test: it shows what it was asked and answers when told. */
class ScriptedWorker implements EngineWorker {
  onmessage: EngineWorker['onmessage'] = null;
  onerror: EngineWorker['onerror'] = null;
  onmessageerror: EngineWorker['onmessageerror'] = null;
  readonly asked: EngineRequest[] = [];
  ended = false;
  private readonly circuits = new CircuitsKept();
  postMessage(request: SentRequest): void {
    this.asked.push(this.circuits.unpack(structuredClone(request)));
  }
  terminate(): void {
    this.ended = true;
  }
  reply(reply: EngineReply): void {
    this.onmessage?.({ data: reply } as MessageEvent<EngineReply>);
  }
  give(index: number, output: unknown): void {
    this.reply({ id: this.asked[index]!.id, ok: true, output: output as Assessment });
  }
  crash(message = 'out of memory'): void {
    this.onerror?.({ message } as ErrorEvent);
  }
}

function bench(patience?: number) {
  const workers: ScriptedWorker[] = [];
  const engine = createEngine(
    () => {
      const worker = new ScriptedWorker();
      workers.push(worker);
      return worker;
    },
    patience === undefined ? {} : { patience },
  );
  return { engine, workers };
}

const evidence = (name: string) => ({ access: name }) as unknown as Evidence;
const assessment = (name: string) => ({ liveSuspects: name }) as unknown as Assessment;
const question = {} as Parameters<ReturnType<typeof createEngine>['expect']>[0];
const codeOf = (promise: Promise<unknown>) =>
  promise.then(
    () => 'answered',
    (error: unknown) => (error instanceof EngineError ? error.code : String(error)),
  );

afterEach(() => {
  vi.useRealTimers();
});

describe('the engine behind its port', () => {
  it('tells a worker that is started again of the wiring again', async () => {
    const { engine, workers } = bench();
    const circuit = startingWirings[0]!.build();
    const about = { ...evidence('a'), circuit };
    const asked = [engine.stand(about), engine.card(about as never)];
    workers[0]!.crash();
    const [, second] = workers as [ScriptedWorker, ScriptedWorker];
    expect(second.asked.map(({ input }) => input)).toEqual([about, about]);
    second.give(0, assessment('a'));
    second.give(1, null);
    await Promise.all(asked);
  });

  it('starts no worker before the first question', () => {
    expect(bench().workers).toHaveLength(0);
  });

  it('gives each answer to its own question, in whatever order they come', async () => {
    const { engine, workers } = bench();
    const asked = [engine.expect(question), engine.assess(evidence('a')), engine.expect(question)];
    const [worker] = workers as [ScriptedWorker];
    expect(worker.asked.map(({ call }) => call)).toEqual(['expect', 'assess', 'expect']);
    worker.give(2, { text: 'third' });
    worker.give(1, assessment('second'));
    worker.give(0, { text: 'first' });
    expect(await Promise.all(asked)).toEqual([
      { text: 'first' },
      assessment('second'),
      { text: 'third' },
    ]);
  });

  it('answers the newest assessment only, and hands the worker one at a time', async () => {
    const { engine, workers } = bench();
    const [a, b, c] = ['a', 'b', 'c'].map((name) => engine.assess(evidence(name)));
    expect(await codeOf(a!)).toBe('outdated');
    expect(await codeOf(b!)).toBe('outdated');
    const [worker] = workers as [ScriptedWorker];
    expect(worker.asked.map(({ input }) => input)).toEqual([evidence('a')]);
    worker.give(0, assessment('a'));
    expect(worker.asked.map(({ input }) => input)).toEqual([evidence('a'), evidence('c')]);
    worker.give(1, assessment('c'));
    expect(await c).toEqual(assessment('c'));
  });

  it('answers the newest trial only, beside an assessment that is not disturbed', async () => {
    const { engine, workers } = bench();
    const assessed = engine.assess(evidence('a'));
    const knob = (figure: number) => ({ setting: figure }) as unknown as TrialQuestion;
    const [one, two, three] = [1, 2, 3].map((figure) => engine.trial(knob(figure)));
    expect(await codeOf(one!)).toBe('outdated');
    expect(await codeOf(two!)).toBe('outdated');
    const [worker] = workers as [ScriptedWorker];
    expect(worker.asked.map(({ call }) => call)).toEqual(['assess', 'trial']);
    worker.give(1, 'old');
    expect(worker.asked.map(({ input }) => input).at(-1)).toEqual(knob(3));
    worker.give(2, 'newest');
    worker.give(0, assessment('a'));
    expect(await three).toBe('newest');
    expect(await assessed).toEqual(assessment('a'));
  });

  it('passes on what the engine says when it cannot', async () => {
    const { engine, workers } = bench();
    const asked = engine.assess(evidence('a'));
    workers[0]!.reply({ id: 1, ok: false, sentence: 'The wiring cannot be worked out: no jack' });
    await expect(asked).rejects.toMatchObject({
      code: 'refused',
      message: 'The wiring cannot be worked out: no jack',
    });
    const again = engine.assess(evidence('b'));
    workers[0]!.give(1, assessment('b'));
    expect(await again).toEqual(assessment('b'));
  });

  it('sorts leads while an assessment waits', async () => {
    const { engine, workers } = bench();
    const asked = engine.sort({} as Parameters<typeof engine.sort>[0]);
    expect(workers[0]!.asked.map(({ call }) => call)).toEqual(['sort']);
    workers[0]!.give(0, 'sorted');
    expect(await asked).toBe('sorted');
  });

  it('is deaf to a reply that nobody waits for', async () => {
    const { engine, workers } = bench();
    const asked = engine.assess(evidence('a'));
    workers[0]!.reply({ id: 99, ok: true, output: assessment('other') });
    workers[0]!.give(0, assessment('a'));
    expect(await asked).toEqual(assessment('a'));
  });
});

describe('when the worker crashes', () => {
  it('starts another and asks it the same', async () => {
    const { engine, workers } = bench();
    const asked = [engine.assess(evidence('a')), engine.expect(question)];
    workers[0]!.crash();
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    expect(workers[1]!.asked).toEqual(workers[0]!.asked);
    workers[1]!.give(0, assessment('a'));
    workers[1]!.give(1, { text: 'b' });
    expect(await Promise.all(asked)).toEqual([assessment('a'), { text: 'b' }]);
  });

  it('does not ask again what is out of date', async () => {
    const { engine, workers } = bench();
    const old = engine.assess(evidence('old'));
    const fresh = engine.assess(evidence('new'));
    workers[0]!.crash();
    expect(await codeOf(old)).toBe('outdated');
    expect(workers[1]!.asked.map(({ input }) => input)).toEqual([evidence('new')]);
    workers[1]!.give(0, assessment('new'));
    expect(await fresh).toEqual(assessment('new'));
  });

  it('gives up after two in a row, in words, and starts afresh for the next question', async () => {
    const { engine, workers } = bench();
    const asked = [engine.assess(evidence('a')), engine.expect(question)];
    workers[0]!.crash();
    workers[1]!.crash('stack overflow');
    for (const one of asked)
      await expect(one).rejects.toMatchObject({
        code: 'crashed',
        message:
          'The engine stopped twice in a row (stack overflow). Your readings are safe: try again, or save the job as a file.',
      });
    expect(workers[1]!.ended).toBe(true);
    const again = engine.assess(evidence('b'));
    workers[2]!.give(0, assessment('b'));
    expect(await again).toEqual(assessment('b'));
  });

  it('counts crashes in a row only: an answer between forgives', async () => {
    const { engine, workers } = bench();
    for (const turn of [0, 1, 2, 3]) {
      const asked = engine.assess(evidence(`${turn}`));
      workers[turn]!.crash();
      workers[turn + 1]!.reply({ id: turn + 1, ok: true, output: assessment(`${turn}`) });
      expect(await asked).toEqual(assessment(`${turn}`));
    }
  });

  it('says so when no worker can be made', async () => {
    const engine = createEngine(() => {
      throw new Error('no workers here');
    });
    await expect(engine.assess(evidence('a'))).rejects.toMatchObject({
      code: 'crashed',
      message: 'The engine could not start: Error: no workers here',
    });
  });
});

describe('when no answer comes', () => {
  it('says so in seconds, starts another worker and asks it what else was waiting', async () => {
    vi.useFakeTimers();
    const { engine, workers } = bench(20_000);
    const stuck = codeOf(engine.assess(evidence('a')));
    await vi.advanceTimersByTimeAsync(15_000);
    const other = engine.expect(question);
    await vi.advanceTimersByTimeAsync(5_000);
    expect(await stuck).toBe('timeout');
    expect(workers[0]!.ended).toBe(true);
    expect(workers[1]!.asked.map(({ call }) => call)).toEqual(['expect']);
    workers[1]!.give(0, { text: 'b' });
    expect(await other).toEqual({ text: 'b' });
  });

  it('does not blame a question that waited for its turn', async () => {
    vi.useFakeTimers();
    const { engine, workers } = bench(20_000);
    const old = codeOf(engine.assess(evidence('a')));
    const fresh = engine.assess(evidence('b'));
    await vi.advanceTimersByTimeAsync(20_000);
    expect(await old).toBe('outdated');
    await vi.advanceTimersByTimeAsync(10_000);
    workers[1]!.give(0, assessment('b'));
    expect(await fresh).toEqual(assessment('b'));
  });
});

it('put away, ends the worker and lets nothing wait', async () => {
  const { engine, workers } = bench();
  const waiting = [engine.assess(evidence('a')), engine.expect(question)];
  engine.dispose();
  for (const one of waiting) expect(await codeOf(one)).toBe('disposed');
  expect(workers[0]!.ended).toBe(true);
  expect(await codeOf(engine.assess(evidence('b')))).toBe('disposed');
});
