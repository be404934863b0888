import { assign, fromPromise, setup } from 'xstate';
import { bits } from '../circuit/units.ts';
import type { Seen } from '../readings/reading.ts';
import type { SortEvidence, Sorting, SortQuestion } from '../sorter/sort.ts';
import type { Doubt } from './doubt.ts';
import { sentenceOf, unprovided } from './failure.ts';
import { once } from './once.ts';
import { keepFailure, storing, unstored } from './saving.ts';
import { doubtOnTheMat } from './sort-doubt.ts';
import {
  hasActs,
  type SortWork,
  withoutAsk,
  withoutLast,
  withReading,
  withRefusedAgain,
} from './sort-work.ts';

export interface SortContext {
  readonly work: SortWork;
  readonly sorting: Sorting | null;
  readonly question: SortQuestion | null;
  readonly typed: string;
  readonly doubt: Doubt | null;
  /** What is asked beyond what the answer needs. */
  readonly beyond: 'surer' | 'poles' | null;
  /** The work before undo. */
  readonly takenBack: SortWork | null;
  readonly failure: string | null;
}

export type SortEvent =
  | { readonly type: 'CAUTIONS_READ'; readonly at: string }
  | { readonly type: 'TYPE'; readonly text: string }
  | { readonly type: 'ENTER'; readonly seen: Seen; readonly at: string }
  | { readonly type: 'TAKE_BETTER'; readonly at: string }
  | { readonly type: 'ENTERED_RIGHT'; readonly at: string }
  /** The swing could not be told: the same tap again. */
  | { readonly type: 'UNCLEAR' }
  | { readonly type: 'HELP' }
  | { readonly type: 'BACK' }
  | { readonly type: 'CANNOT_REACH'; readonly at: string }
  /** The reading named by a contradiction, once more. */
  | { readonly type: 'REPEAT'; readonly reading: string }
  | { readonly type: 'SURER' }
  /** What could not be done before is asked again. */
  | { readonly type: 'ASK_REFUSED'; readonly at: string }
  | { readonly type: 'POLES' }
  | { readonly type: 'UNDO'; readonly at: string }
  | { readonly type: 'PUT_BACK' }
  | { readonly type: 'RETRY' }
  | { readonly type: 'CHANGED_ELSEWHERE'; readonly work: SortWork };

const startOn = (work: SortWork): SortContext => ({
  work,
  sorting: null,
  question: null,
  typed: '',
  doubt: null,
  beyond: null,
  takenBack: null,
  failure: null,
});

/** After an act: nothing is half entered, and the way back from undo is gone. */
const acted = (work: SortWork): Partial<SortContext> => ({
  work,
  typed: '',
  doubt: null,
  takenBack: null,
});

const answered = (
  { work, question, beyond }: SortContext,
  seen: Seen,
  at: string,
): Partial<SortContext> =>
  question
    ? {
        ...acted(withReading(work, question.ask, seen, at)),
        beyond: beyond === 'surer' ? null : beyond,
      }
    : {};

const sort = setup({
  types: {
    context: {} as SortContext,
    events: {} as SortEvent,
    input: {} as { readonly work: SortWork },
  },
  actors: {
    sort: fromPromise<Sorting, SortEvidence>(unprovided('sorter', 'sort')),
    save: fromPromise<SortWork, SortWork>(unprovided('sorter', 'save')),
  },
  guards: {
    cautionsUnread: ({ context }) => !context.work.cautionsReadAt,
    hasQuestion: ({ context: { sorting, beyond } }) =>
      !!sorting &&
      sorting.next.length > 0 &&
      (sorting.state === 'asking' || (beyond === 'surer' && sorting.next.length > 0)),
    hasPole: ({ context: { sorting, beyond } }) =>
      beyond === 'poles' && !!sorting && sorting.poleAsks.length > 0,
    isDoubtful: ({ context, event }) =>
      event.type === 'ENTER' && doubtOnTheMat(context.question, event.seen) !== null,
    canUndo: ({ context }) => hasActs(context.work),
    canPutBack: ({ context }) => context.takenBack !== null,
    canRepeat: ({ context, event }) =>
      event.type === 'REPEAT' && context.work.readings.some(({ id }) => id === event.reading),
  },
  actions: {
    keepCautionsRead: assign(({ context }, { at }: { at: string }) =>
      acted({ ...context.work, cautionsReadAt: at, changedAt: at }),
    ),
    keepTyped: assign((_, { text }: { text: string }) => ({ typed: text })),
    keepAnswer: assign(({ context }, { seen, at }: { seen: Seen; at: string }) =>
      answered(context, seen, at),
    ),
    keepDoubt: assign(({ context }, { seen }: { seen: Seen }) => ({
      doubt: doubtOnTheMat(context.question, seen),
    })),
    keepDoubted: assign(({ context }, { take, at }: { take: 'entered' | 'better'; at: string }) =>
      context.doubt ? answered(context, context.doubt[take], at) : {},
    ),
    dropDoubt: assign({ doubt: null }),
    keepRefusal: assign(({ context }, { at }: { at: string }) =>
      context.question ? acted(withoutAsk(context.work, context.question.ask, at)) : {},
    ),
    dropRefusals: assign(({ context }, { at }: { at: string }) => ({
      ...acted(withRefusedAgain(context.work, at)),
      takenBack: context.work,
    })),
    takeBack: assign(({ context }, { at }: { at: string }) => ({
      ...acted(withoutLast(context.work, at)),
      beyond: null,
      takenBack: context.work,
    })),
    putBack: assign(({ context }) => (context.takenBack ? acted(context.takenBack) : {})),
    /** What is stored may hold more than was sent: another tab works on the same pickup. */
    keepStored: assign((_, { work }: { work: SortWork }) => ({ work })),
    keepSorting: assign((_, { sorting }: { sorting: Sorting }) => ({ sorting, failure: null })),
    chooseQuestion: assign(({ context }) => ({ question: context.sorting?.next[0] ?? null })),
    choosePole: assign(({ context }) => ({ question: context.sorting?.poleAsks[0] ?? null })),
    chooseRepeat: assign(({ context }, { reading }: { reading: string }) => {
      const ask = context.work.readings.find(({ id }) => id === reading)?.ask;
      const known = context.sorting?.contradiction;
      return ask && known
        ? { question: { ask, askText: known.repeatText, worthBits: bits(0), likely: [] } }
        : {};
    }),
    wantSurer: assign({ beyond: 'surer' }),
    wantPoles: assign({ beyond: 'poles' }),
    forgetFailure: assign({ failure: null }),
    keepFailure: assign((_, { error }: { error: unknown }) => ({ failure: sentenceOf(error) })),
  },
});

