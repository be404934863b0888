import { assign, fromPromise, setup } from 'xstate';
import type { Circuit } from '../circuit/circuit.ts';
import type { CoilId } from '../circuit/seen-pickup.ts';
import type { SeenOf } from '../readings/reading.ts';
import { type CoilAsk, nextCoilAsk, type Playing } from '../sorter/together.ts';
import { sentenceOf } from './failure.ts';
import { once } from './once.ts';
import { storing, unstored } from './saving.ts';

/** What is kept of pickups that play together: what was told and seen, never what was concluded. */
export interface TogetherWork {
  readonly pickups: readonly {
    readonly id: string;
    readonly title: string;
    readonly coils: 1 | 2;
  }[];
  readonly readings: readonly {
    readonly id: string;
    readonly pickup: string;
    readonly coil: CoilId;
    readonly seen: SeenOf<'tap'> | SeenOf<'pole'>;
    readonly at: string;
  }[];
  readonly cautionsReadAt?: string;
  /** There is no compass: poles are not asked, and what hums stays open. */
  readonly noCompass?: boolean;
  /** The wiring that they are meant for, and which of its pickups each of them is. */
  readonly meant?: {
    readonly circuit: Circuit;
    /** Pickup of the circuit by id of the playing pickup. */
    readonly places: Readonly<Record<string, string>>;
  };
  readonly changedAt: string;
}

/** The pickups with what was seen of each. */
export const playingOf = ({ pickups, readings }: TogetherWork): readonly Playing[] =>
  pickups.map(({ id, coils }) => ({
    id,
    coils,
    seen: readings.filter(({ pickup }) => pickup === id),
  }));

const askOf = (work: TogetherWork): CoilAsk | null =>
  nextCoilAsk(playingOf(work), work.noCompass !== true);

export interface TogetherContext {
  readonly work: TogetherWork;
  readonly ask: CoilAsk | null;
  /** The work before undo. */
  readonly takenBack: TogetherWork | null;
  readonly failure: string | null;
}

export type TogetherEvent =
  | { readonly type: 'CAUTIONS_READ'; readonly at: string }
  | {
      readonly type: 'ENTER';
      readonly seen: SeenOf<'tap'> | SeenOf<'pole'>;
      readonly at: string;
    }
  /** Whether there is a compass to tell poles with; there is, unless it is said that there is none. */
  | { readonly type: 'COMPASS'; readonly is: boolean; readonly at: string }
  | { readonly type: 'HELP' }
  | { readonly type: 'BACK' }
  | { readonly type: 'UNDO'; readonly at: string }
  | { readonly type: 'PUT_BACK' }
  /** What one pickup showed is dropped and asked again. */
  | { readonly type: 'ASK_AGAIN'; readonly pickup: string; readonly at: string }
  | { readonly type: 'RETRY' }
  /** The wiring that they are meant for. */
  | {
      readonly type: 'MEANT';
      readonly meant: NonNullable<TogetherWork['meant']>;
      readonly at: string;
    }
  | { readonly type: 'CHANGED_ELSEWHERE'; readonly work: TogetherWork };

const acted = (work: TogetherWork): Partial<TogetherContext> => ({ work, takenBack: null });

