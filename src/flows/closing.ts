// Longer than most: the named guards and actions and the table that uses them are one text, read from the top down.
import { assign, fromPromise, setup } from 'xstate';
import type { SiteId } from '../circuit/edit.ts';
import type { Closing, ClosingEvidence, ClosingItem } from '../closing/closing.ts';
import type { Stage } from '../closing/stage.ts';
import type { Ask, Seen } from '../readings/reading.ts';
import {
  type Answer,
  lastAct,
  sameAsk,
  withAnswers,
  withCautionsRead,
  withoutLastAct,
  withRefusal,
} from './acts.ts';
import { checkEvidence, checkUnderWay, withCheck, withCheckEnded } from './closing-work.ts';
import { type Doubt, doubtIn } from './doubt.ts';
import { sentenceOf, unprovided } from './failure.ts';
import type { DoneCheck, Work } from './work.ts';

/** The closing check as a conversation: where it stands follows from the work alone. */
export interface ClosingContext {
  readonly work: Work;
  readonly closing: Closing | null;
  /** What is asked now. */
  readonly item: ClosingItem | null;
  readonly typed: string;
  readonly doubt: Doubt | null;
  /** The item answered last, as it stood before, until something else is asked. */
  readonly answered: ClosingItem | null;
  /** The person looks at the list and not at one reading. */
  readonly listing: boolean;
  /** The head of the list has passed, and the person wants the rest of it, too. */
  readonly further: boolean;
  readonly failure: string | null;
}

export type ClosingEvent =
  | { readonly type: 'START'; readonly stage: Stage; readonly at: string }
  | { readonly type: 'CAUTIONS_READ'; readonly at: string }
  | { readonly type: 'LIST' }
  | { readonly type: 'GO_ON' }
  /** No more readings, though the list is not through. */
  | { readonly type: 'ENOUGH' }
  | { readonly type: 'CHOOSE'; readonly item: ClosingItem }
  | { readonly type: 'TYPE'; readonly text: string }
  | { readonly type: 'ENTER'; readonly seen: Seen; readonly at: string }
  | { readonly type: 'ENTERED_RIGHT'; readonly at: string }
  | { readonly type: 'TAKE_BETTER'; readonly at: string }
  | { readonly type: 'BACK' }
  | { readonly type: 'CANNOT_REACH'; readonly at: string }
  | { readonly type: 'JUMPS' }
  | { readonly type: 'HELP' }
  | { readonly type: 'JUMPS_AT'; readonly site: SiteId; readonly at: string }
  /** All of the list is through, or enough of it for the person: the check ends, with the room's temperature if it was told. */
  | { readonly type: 'END'; readonly celsius?: number; readonly at: string }
  | { readonly type: 'CHANGED_ELSEWHERE'; readonly work: Work }
  | { readonly type: 'RETRY' }
  | { readonly type: 'GO_ON_UNSAVED' }
  | { readonly type: 'UNDO'; readonly at: string };

/** What is asked next: once more what was off, then the next of the list after the one answered last, then what was passed over. */
export function nextItem(closing: Closing, after: ClosingItem | null): ClosingItem | null {
  const again = closing.items.find(({ mark }) => mark === 'again');
  if (again) return again;
  const at = after ? closing.items.findIndex(({ ask }) => sameAsk(ask, after.ask)) : -1;
  const open = ({ mark }: ClosingItem) => mark === 'open';
  return closing.items.slice(Math.max(0, at)).find(open) ?? closing.items.find(open) ?? null;
}

/** The head of the list has passed, nothing of the rest was begun, and the person has not asked for it yet. */
export const isHalfway = ({ closing, further }: Pick<ClosingContext, 'closing' | 'further'>) =>
  !further &&
  closing?.first.passed === true &&
  closing.items.length > closing.first.items &&
  closing.items.slice(closing.first.items).every(({ taken }) => taken === 0);

