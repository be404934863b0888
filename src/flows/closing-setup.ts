import { assign, fromPromise, setup } from 'xstate';
import type { SiteId } from '../circuit/edit.ts';
import type { Closing, ClosingEvidence, ClosingItem } from '../closing/closing.ts';
import type { Stage } from '../closing/stage.ts';
import type { Ask, Seen } from '../readings/reading.ts';
import { lastAct, withAnswers, withCautionsRead, withoutLastAct, withRefusal } from './acts.ts';
import {
  acted,
  answered,
  type ClosingContext,
  type ClosingEvent,
  doubtOf,
  isHalfway,
  nextItem,
} from './closing-conversation.ts';
import { checkUnderWay, withCheck, withCheckEnded } from './closing-work.ts';
import { sentenceOf, unprovided } from './failure.ts';
import type { Work } from './work.ts';

/** What a closing check can tell apart and can do: its states name these. */
export const check = setup({
  types: {
    context: {} as ClosingContext,
    events: {} as ClosingEvent,
    input: {} as { readonly work: Work },
  },
  actors: {
    check: fromPromise<Closing, ClosingEvidence>(unprovided('check', 'check')),
    save: fromPromise<Work, Work>(unprovided('check', 'save')),
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

export const at = ({ event }: { event: ClosingEvent }) => ({
  at: (event as Extract<ClosingEvent, { at: string }>).at,
});
export const fromElsewhere = ({ event }: { event: ClosingEvent }) => ({
  work: (event as Extract<ClosingEvent, { work: Work }>).work,
});