const together = setup({
  types: {
    context: {} as TogetherContext,
    events: {} as TogetherEvent,
    input: {} as { readonly work: TogetherWork },
  },
  actors: {
    save: fromPromise<TogetherWork, TogetherWork>(() =>
      Promise.reject(new Error('This was started without "save".')),
    ),
  },
  guards: {
    cautionsUnread: ({ context }) => !context.work.cautionsReadAt,
    hasAsk: ({ context }) => askOf(context.work) !== null,
    canUndo: ({ context }) => context.work.readings.length > 0,
    canPutBack: ({ context }) => context.takenBack !== null,
  },
  actions: {
    keepCautionsRead: assign(({ context }, { at }: { at: string }) =>
      acted({ ...context.work, cautionsReadAt: at, changedAt: at }),
    ),
    chooseAsk: assign(({ context }) => ({ ask: askOf(context.work) })),
    keepSeen: assign(
      (
        { context: { work, ask } },
        { seen, at }: { seen: SeenOf<'tap'> | SeenOf<'pole'>; at: string },
      ) => {
        if (ask?.kind !== seen.kind) return {};
        const last = work.readings.reduce(
          (most, { id }) => Math.max(most, Number(/^r(\d+)/.exec(id)?.[1] ?? 0)),
          0,
        );
        const reading = { id: `r${last + 1}`, pickup: ask.pickup, coil: ask.coil, seen, at };
        return acted({ ...work, readings: [...work.readings, reading], changedAt: at });
      },
    ),
    takeBack: assign(({ context }, { at }: { at: string }) => ({
      ...acted({ ...context.work, readings: context.work.readings.slice(0, -1), changedAt: at }),
      takenBack: context.work,
    })),
    keepCompass: assign(({ context }, { is, at }: { is: boolean; at: string }) =>
      acted({ ...context.work, noCompass: !is, changedAt: at }),
    ),
    keepMeant: assign(
      ({ context: { work } }, { meant, at }: Extract<TogetherEvent, { type: 'MEANT' }>) =>
        acted({ ...work, meant, changedAt: at }),
    ),
    dropPickup: assign(({ context }, { pickup, at }: { pickup: string; at: string }) =>
      acted({
        ...context.work,
        readings: context.work.readings.filter((one) => one.pickup !== pickup),
        changedAt: at,
      }),
    ),
    putBack: assign(({ context }) => (context.takenBack ? acted(context.takenBack) : {})),
    /** What is stored may hold more than was sent: another tab works on the same sheet. */
    keepStored: assign((_, { work }: { work: TogetherWork }) => ({ work })),
    forgetFailure: assign({ failure: null }),
    keepFailure: assign((_, { error }: { error: unknown }) => ({ failure: sentenceOf(error) })),
  },
});

const at = ({ event }: { event: TogetherEvent }) => ({
  at: (event as Extract<TogetherEvent, { at: string }>).at,
});

export const togetherMachine = once(() =>
  together.createMachine({
    id: 'together',
    context: ({ input }) => ({ work: input.work, ask: null, takenBack: null, failure: null }),
    initial: 'placing',
    on: {
      UNDO: { guard: 'canUndo', target: '.saving', actions: { type: 'takeBack', params: at } },
      PUT_BACK: { guard: 'canPutBack', target: '.saving', actions: 'putBack' },
      COMPASS: {
        target: '.saving',
        actions: { type: 'keepCompass', params: ({ event }) => event },
      },
      ASK_AGAIN: {
        target: '.saving',
        actions: { type: 'dropPickup', params: ({ event }) => event },
      },
      MEANT: { target: '.saving', actions: { type: 'keepMeant', params: ({ event }) => event } },
      CHANGED_ELSEWHERE: {
        target: '.placing',
        actions: { type: 'keepStored', params: ({ event }) => ({ work: event.work }) },
      },
    },
    states: {
      /** Where it stands, from the work alone. */
      placing: {
        always: [
          { guard: 'cautionsUnread', target: 'cautions' },
          { guard: 'hasAsk', target: 'asking', actions: 'chooseAsk' },
          { target: 'known' },
        ],
      },
      cautions: {
        on: {
          CAUTIONS_READ: { target: 'saving', actions: { type: 'keepCautionsRead', params: at } },
        },
      },
      asking: {
        initial: 'entry',
        states: { entry: { on: { HELP: 'help' } }, help: { on: { BACK: 'entry' } } },
        on: {
          ENTER: { target: 'saving', actions: { type: 'keepSeen', params: ({ event }) => event } },
        },
      },
      known: {},
      saving: storing<TogetherWork>(),
      storageFailed: unstored,
    },
  }),
);