/**
 * How often one answer counts: the hands do all repeats of a movement in one go and tell once that nothing happened. The highest
 * figure of a turn is noted once.
 */
export function repeatsOf({ ask, mark, times, taken }: ClosingItem, seen: Seen): number {
  const quiet =
    (ask.kind === 'flex' && seen.kind === 'flex' && seen.how === 'steady') ||
    (ask.kind === 'turn' && seen.kind === 'turn' && seen.how === 'smooth');
  return quiet && mark === 'open' ? Math.max(1, times - taken) : 1;
}

function repeated(item: ClosingItem, seen: Seen): readonly Answer[] {
  const { ask } = item;
  const more: Seen = seen.kind === 'turn' ? { kind: 'turn', how: seen.how } : seen;
  return Array.from({ length: repeatsOf(item, seen) }, (_, time) => ({
    ask,
    seen: time === 0 ? seen : more,
  }));
}

const acted = (work: Work): Partial<ClosingContext> => ({ work, doubt: null, failure: null });

function answered({ work, item }: ClosingContext, seen: Seen, at: string): Partial<ClosingContext> {
  if (!item) return {};
  return {
    ...acted(withAnswers(work, repeated(item, seen), at)),
    typed: '',
    answered: item,
    listing: false,
  };
}

const doubtOf = ({ item }: ClosingContext, seen: Seen): Doubt | null =>
  doubtIn(item && { purpose: 'own', why: '', ...item }, seen);

const check = setup({
  types: {
    context: {} as ClosingContext,
    events: {} as ClosingEvent,
    input: {} as { readonly work: Work },
  },
  actors: {
    check: fromPromise<Closing, ClosingEvidence>(unprovided('closing check', 'check')),
    save: fromPromise<Work, Work>(unprovided('closing check', 'save')),
  },
  guards: {
    noneUnderWay: ({ context }) => checkUnderWay(context.work) === null,
    cautionsUnread: ({ context }) => !context.work.cautionsReadAt,
    hasFailed: ({ context }) => context.closing?.state === 'failed',
    hasPassed: ({ context }) => context.closing?.state === 'passed',
    wantsList: ({ context }) => context.listing,
    isHalfway: ({ context }) => isHalfway(context),
    isProbed: ({ context }) => context.item !== null && 'red' in context.item.ask,
    mayEnd: ({ context }) => context.closing?.first.passed === true,
    isDoubtful: ({ context, event }) =>
      event.type === 'ENTER' && doubtOf(context, event.seen) !== null,
    entryStarted: ({ context }) => context.typed !== '',
    canUndo: ({ context }) => lastAct(context.work) !== null,
  },
  actions: {
    storeStart: assign(({ context }, { stage, at }: { stage: Stage; at: string }) => ({
      ...acted(withCheck(context.work, { stage, startedAt: at })),
      listing: true,
    })),
    storeCautionsRead: assign(({ context }, { at }: { at: string }) =>
      acted(withCautionsRead(context.work, at)),
    ),
    storeAnswer: assign(({ context }, { seen, at }: { seen: Seen; at: string }) =>
      answered(context, seen, at),
    ),
    storeDoubted: assign(({ context }, { take, at }: { take: 'entered' | 'better'; at: string }) =>
      context.doubt ? answered(context, context.doubt[take], at) : {},
    ),
    /** A reading that jumps when a wire moves says so of that wire. */
    storeJump: assign(({ context }, { site, at }: { site: SiteId; at: string }) => {
      const { work, item } = context;
      if (!item || !('red' in item.ask)) return {};
      const { red, black, setting } = item.ask;
      const ask: Ask = { kind: 'flex', red, black, setting, site };
      return {
        ...acted(withAnswers(work, [{ ask, seen: { kind: 'flex', how: 'jumps' } }], at)),
        typed: '',
        answered: item,
        listing: false,
      };
    }),
    storeRefusal: assign(({ context }, { at }: { at: string }) =>
      context.item ? acted(withRefusal(context.work, context.item.ask, at)) : {},
    ),
    storeEnd: assign(({ context }, { celsius, at }: { celsius?: number; at: string }) =>
      acted(withCheckEnded(context.work, at, celsius)),
    ),
    takeBackLastAct: assign(({ context }, { at }: { at: string }) => ({
      ...acted(withoutLastAct(context.work, at)),
      answered: null,
      typed: '',
    })),
    keepStored: assign((_, { work }: { work: Work }) => ({ work })),
    keepClosing: assign((_, { closing }: { closing: Closing }) => ({ closing, failure: null })),
    chooseNext: assign(({ context: { closing, answered: last } }) => ({
      item: closing && nextItem(closing, last),
      typed: '',
    })),
    chooseItem: assign((_, { item }: { item: ClosingItem }) => ({
      item,
      typed: '',
      answered: null,
      listing: false,
    })),
    showList: assign({ listing: true, answered: null }),
    leaveList: assign({ listing: false }),
    goFurther: assign({ further: true }),
    keepTyped: assign((_, { text }: { text: string }) => ({ typed: text })),
    keepDoubt: assign(({ context }, { seen }: { seen: Seen }) => ({
      doubt: doubtOf(context, seen),
    })),
    dropDoubt: assign({ doubt: null }),
    keepFailure: assign((_, { error }: { error: unknown }) => ({ failure: sentenceOf(error) })),
    forgetFailure: assign({ failure: null }),
  },
});

