import { assign, fromPromise, setup } from 'xstate';
import type { Circuit } from '../circuit/circuit.ts';
import type { Assessment, Evidence, Expectation, Standing } from '../diagnosis/assessment.ts';
import type { Ask, Meter, Seen } from '../readings/reading.ts';
import {
  type Answer,
  lastAct,
  withAnswers,
  withCautionsRead,
  withClosing,
  withCorrection,
  withGuitarOpen,
  withoutLastAct,
  withRefusal,
  withReopening,
  withRepair,
} from './acts.ts';
import { changeBy } from './change.ts';
import { acted, answered, type HuntContext, type HuntEvent, type Wish } from './conversation.ts';
import { doubtIn } from './doubt.ts';
import { sentenceOf, unprovided } from './failure.ts';
import { questionFrom, tellsLittle } from './question.ts';
import { needsOpenGuitar } from './reach.ts';
import { evidenceOf, type Work } from './work.ts';

/** What a hunt can tell apart and can do: its states, in the files beside this one, name these. */
export const hunt = setup({
  types: {
    context: {} as HuntContext,
    events: {} as HuntEvent,
    input: {} as { readonly work: Work },
  },
  actors: {
    stand: fromPromise<Standing, Evidence>(unprovided('hunt', 'stand')),
    assess: fromPromise<Assessment, Evidence>(unprovided('hunt', 'assess')),
    /** The same while something is read that does not wait for it. */
    assessMeanwhile: fromPromise<Assessment, Evidence>(unprovided('hunt', 'assessMeanwhile')),
    expect: fromPromise<Expectation, { work: Work; ask: Ask }>(unprovided('hunt', 'expect')),
    save: fromPromise<Work, Work>(unprovided('hunt', 'save')),
  },
  guards: {
    isClosed: ({ context }) => context.work.closedAt !== undefined,
    nothingToldYet: ({ context: { work } }) =>
      !work.cautionsReadAt && work.readings.length + work.repairs.length === 0,
    cautionsUnread: ({ context }) => !context.work.cautionsReadAt,
    newestIsShown: ({ context }) => context.newest !== null && context.change !== null,
    newestIsNotShown: ({ context }) => context.newest !== null && context.change === null,
    wishesOn: ({ context }) => context.wish === 'next',
    wishesOwn: ({ context }) => context.wish === 'own',
    isHalfAssessed: ({ context }) => context.halfAssessed,
    isOpenJob: ({ context }) => context.work.closedAt === undefined,
    ownAskWaits: ({ context }) => context.ownAsk !== null,
    guitarMustBeOpened: ({ context: { work, question } }) =>
      work.access === 'closed' && question !== null && needsOpenGuitar(work.circuit, question.ask),
    openingTellsMore: ({ context: { work, question, staysClosed } }) =>
      work.access === 'closed' && !staysClosed && question !== null && tellsLittle(question),
    hasQuestion: ({ context }) => context.question !== null,
    /** Something of the person's own is on the screen, which a new question would wipe out. */
    entryStarted: ({ context: { typed, question } }) => typed !== '' || question?.purpose === 'own',
    hasVerdict: ({ context }) => !!context.assessment?.verdict,
    isDoubtful: ({ context, event }) =>
      event.type === 'ENTER' && doubtIn(context.question, event.seen) !== null,
    canUndo: ({ context }) => lastAct(context.work) !== null,
    canPutBack: ({ context }) => context.takenBack !== null,
  },
  actions: {
    storeHeard: assign(({ context }, { answers, at }: { answers: readonly Answer[]; at: string }) =>
      acted(withAnswers(context.work, answers, at)),
    ),
    storeCautionsRead: assign(({ context }, { at }: { at: string }) =>
      // A reading that the person chose before waits for the cautions.
      ({ ...acted(withCautionsRead(context.work, at)), ownAsk: context.ownAsk }),
    ),
    storeOpening: assign(({ context }, { at }: { at: string }) =>
      acted(withGuitarOpen(context.work, at)),
    ),
    storeAnswer: assign(({ context }, { seen, at }: { seen: Seen; at: string }) =>
      context.question ? answered(context, { ask: context.question.ask, seen }, at) : {},
    ),
    storeDoubted: assign(({ context }, { take, at }: { take: 'entered' | 'better'; at: string }) =>
      context.question && context.doubt
        ? answered(context, { ask: context.question.ask, seen: context.doubt[take] }, at)
        : {},
    ),
    /** A steady reading that jumps when a wire moves says so of that wire's joint. */
    storeJump: assign(({ context }, { site, at }: { site: string; at: string }) => {
      const ask = context.question?.ask;
      if (!ask || !('red' in ask)) return {};
      const { red, black, setting } = ask;
      const seen: Seen = { kind: 'flex', how: 'jumps' };
      return answered(context, { ask: { kind: 'flex', site, red, black, setting }, seen }, at);
    }),
    storeRefusal: assign(({ context }, { at }: { at: string }) =>
      context.question ? acted(withRefusal(context.work, context.question.ask, at)) : {},
    ),
    storeRepair: assign(
      ({ context }, { repair, title, at }: { repair: string; title: string; at: string }) =>
        acted(withRepair(context.work, { repair, title, at })),
    ),
    storeCorrection: assign(({ context }, told: { circuit: Circuit; meter: Meter; at: string }) =>
      acted(withCorrection(context.work, told, told.at)),
    ),
    storeClosing: assign(({ context }, { at }: { at: string }) =>
      acted(withClosing(context.work, at)),
    ),
    storeReopening: assign(({ context }, { at }: { at: string }) =>
      acted(withReopening(context.work, at)),
    ),
    takeBackLastAct: assign(({ context }, { at }: { at: string }) => ({
      ...acted(withoutLastAct(context.work, at)),
      takenBack: context.work,
    })),
    putBack: assign(({ context }) => (context.takenBack ? acted(context.takenBack) : {})),
    /** What is stored may hold more than was sent: another tab works on the same job. What the newest reading changed is looked at anew then. */
    keepStored: assign(({ context }, { work }: { work: Work }) => ({
      work,
      change: isToldTheSame(context.work, work) ? context.change : null,
    })),
    keepWish: assign((_, { wish }: { wish: Wish }) => ({ wish })),
    takeFromElsewhere: assign((_, { work }: { work: Work }) => acted(work)),
    keepClosed: assign({ staysClosed: true }),
    keepTyped: assign((_, { text }: { text: string }) => ({ typed: text })),
    keepDoubt: assign(({ context }, { seen }: { seen: Seen }) => ({
      doubt: doubtIn(context.question, seen),
    })),
    dropDoubt: assign({ doubt: null }),
    keepAssessment: assign((_, { assessment }: { assessment: Assessment }) => ({
      assessment,
      halfAssessed: false,
    })),
    keepStanding: assign((_, { standing }: { standing: Standing }) => ({
      assessment: { ...standing, next: [], verdict: null, learned: [], recheck: [] },
      halfAssessed: true,
    })),
    compareWithBefore: assign(({ context: { newest, assessment } }) => ({
      change: newest && assessment ? changeBy(newest.id, newest.before, assessment) : null,
    })),
    forgetNewest: assign({ newest: null, change: null, wish: null }),
    chooseQuestion: assign(({ context: { work, assessment, question, typed } }) => {
      const next = assessment && questionFrom(work, assessment);
      const same = JSON.stringify(next?.ask) === JSON.stringify(question?.ask);
      return { question: next, typed: same ? typed : '' };
    }),
    keepOwnAsk: assign((_, { ask }: { ask: Ask }) => ({ ownAsk: ask, failure: null })),
    forgetOwnAsk: assign({ ownAsk: null }),
    askOwn: assign(({ context }, { expected }: { expected: Expectation }) => ({
      question: context.ownAsk && {
        purpose: 'own' as const,
        ask: context.ownAsk,
        askText: '',
        why: '',
        expected,
      },
      ownAsk: null,
      typed: '',
    })),
    keepFailure: assign((_, { error }: { error: unknown }) => ({ failure: sentenceOf(error) })),
    forgetFailure: assign({ failure: null }),
  },
});

const isToldTheSame = (one: Work, other: Work): boolean =>
  one === other || JSON.stringify(evidenceOf(one)) === JSON.stringify(evidenceOf(other));

export const at = ({ event }: { event: HuntEvent }) => ({
  at: (event as Extract<HuntEvent, { at: string }>).at,
});
export const fromElsewhere = ({ event }: { event: HuntEvent }) => ({
  work: (event as Extract<HuntEvent, { work: Work }>).work,
});
/** The work is joined to what another tab did; the screen stays, because the person is busy on it. */
export const joinedQuietly = {
  actions: { type: 'keepStored', params: fromElsewhere },
} as const;
