import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { ohms, probability } from '../circuit/units.ts';
import type { Evidence } from '../diagnosis/assessment.ts';
import type { HuntEvent } from './conversation.ts';
import {
  assessment,
  atJack,
  circuit,
  closedWork,
  enter,
  hunt,
  inside,
  listening,
  next,
  now,
  ready,
  seven,
  verdict,
} from './hunt.fixture.ts';
import { huntMachine } from './hunt.ts';
import { listeningPlaces } from './symptom.ts';
import type { Work } from './work.ts';

describe('placing: where a hunt stands follows from the work alone', () => {
  const placed = (work: Work) => initialTransition(huntMachine(), { work })[0].value;
  it('starts with the symptom', () => expect(placed(closedWork)).toBe('symptom'));
  it('shows the cautions once something was told', () => {
    const heard = {
      id: 'r1',
      ask: listening,
      seen: { kind: 'listen', heard: 'silent' } as const,
      at: now(),
      round: 0,
    };
    expect(placed({ ...closedWork, readings: [heard] })).toBe('cautions');
  });
  it('works out the belief when the cautions are read', () =>
    expect(placed(ready)).toBe('assessing'));
  it('shows a closed job as closed', () =>
    expect(placed({ ...ready, closedAt: now() })).toBe('closed'));
});

describe('pure steps', () => {
  const step = (work: Work, ...events: HuntEvent[]) =>
    events.reduce(
      (snapshot, event) => transition(huntMachine(), snapshot, event)[0],
      initialTransition(huntMachine(), { work })[0],
    );
  it('goes on to the cautions with nothing heard, and back', () => {
    expect(step(closedWork, { type: 'SKIP' }).value).toBe('cautions');
    expect(step(closedWork, { type: 'SKIP' }, { type: 'BACK' }).value).toBe('symptom');
  });
  it('keeps what was seen beside the questions, but not on a closed job', () => {
    const answers = [
      {
        ask: { kind: 'look', at: 'jackHot@to', setting: listening.setting } as const,
        seen: { kind: 'look', how: 'dull' } as const,
      },
    ];
    const { value, context } = step(ready, { type: 'SAW', answers, at: now() });
    expect(value).toBe('saving');
    expect(context.work.readings.map(({ seen }) => seen)).toEqual([{ kind: 'look', how: 'dull' }]);
    const done = step({ ...ready, closedAt: now() }, { type: 'SAW', answers, at: now() });
    expect([done.value, done.context.work.readings]).toEqual(['closed', []]);
  });
  it('stores what was heard in one act, before anything else', () => {
    const answers = listeningPlaces(circuit).map(({ ask }) => ({
      ask,
      seen: { kind: 'listen', heard: 'silent' } as const,
    }));
    const { value, context } = step(closedWork, { type: 'HEARD', answers, at: now() });
    expect(value).toBe('saving');
    expect(context.work.readings.map(({ id }) => id)).toEqual(['r1', 'r2', 'r3']);
  });
});

describe('a hunt', () => {
  it('goes from the symptom to a verdict, a repair, a recheck and an end', async () => {
    const job = hunt(closedWork, {
      assess: async ({ readings, repairs }) => {
        const ohmsTaken = readings.filter(({ ask }) => ask.kind === 'ohms').length;
        if (ohmsTaken === 0) return assessment({ next: [next(atJack)] });
        if (repairs.length === 0) return assessment({ verdict });
        if (ohmsTaken === 1) return assessment({ verdict, recheck: [next(atJack)] });
        return assessment({ verdict: { ...verdict, kind: 'healthy' } });
      },
    });
    await job.run({ type: 'SKIP' }, { type: 'CAUTIONS_READ', at: now() });
    expect(job.state).toEqual({ asking: 'entry' });
    expect(job.context.question?.purpose).toBe('hunt');
    await job.run(enter());
    expect(job.state).toBe('changed');
    await job.run({ type: 'ON' });
    expect(job.state).toBe('verdict');
    await job.run({ type: 'TO_REPAIR' });
    expect(job.state).toBe('repairing');
    const done = { repair: 'coil', title: 'Mend the coil', at: now() };
    await job.run({ type: 'REPAIRED', ...done });
    // Nothing but what the notebook knows: it refuses keys that it does not.
    expect(job.context.work.repairs).toEqual([done]);
    expect(job.state).toEqual({ asking: 'entry' });
    expect(job.context.question?.purpose).toBe('recheck');
    await job.run(enter(), { type: 'ON' });
    expect(job.context.work.readings.map(({ round }) => round)).toEqual([0, 1]);
    expect(job.state).toBe('verdict');
    await job.run({ type: 'CLOSE', at: now() });
    expect(job.state).toBe('closed');
    await job.run({ type: 'REOPEN', at: now() });
    expect(job.state).toBe('verdict');
  });

  it('has stored a reading before it asks the next', async () => {
    const states: unknown[] = [];
    const job = hunt(ready, {
      save: async (work) => {
        states.push([job.state, work.readings.length]);
      },
    });
    await job.run(enter());
    expect(states).toEqual([[{ taking: { standing: 'asked', storing: 'writing' } }, 1]]);
    expect(job.saved.at(-1)?.readings[0]).toMatchObject({ id: 'r1', ask: atJack, seen: seven });
  });

  it('resumes at the same question from what was stored', async () => {
    const job = await hunt(ready).run(enter(), { type: 'ON' });
    const again = await hunt(job.saved.at(-1)!).run();
    expect(again.state).toEqual(job.state);
    expect(again.context.question).toEqual(job.context.question);
  });

  it('compares the belief before and after a reading', async () => {
    const job = hunt(ready, {
      assess: async ({ readings }) =>
        readings.length === 0
          ? assessment({ next: [next(atJack)] })
          : assessment({
              suspects: [
                { repair: 'coil', title: 'Mend the coil', probability: probability(1), faults: [] },
                { repair: 'pot', title: 'Change the pot', probability: probability(0), faults: [] },
              ],
              liveSuspects: 1,
            }),
    });
    await job.run(enter());
    expect(job.context.change).toMatchObject({ before: 2, after: 1 });
    expect(job.context.change?.fellAway.map(({ repair }) => repair)).toEqual(['pot']);
  });

  it('asks for the guitar to be opened before the first reading inside', async () => {
    const job = hunt(ready, { assess: async () => assessment({ next: [next(inside)] }) });
    await job.run();
    expect(job.state).toBe('opening');
    await job.run({ type: 'OPENED', at: now() });
    expect(job.state).toEqual({ asking: 'entry' });
    expect(job.saved.at(-1)?.access).toBe('open');
  });

  it('says so when nothing is left to ask and no verdict stands', async () => {
    const job = hunt(ready, { assess: async () => assessment({}) });
    await job.run();
    expect(job.state).toBe('nothingLeft');
  });
});