const at = ({ event }: { event: ClosingEvent }) => ({
  at: (event as Extract<ClosingEvent, { at: string }>).at,
});
const fromElsewhere = ({ event }: { event: ClosingEvent }) => ({
  work: (event as Extract<ClosingEvent, { work: Work }>).work,
});

export const closingMachine = check.createMachine({
  id: 'closing',
  context: ({ input }) => ({
    work: input.work,
    closing: null,
    item: null,
    typed: '',
    doubt: null,
    answered: null,
    listing: true,
    further: false,
    failure: null,
  }),
  initial: 'placing',
  on: {
    UNDO: { guard: 'canUndo', target: '.saving', actions: { type: 'takeBackLastAct', params: at } },
    CHANGED_ELSEWHERE: {
      target: '.placing',
      actions: { type: 'keepStored', params: fromElsewhere },
    },
  },
  states: {
    /** Where the check stands, from the work alone: at the start, after a crash, after every act. */
    placing: {
      always: [
        { guard: 'noneUnderWay', target: 'starting' },
        { guard: 'cautionsUnread', target: 'cautions' },
        { target: 'checking' },
      ],
    },
    /** No check is under way: how far is the guitar put together? Ended ones are on record. */
    starting: {
      on: {
        START: { target: 'saving', actions: { type: 'storeStart', params: ({ event }) => event } },
      },
    },
    cautions: {
      on: {
        CAUTIONS_READ: { target: 'saving', actions: { type: 'storeCautionsRead', params: at } },
      },
    },
    checking: {
      invoke: {
        src: 'check',
        input: ({ context: { work } }) => checkEvidence(work, checkUnderWay(work) as DoneCheck),
        onDone: {
          target: 'onward',
          actions: { type: 'keepClosing', params: ({ event }) => ({ closing: event.output }) },
        },
        onError: {
          target: 'engineFailed',
          actions: { type: 'keepFailure', params: ({ event }) => ({ error: event.error }) },
        },
      },
    },
    engineFailed: { on: { RETRY: { target: 'checking', actions: 'forgetFailure' } } },
    /** How the list stands is known: what comes next follows from it. */
    onward: {
      always: [
        { guard: 'hasFailed', target: 'failed' },
        { guard: 'hasPassed', target: 'passed' },
        { guard: 'wantsList', target: 'list' },
        { guard: 'isHalfway', target: 'halfway' },
        { target: 'asking', actions: 'chooseNext' },
      ],
    },
    list: {
      on: {
        GO_ON: { target: 'onward', actions: 'leaveList' },
        CHOOSE: { target: 'asking', actions: { type: 'chooseItem', params: ({ event }) => event } },
        ENOUGH: { guard: 'mayEnd', target: 'halfway' },
      },
    },
    /** What shows most of what goes wrong has passed: the rest, or enough? */
    halfway: {
      on: {
        LIST: { target: 'list', actions: 'showList' },
        GO_ON: { target: 'onward', actions: ['goFurther', 'leaveList'] },
        END: { target: 'saving', actions: { type: 'storeEnd', params: ({ event }) => event } },
      },
    },
    asking: {
      initial: 'entry',
      on: {
        LIST: { target: 'list', actions: 'showList' },
        CANNOT_REACH: { target: 'saving', actions: { type: 'storeRefusal', params: at } },
        CHANGED_ELSEWHERE: [
          { guard: 'entryStarted', actions: { type: 'keepStored', params: fromElsewhere } },
          { target: 'placing', actions: { type: 'keepStored', params: fromElsewhere } },
        ],
      },
      states: {
        entry: {
          on: {
            TYPE: { actions: { type: 'keepTyped', params: ({ event }) => event } },
            JUMPS: { guard: 'isProbed', target: 'jumping' },
            HELP: 'help',
            ENTER: [
              {
                guard: 'isDoubtful',
                target: 'doubtful',
                actions: { type: 'keepDoubt', params: ({ event }) => event },
              },
              {
                target: '#closing.saving',
                actions: { type: 'storeAnswer', params: ({ event }) => event },
              },
            ],
          },
        },
        help: { on: { BACK: 'entry' } },
        /** The reading will not stand still: the tips first, then the wire that moves it. */
        jumping: {
          on: {
            BACK: 'entry',
            JUMPS_AT: {
              target: '#closing.saving',
              actions: { type: 'storeJump', params: ({ event }) => event },
            },
          },
        },
        doubtful: {
          on: {
            ENTERED_RIGHT: {
              target: '#closing.saving',
              actions: {
                type: 'storeDoubted',
                params: ({ event }) => ({ take: 'entered' as const, at: event.at }),
              },
            },
            TAKE_BETTER: {
              target: '#closing.saving',
              actions: {
                type: 'storeDoubted',
                params: ({ event }) => ({ take: 'better' as const, at: event.at }),
              },
            },
            BACK: { target: 'entry', actions: 'dropDoubt' },
          },
        },
      },
    },
    /** A reading is off for good: the same job goes on as a hunt, with everything that was read. */
    failed: {
      on: {
        LIST: { target: 'list', actions: 'showList' },
        CHOOSE: { target: 'asking', actions: { type: 'chooseItem', params: ({ event }) => event } },
      },
    },
    passed: {
      on: {
        LIST: { target: 'list', actions: 'showList' },
        END: { target: 'saving', actions: { type: 'storeEnd', params: ({ event }) => event } },
      },
    },
    /** Nothing new is asked before the last act is stored. */
    saving: {
      invoke: {
        src: 'save',
        input: ({ context }) => context.work,
        onDone: {
          target: 'placing',
          actions: { type: 'keepStored', params: ({ event }) => ({ work: event.output }) },
        },
        onError: {
          target: 'storageFailed',
          actions: { type: 'keepFailure', params: ({ event }) => ({ error: event.error }) },
        },
      },
      // Storing joins what both tabs did, and gives it back.
      on: { CHANGED_ELSEWHERE: {} },
    },
    storageFailed: {
      on: {
        CHANGED_ELSEWHERE: {},
        RETRY: { target: 'saving', actions: 'forgetFailure' },
        GO_ON_UNSAVED: { target: 'placing', actions: 'forgetFailure' },
      },
    },
  },
});