const at = ({ event }: { event: SortEvent }) => ({
  at: (event as Extract<SortEvent, { at: string }>).at,
});
const entered = ({ event }: { event: Extract<SortEvent, { type: 'ENTER' }> }) => event;
const unlessDoubtful = [
  {
    guard: 'isDoubtful',
    target: '#sort.asking.doubtful',
    actions: { type: 'keepDoubt', params: entered },
  },
  { target: '#sort.saving', actions: { type: 'keepAnswer', params: entered } },
] as const;

export const sortMachine = once(() =>
  sort.createMachine({
    id: 'sort',
    context: ({ input }) => startOn(input.work),
    initial: 'placing',
    on: {
      UNDO: { guard: 'canUndo', target: '.saving', actions: { type: 'takeBack', params: at } },
      PUT_BACK: { guard: 'canPutBack', target: '.saving', actions: 'putBack' },
      CHANGED_ELSEWHERE: {
        target: '.placing',
        actions: { type: 'keepStored', params: ({ event }) => ({ work: event.work }) },
      },
    },
    states: {
      /** Where the sorting stands, from the work alone. */
      placing: { always: [{ guard: 'cautionsUnread', target: 'cautions' }, { target: 'sorting' }] },
      cautions: {
        on: {
          CAUTIONS_READ: { target: 'saving', actions: { type: 'keepCautionsRead', params: at } },
        },
      },
      sorting: {
        invoke: {
          src: 'sort',
          input: ({ context: { work } }) => ({
            seen: work.seen,
            meter: work.meter,
            readings: work.readings,
            refused: work.refused,
          }),
          onDone: {
            target: 'onward',
            actions: { type: 'keepSorting', params: ({ event }) => ({ sorting: event.output }) },
          },
          onError: {
            target: 'sortFailed',
            actions: keepFailure,
          },
        },
      },
      sortFailed: { on: { RETRY: 'sorting' } },
      onward: {
        always: [
          { guard: 'hasPole', target: 'asking', actions: 'choosePole' },
          { guard: 'hasQuestion', target: 'asking', actions: 'chooseQuestion' },
          { target: 'sorted' },
        ],
      },
      asking: {
        initial: 'entry',
        on: {
          CANNOT_REACH: { target: 'saving', actions: { type: 'keepRefusal', params: at } },
          REPEAT: {
            guard: 'canRepeat',
            target: '.entry',
            actions: { type: 'chooseRepeat', params: ({ event }) => event },
          },
        },
        states: {
          entry: {
            on: {
              TYPE: { actions: { type: 'keepTyped', params: ({ event }) => event } },
              ENTER: unlessDoubtful,
              UNCLEAR: 'unclear',
              HELP: 'help',
            },
          },
          /** 5.9 typed for 5.9 k. */
          doubtful: {
            on: {
              TAKE_BETTER: {
                target: '#sort.saving',
                actions: {
                  type: 'keepDoubted',
                  params: ({ event }) => ({ take: 'better', at: event.at }),
                },
              },
              ENTERED_RIGHT: {
                target: '#sort.saving',
                actions: {
                  type: 'keepDoubted',
                  params: ({ event }) => ({ take: 'entered', at: event.at }),
                },
              },
              BACK: { target: 'entry', actions: 'dropDoubt' },
            },
          },
          /** The same tap, done again with more care; what is still unclear then is left out. */
          unclear: { on: { ENTER: unlessDoubtful, BACK: 'entry' } },
          help: { on: { BACK: 'entry' } },
        },
      },
      sorted: {
        on: {
          SURER: { target: 'onward', actions: 'wantSurer' },
          POLES: { target: 'onward', actions: 'wantPoles' },
          ASK_REFUSED: { target: 'saving', actions: { type: 'dropRefusals', params: at } },
          REPEAT: {
            guard: 'canRepeat',
            target: 'asking',
            actions: { type: 'chooseRepeat', params: ({ event }) => event },
          },
        },
      },
      saving: storing<SortWork>(),
      storageFailed: unstored,
    },
  }),
);
