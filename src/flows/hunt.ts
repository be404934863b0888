// Longer than most: the named guards and actions and the table that uses them are one text, read from the top down.
import { and, assign, fromPromise, setup } from 'xstate';
import type { Circuit } from '../circuit/circuit.ts';
import type { Assessment, Evidence, Expectation, Standing } from '../diagnosis/assessment.ts';
import type { Ask, Meter, Seen } from '../readings/reading.ts';
import { flowWords } from '../words/en/flows.ts';
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
import {
  acted,
  answered,
  conversationOn,
  type HuntContext,
  type HuntEvent,
} from './conversation.ts';
import { doubtIn } from './doubt.ts';
import { questionFrom, tellsLittle } from './question.ts';
import { needsOpenGuitar } from './reach.ts';
import { evidenceOf, type Work } from './work.ts';

const sentenceOf = (error: unknown): string =>
  error instanceof Error && error.message ? error.message : flowWords().noReasonWasGiven;

const unprovided = (name: string) => () =>
  Promise.reject(new Error(`The hunt was started without "${name}".`));

const hunt = setup({
  types: {
    context: {} as HuntContext,
    events: {} as HuntEvent,
    input: {} as { readonly work: Work },
  },
  actors: {
    stand: fromPromise<Standing, Evidence>(unprovided('stand')),
    assess: fromPromise<Assessment, Evidence>(unprovided('assess')),
    expect: fromPromise<Expectation, { work: Work; ask: Ask }>(unprovided('expect')),
    save: fromPromise<Work, Work>(unprovided('save')),
  },
  guards: {
    isClosed: ({ context }) => context.work.closedAt !== undefined,
    nothingToldYet: ({ context: { work } }) =>
      !work.cautionsReadAt && work.readings.length + work.repairs.length === 0,
    cautionsUnread: ({ context }) => !context.work.cautionsReadAt,
    newestIsNotShown: ({ context }) => context.newest !== null && context.change === null,
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
    /** What is stored may hold more than was sent: another tab works on the same job. */
    keepStored: assign((_, { work }: { work: Work }) => ({ work })),
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
    forgetNewest: assign({ newest: null, change: null }),
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

const at = ({ event }: { event: HuntEvent }) => ({
  at: (event as Extract<HuntEvent, { at: string }>).at,
});
const fromElsewhere = ({ event }: { event: HuntEvent }) => ({
  work: (event as Extract<HuntEvent, { work: Work }>).work,
});
/** The work is joined to what another tab did; the screen stays, because the person is busy on it. */
const joinedQuietly = {
  actions: { type: 'keepStored', params: fromElsewhere },
} as const;

export const huntMachine = hunt.createMachine({
  id: 'hunt',
  context: ({ input }) => conversationOn(input.work),
  initial: 'placing',
  on: {
    UNDO: { guard: 'canUndo', target: '.saving', actions: { type: 'takeBackLastAct', params: at } },
    CLOSE: { target: '.saving', actions: { type: 'storeClosing', params: at } },
    CORRECT: {
      target: '.saving',
      actions: { type: 'storeCorrection', params: ({ event }) => event },
    },
    SAW: {
      guard: 'isOpenJob',
      target: '.saving',
      actions: { type: 'storeHeard', params: ({ event }) => event },
    },
    /** A reading chosen elsewhere, as on the reading card: wherever the hunt stands, it is asked next. */
    OWN_ASK: [
      {
        guard: and(['isOpenJob', 'cautionsUnread']),
        target: '.cautions',
        actions: { type: 'keepOwnAsk', params: ({ event }) => event },
      },
      {
        guard: 'isOpenJob',
        target: '.assessing',
        actions: ['forgetNewest', { type: 'keepOwnAsk', params: ({ event }) => event }],
      },
    ],
    PUT_BACK: { guard: 'canPutBack', target: '.saving', actions: 'putBack' },
    CHANGED_ELSEWHERE: {
      target: '.placing',
      actions: { type: 'takeFromElsewhere', params: fromElsewhere },
    },
  },
  states: {
    /** Where the hunt stands, from the work alone: at the start, after a crash, after every act. */
    placing: {
      always: [
        { guard: 'isClosed', target: 'closed' },
        { guard: 'nothingToldYet', target: 'symptom' },
        { guard: 'cautionsUnread', target: 'cautions' },
        { guard: 'newestIsNotShown', target: 'standing' },
        { target: 'assessing' },
      ],
    },
    symptom: {
      on: {
        HEARD: {
          target: 'saving',
          actions: { type: 'storeHeard', params: ({ event }) => event },
        },
        SKIP: 'cautions',
      },
    },
    cautions: {
      on: {
        CAUTIONS_READ: { target: 'saving', actions: { type: 'storeCautionsRead', params: at } },
        BACK: { guard: 'nothingToldYet', target: 'symptom' },
      },
    },
    /** What the newest reading did is shown while it is worked out what follows from it. */
    standing: {
      invoke: {
        src: 'stand',
        input: ({ context }) => evidenceOf(context.work),
        onDone: {
          target: 'changed',
          actions: [
            { type: 'keepStanding', params: ({ event }) => ({ standing: event.output }) },
            'compareWithBefore',
          ],
        },
        onError: {
          target: 'engineFailed',
          actions: { type: 'keepFailure', params: ({ event }) => ({ error: event.error }) },
        },
      },
    },
    assessing: {
      invoke: {
        src: 'assess',
        input: ({ context }) => evidenceOf(context.work),
        onDone: {
          target: 'onward',
          actions: {
            type: 'keepAssessment',
            params: ({ event }) => ({ assessment: event.output }),
          },
        },
        onError: {
          target: 'engineFailed',
          actions: { type: 'keepFailure', params: ({ event }) => ({ error: event.error }) },
        },
      },
    },
    engineFailed: {
      on: { RETRY: { target: 'placing', actions: 'forgetFailure' } },
    },
    /** The belief is known: what comes next follows from it. */
    onward: {
      entry: 'chooseQuestion',
      always: [
        { guard: 'isHalfAssessed', target: 'assessing' },
        { guard: 'ownAskWaits', target: 'expecting' },
        { guard: 'guitarMustBeOpened', target: 'opening' },
        { guard: 'openingTellsMore', target: 'opening' },
        { guard: 'hasQuestion', target: 'asking' },
        { guard: 'hasVerdict', target: 'verdict' },
        { target: 'nothingLeft' },
      ],
    },
    opening: {
      on: {
        OPENED: { target: 'saving', actions: { type: 'storeOpening', params: at } },
        CANNOT_REACH: { target: 'saving', actions: { type: 'storeRefusal', params: at } },
        STAY_CLOSED: { target: 'onward', actions: 'keepClosed' },
      },
    },
    asking: {
      initial: 'entry',
      on: {
        CANNOT_REACH: { target: 'saving', actions: { type: 'storeRefusal', params: at } },
        VOLUNTEER: 'volunteering',
        OPENED: { target: 'saving', actions: { type: 'storeOpening', params: at } },
        CHANGED_ELSEWHERE: [
          { guard: 'entryStarted', ...joinedQuietly },
          {
            target: 'placing',
            actions: { type: 'takeFromElsewhere', params: fromElsewhere },
          },
        ],
      },
      states: {
        entry: {
          on: {
            TYPE: { actions: { type: 'keepTyped', params: ({ event }) => event } },
            ENTER: [
              {
                guard: 'isDoubtful',
                target: 'doubtful',
                actions: { type: 'keepDoubt', params: ({ event }) => event },
              },
              {
                target: '#hunt.saving',
                actions: { type: 'storeAnswer', params: ({ event }) => event },
              },
            ],
            JUMPS: 'jumping',
            HELP: 'help',
          },
        },
        doubtful: {
          on: {
            ENTERED_RIGHT: {
              target: '#hunt.saving',
              actions: {
                type: 'storeDoubted',
                params: ({ event }) => ({ take: 'entered' as const, at: event.at }),
              },
            },
            TAKE_BETTER: {
              target: '#hunt.saving',
              actions: {
                type: 'storeDoubted',
                params: ({ event }) => ({ take: 'better' as const, at: event.at }),
              },
            },
            BACK: { target: 'entry', actions: 'dropDoubt' },
          },
        },
        jumping: {
          on: {
            JUMPS_AT: {
              target: '#hunt.saving',
              actions: { type: 'storeJump', params: ({ event }) => event },
            },
            BACK: 'entry',
          },
        },
        help: { on: { BACK: 'entry' } },
      },
    },
    /** The person has a reading that was not asked for. */
    volunteering: {
      on: {
        OWN_ASK: {
          target: 'expecting',
          actions: { type: 'keepOwnAsk', params: ({ event }) => event },
        },
        BACK: { target: 'onward', actions: ['forgetOwnAsk', 'forgetFailure'] },
        CHANGED_ELSEWHERE: joinedQuietly,
      },
    },
    expecting: {
      invoke: {
        src: 'expect',
        input: ({ context }) => ({ work: context.work, ask: context.ownAsk as Ask }),
        onDone: {
          target: 'asking',
          actions: { type: 'askOwn', params: ({ event }) => ({ expected: event.output }) },
        },
        onError: {
          target: 'volunteering',
          actions: { type: 'keepFailure', params: ({ event }) => ({ error: event.error }) },
        },
      },
      on: { CHANGED_ELSEWHERE: joinedQuietly },
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
      on: { CHANGED_ELSEWHERE: {}, OWN_ASK: {}, SAW: {} },
    },
    storageFailed: {
      on: {
        // What is here is not stored: it is joined when it is.
        CHANGED_ELSEWHERE: {},
        OWN_ASK: {},
        SAW: {},
        RETRY: { target: 'saving', actions: 'forgetFailure' },
        GO_ON_UNSAVED: { target: 'placing', actions: 'forgetFailure' },
      },
    },
    changed: {
      invoke: {
        src: 'assess',
        input: ({ context }) => evidenceOf(context.work),
        onDone: {
          actions: {
            type: 'keepAssessment',
            params: ({ event }) => ({ assessment: event.output }),
          },
        },
        // It is asked for once more when it is needed, and said then what is wrong.
        onError: {},
      },
      on: {
        ON: { target: 'onward', actions: 'forgetNewest' },
        VOLUNTEER: { target: 'volunteering', actions: 'forgetNewest' },
      },
    },
    verdict: {
      on: {
        TO_REPAIR: 'repairing',
        OPENED: { target: 'saving', actions: { type: 'storeOpening', params: at } },
        VOLUNTEER: 'volunteering',
      },
    },
    repairing: {
      on: {
        REPAIRED: {
          target: 'saving',
          actions: { type: 'storeRepair', params: ({ event }) => event },
        },
        BACK: 'verdict',
        CHANGED_ELSEWHERE: joinedQuietly,
      },
    },
    nothingLeft: {
      on: {
        OPENED: { target: 'saving', actions: { type: 'storeOpening', params: at } },
        VOLUNTEER: 'volunteering',
      },
    },
    closed: {
      on: { REOPEN: { target: 'saving', actions: { type: 'storeReopening', params: at } } },
    },
  },
});