describe('asking', () => {
  it('asks about 5.9 typed for 5.9 k, and stores what the person says', async () => {
    const meant = await hunt(ready).run(enter({ kind: 'ohms', ohms: ohms(7) }));
    expect(meant.state).toEqual({ asking: 'doubtful' });
    expect(meant.saved).toHaveLength(0);
    await meant.run({ type: 'TAKE_BETTER', at: now() });
    expect(meant.context.work.readings[0]?.seen).toEqual({ kind: 'ohms', ohms: 7000 });

    const right = await hunt(ready).run(enter({ kind: 'ohms', ohms: ohms(7) }));
    await right.run({ type: 'ENTERED_RIGHT', at: now() });
    expect(right.context.work.readings[0]?.seen).toEqual({ kind: 'ohms', ohms: 7 });

    const back = await hunt(ready).run({ type: 'TYPE', text: '7' });
    await back.run(enter({ kind: 'ohms', ohms: ohms(7) }), { type: 'BACK' });
    expect(back.state).toEqual({ asking: 'entry' });
    expect(back.context.typed).toBe('7');
  });

  it('asks the next best when a point cannot be reached', async () => {
    const job = hunt(
      { ...ready, access: 'open' },
      {
        assess: async () => assessment({ next: [next(inside), next(atJack)] }),
      },
    );
    await job.run();
    expect(job.context.question?.ask).toEqual(inside);
    await job.run({ type: 'CANNOT_REACH', at: now() });
    expect(job.saved.at(-1)?.refused).toEqual([inside]);
    expect(job.context.question?.ask).toEqual(atJack);
  });

  it('records a reading that jumps as a flex of the wire that moved it', async () => {
    const job = await hunt(ready).run({ type: 'JUMPS' });
    expect(job.state).toEqual({ asking: 'jumping' });
    await job.run({ type: 'JUMPS_AT', site: 'jackHot@to', at: now() });
    expect(job.context.work.readings[0]).toMatchObject({
      ask: { kind: 'flex', site: 'jackHot@to', red: 'jack.tip', black: 'jack.sleeve' },
      seen: { kind: 'flex', how: 'jumps' },
    });
  });

  it('opens the help and comes back with what was typed', async () => {
    const job = await hunt(ready).run({ type: 'TYPE', text: '4.2k' }, { type: 'HELP' });
    expect(job.state).toEqual({ asking: 'help' });
    await job.run({ type: 'BACK' });
    expect(job.context.typed).toBe('4.2k');
  });

  it('takes a reading that was not asked for', async () => {
    const job = await hunt(ready).run({ type: 'VOLUNTEER' }, { type: 'OWN_ASK', ask: inside });
    expect(job.context.question).toMatchObject({ purpose: 'own', ask: inside });
    await job.run(enter({ kind: 'ohms', ohms: 'open' }));
    expect(job.context.work.readings[0]?.ask).toEqual(inside);
  });
});

describe('corrections', () => {
  it('works the belief out again with the values as they really are', async () => {
    const told: Evidence[] = [];
    const job = hunt(ready, {
      assess: async (evidence) => {
        told.push(evidence);
        return assessment({ next: [next(atJack)] });
      },
    });
    await job.run();
    const meter = { ...ready.meter, limit: ohms(20e6) };
    await job.run({ type: 'CORRECT', circuit, meter, at: now() });
    expect(told.map(({ meter: { limit } }) => limit)).toEqual([2e6, 20e6]);
    expect(job.state).toEqual({ asking: 'entry' });
  });
});
