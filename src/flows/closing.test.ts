import { describe, expect, it } from 'vitest';
import { createActor, fromPromise } from 'xstate';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { ohms } from '../circuit/units.ts';
import { answerOf } from '../closing/answers.fixture.ts';
import { closingOf } from '../closing/check.ts';
import { closingBench } from '../closing/plan.ts';
import { closingMachine } from './closing.ts';
import type { ClosingEvent } from './closing-conversation.ts';
import type { Work } from './work.ts';

const circuit = oneHumbuckerOneKnob();
const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const bench = closingBench(circuit, meter);
const fresh: Work = {
  circuit,
  meter,
  access: 'open',
  readings: [],
  refused: [],
  repairs: [],
  changedAt: '2030-01-01T00:00:00.000Z',
};

/** The conversation with the engine itself behind it, and every act stored. */
function conversation(work: Work = fresh) {
  const saved: Work[] = [];
  const actor = createActor(
    closingMachine().provide({
      actors: {
        check: fromPromise(async ({ input }) => closingOf(input)),
        save: fromPromise(async ({ input }) => {
          saved.push(input);
          return input;
        }),
      },
    }),
    { input: { work } },
  );
  actor.start();
  let second = 0;
  const at = () => {
    second += 1;
    return new Date(Date.UTC(2030, 0, 1, 12, 0, second)).toISOString();
  };
  const settled = async () => {
    for (let turn = 0; turn < 12; turn += 1) await new Promise((done) => setTimeout(done, 0));
  };
  return {
    saved,
    state: () => actor.getSnapshot(),
    context: () => actor.getSnapshot().context,
    async say(event: Record<string, unknown> & { type: ClosingEvent['type'] }) {
      actor.send({ at: at(), ...event } as unknown as ClosingEvent);
      await settled();
    },
    async begin() {
      await this.say({ type: 'START', stage: 'open' });
      await this.say({ type: 'CAUTIONS_READ' });
    },
    /** Answers as a healthy guitar would, until something else than a question stands there. */
    async answer(most = 99) {
      for (let count = 0; count < most && actor.getSnapshot().matches('asking'); count += 1) {
        const { item } = actor.getSnapshot().context;
        await this.say({ type: 'ENTER', seen: answerOf(bench, item!.ask) });
        if (actor.getSnapshot().matches({ asking: 'doubtful' }))
          await this.say({ type: 'ENTERED_RIGHT' });
      }
    },
  };
}

