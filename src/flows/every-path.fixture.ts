import { expect } from 'vitest';
import { type AnyStateMachine, createActor, type Snapshot } from 'xstate';

/** Every path of a flow's machine, up to a length, walked; what is the same place reached in two ways is gone on from once. */

/** What is stored of any flow. */
interface Stored {
  readonly readings: readonly { readonly id: string; readonly at: string }[];
}

interface Said {
  readonly type: string;
}

export interface Step<Event extends Said> {
  readonly event: Event;
  /** The port that fails while the event is worked on. */
  readonly fails?: string;
  /** While the act is stored, another tab tells of what it wrote before it had heard of this act. */
  readonly crossed?: boolean;
}

export const says = <Event extends Said>(event: Event, fails?: string): Step<Event> => ({
  event,
  ...(fails !== undefined && { fails }),
});

export interface Place<Work, Context> {
  readonly snapshot: Snapshot<unknown>;
  readonly value: string;
  readonly context: Context;
  /** What is on the disk. */
  readonly disk: Work | null;
  readonly path: readonly string[];
}

/** A port that answers at once, or fails where its turn is to. */
export type Port = <In, Out>(
  name: string,
  answer: (input: In) => Out,
) => (given: { readonly input: In }) => Promise<Out>;

export interface Flow<
  Work extends Stored,
  Context extends { readonly work: Work },
  Event extends Said,
> {
  /** The machine with its ports, of which `save` is the same for all. */
  machine(port: Port, save: (given: { readonly input: Work }) => Promise<Work>): AnyStateMachine;
  readonly starts: readonly Work[];
  readonly steps: readonly Step<Event>[];
  /** What other tabs and screens say, and what takes back: a state that knows nothing else holds the person fast. */
  readonly aside: readonly Event['type'][];
  /** What tells two places apart besides the state and the work. */
  tells(context: Context): unknown;
  /** What else must hold of every place. */
  check?(place: Place<Work, Context>, where: string): void;
}

/** States in which nobody is waited for. */
const AT_WORK = /saving|taking|standing|sorting|assessing|checking|expecting|placing|onward/;
/** An act takes back what was read. */
const TAKES_BACK: readonly string[] = ['UNDO', 'PUT_BACK', 'ASK_AGAIN'];

/**
 * Walks every path up to `length` acts, and fails where a reading is lost, where something entered is not stored before the flow goes
 * on, and where a state has no way out.
 * @returns the states come to, as JSON, and how many places
 */
export async function everyPath<
  Work extends Stored,
  Context extends { readonly work: Work },
  Event extends Said,
>(
  flow: Flow<Work, Context, Event>,
  length: number,
): Promise<{ readonly states: ReadonlySet<string>; readonly places: number }> {
  type Here = Place<Work, Context>;
  const starts: Here[] = [];
  for (const work of flow.starts) starts.push((await walk(flow, null, null, work)) as Here);
  const seen = new Set(starts.map((place) => keyOf(flow, place)));
  const states = new Set(starts.map(({ value }) => value));
  let edge: readonly Here[] = starts;
  for (let acts = 0; acts < length && edge.length > 0; acts += 1) {
    const found: Here[] = [];
    for (const place of edge) {
      let ways = 0;
      for (const step of flow.steps) {
        const after = await walk(flow, place, step);
        if (!after) continue;
        if (!flow.aside.includes(step.event.type)) ways += 1;
        const where = `${after.value} after ${after.path.join(', ')}`;
        check(place, step, after, where);
        flow.check?.(after, where);
        states.add(after.value);
        const key = keyOf(flow, after);
        if (seen.has(key)) continue;
        seen.add(key);
        found.push(after);
      }
      expect(ways, `no way out of ${place.value} after ${place.path.join(', ')}`).toBeGreaterThan(
        0,
      );
    }
    edge = found;
  }
  return { states, places: seen.size };
}

async function walk<
  Work extends Stored,
  Context extends { readonly work: Work },
  Event extends Said,
>(
  flow: Flow<Work, Context, Event>,
  from: Place<Work, Context> | null,
  step: Step<Event> | null,
  work?: Work,
): Promise<Place<Work, Context> | null> {
  let disk = from?.disk ?? null;
  const port: Port =
    (name, answer) =>
    async ({ input }) => {
      if (step?.fails === name) throw new Error(`The ${name} fails.`);
      return answer(input);
    };
  const save = port('save', (stored: Work) => {
    disk = stored;
    return stored;
  });
  const machine = flow.machine(port, save);
  const input = { work: work ?? from?.context.work };
  const actor = createActor(
    machine,
    from ? { input, snapshot: from.snapshot as never } : { input },
  ).start();
  if (step) {
    if (!actor.getSnapshot().can(step.event)) return null;
    actor.send(step.event);
    const storing = ['saving', 'taking'].some((state) => actor.getSnapshot().matches(state));
    if (step.crossed && storing)
      actor.send({ type: 'CHANGED_ELSEWHERE', work: from?.context.work });
  }
  // Every port answers at once: what is left to do is a few turns of promises.
  for (let turn = 0; turn < 40; turn += 1) await Promise.resolve();
  const { value, context } = actor.getSnapshot();
  const snapshot = actor.getPersistedSnapshot();
  actor.stop();
  return {
    snapshot,
    value: JSON.stringify(value),
    context,
    disk,
    path: [...(from?.path ?? []), nameOf(step)],
  };
}

const nameOf = (step: Step<Said> | null): string =>
  step
    ? `${step.event.type}${step.fails ? ` (${step.fails} fails)` : ''}${step.crossed ? ' (crossed)' : ''}`
    : 'start';

/** Moments and ids differ on every path: they tell nothing apart. */
const keyOf = <Work extends Stored, Context extends { readonly work: Work }, Event extends Said>(
  flow: Flow<Work, Context, Event>,
  { value, context }: Place<Work, Context>,
): string =>
  JSON.stringify([
    value,
    {
      ...context.work,
      changedAt: '',
      readings: context.work.readings.map((reading) => ({ ...reading, id: '', at: '' })),
    },
    flow.tells(context),
  ]);

function check<Work extends Stored, Context extends { readonly work: Work }, Event extends Said>(
  before: Place<Work, Context>,
  { event }: Step<Event>,
  after: Place<Work, Context>,
  where: string,
): void {
  const ids = new Set(after.context.work.readings.map(({ id }) => id));
  if (!TAKES_BACK.includes(event.type))
    for (const { id } of before.context.work.readings)
      expect(ids, `a reading is lost: ${where}`).toContain(id);
  expect(after.value, `still at work: ${where}`).not.toMatch(AT_WORK);
  const unsaved = after.path.some((name) => name.includes('save fails'));
  if (!unsaved && after.disk)
    expect(after.disk.readings, `not stored: ${where}`).toEqual(after.context.work.readings);
}