describe('the conversation of a closing check', () => {
  it('begins with how far the guitar is, then the cautions, then the list', async () => {
    const check = conversation();
    expect(check.state().matches('starting')).toBe(true);
    await check.say({ type: 'START', stage: 'open' });
    expect(check.state().matches('cautions')).toBe(true);
    await check.say({ type: 'CAUTIONS_READ' });
    expect(check.state().matches('list')).toBe(true);
    expect(check.saved.at(-1)?.checks).toHaveLength(1);
  });

  it('halts where most of what goes wrong is shown, goes on when asked, and ends with a closed job', async () => {
    const check = conversation();
    await check.begin();
    await check.say({ type: 'GO_ON' });
    await check.answer();
    expect(check.state().matches('halfway')).toBe(true);
    const { first } = check.context().closing!;
    expect(first.passed).toBe(true);
    await check.say({ type: 'GO_ON' });
    expect(check.state().matches('asking')).toBe(true);
    await check.answer();
    expect(check.state().matches('passed')).toBe(true);
    await check.say({ type: 'END', celsius: 21 });
    expect(check.state().matches('starting')).toBe(true);
    const work = check.context().work;
    expect(work.closedAt).toBe(work.checks?.at(-1)?.endedAt);
    expect(work.checks?.at(-1)?.celsius).toBe(21);
  });

  it('may be ended at the halt; the record is of what was read', async () => {
    const check = conversation();
    await check.begin();
    await check.say({ type: 'GO_ON' });
    await check.answer();
    await check.say({ type: 'END' });
    const work = check.context().work;
    expect(work.closedAt).toBeDefined();
    expect(work.readings.length).toBeLessThan(30);
  });

  it('counts one quiet answer for all the movements it asks for, and undo takes them back together', async () => {
    const check = conversation();
    await check.begin();
    const item = check
      .context()
      .closing!.items.find(({ ask, times }) => ask.kind === 'flex' && times > 1)!;
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'ENTER', seen: { kind: 'flex', how: 'steady' } });
    expect(check.context().work.readings).toHaveLength(item.times);
    expect(
      check.context().closing!.items.find(({ askText }) => askText === item.askText)?.mark,
    ).toBe('fits');
    await check.say({ type: 'UNDO' });
    expect(check.context().work.readings).toHaveLength(0);
    await check.say({ type: 'LIST' });
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'ENTER', seen: { kind: 'flex', how: 'jumps' } });
    expect(check.context().work.readings).toHaveLength(1);
    expect(check.context().item).toMatchObject({ mark: 'again' });
  });

  it('asks a figure that is off once more, then hands over with everything kept', async () => {
    const check = conversation();
    await check.begin();
    const item = check
      .context()
      .closing!.items.find(
        ({ ask, passes }) => ask.kind === 'ohms' && passes && passes.low > 1000,
      )!;
    const wrong = { kind: 'ohms', ohms: ohms(item.passes!.high * 1.4) } as const;
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'ENTER', seen: wrong });
    if (check.state().matches({ asking: 'doubtful' })) await check.say({ type: 'ENTERED_RIGHT' });
    expect(check.context().item).toMatchObject({ mark: 'again', askText: item.askText });
    await check.say({ type: 'ENTER', seen: wrong });
    if (check.state().matches({ asking: 'doubtful' })) await check.say({ type: 'ENTERED_RIGHT' });
    expect(check.state().matches('failed')).toBe(true);
    expect(check.context().work.readings).toHaveLength(2);
  });

  it('keeps a reading that jumps about as the wire that made it jump, and asks that wire again', async () => {
    const check = conversation();
    await check.begin();
    const item = check.context().closing!.items.find(({ ask }) => ask.kind === 'ohms')!;
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'JUMPS' });
    expect(check.state().matches({ asking: 'jumping' })).toBe(true);
    await check.say({ type: 'BACK' });
    expect(check.state().matches({ asking: 'entry' })).toBe(true);
    await check.say({ type: 'JUMPS' });
    await check.say({ type: 'JUMPS_AT', site: 'hot' });
    expect(check.context().work.readings.at(-1)).toMatchObject({
      ask: { kind: 'flex', site: 'hot' },
      seen: { how: 'jumps' },
    });
    expect(check.context().item).toMatchObject({
      mark: 'again',
      ask: { kind: 'flex', site: 'hot' },
    });
  });

  it('explains the reading that is asked, and goes back to it with what was typed', async () => {
    const check = conversation();
    await check.begin();
    const item = check.context().closing!.items.find(({ ask }) => ask.kind === 'ohms')!;
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'TYPE', text: '7.8' });
    await check.say({ type: 'HELP' });
    expect(check.state().matches({ asking: 'help' })).toBe(true);
    await check.say({ type: 'BACK' });
    expect(check.state().matches({ asking: 'entry' })).toBe(true);
    expect(check.context()).toMatchObject({ typed: '7.8', item: { ask: item.ask } });
  });

  it('leaves out what cannot be reached and keeps the rest of the list', async () => {
    const check = conversation();
    await check.begin();
    const item = check.context().closing!.items.find(({ ask }) => ask.kind === 'ohms')!;
    await check.say({ type: 'CHOOSE', item });
    await check.say({ type: 'CANNOT_REACH' });
    expect(check.context().work.refused).toEqual([item.ask]);
    expect(check.context().closing!.items.map(({ askText }) => askText)).not.toContain(
      item.askText,
    );
  });
});
