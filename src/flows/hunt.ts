import { and } from 'xstate';
import { conversationOn } from './conversation.ts';
import { asking } from './hunt-asking.ts';
import { saving, storageFailed } from './hunt-saving.ts';
import { at, fromElsewhere, hunt, joinedQuietly } from './hunt-setup.ts';
import { taking } from './hunt-taking.ts';
import { assessing, changed, expecting, onward, standing } from './hunt-thinking.ts';
import { once } from './once.ts';

export const huntMachine = once(() =>
  hunt.createMachine({
    id: 'hunt',
    context: ({ input }) => conversationOn(input.work),
    initial: 'placing',
    on: {
      UNDO: {
        guard: 'canUndo',
        target: '.saving',
        actions: { type: 'takeBackLastAct', params: at },
      },
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
          { guard: 'ownAskWaits', target: 'assessing', actions: 'forgetNewest' },
          { guard: 'newestIsShown', target: 'changed' },
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
      standing,
      assessing,
      engineFailed: {
        on: { RETRY: { target: 'placing', actions: 'forgetFailure' } },
      },
      onward,
      opening: {
        on: {
          OPENED: { target: 'saving', actions: { type: 'storeOpening', params: at } },
          CANNOT_REACH: { target: 'saving', actions: { type: 'storeRefusal', params: at } },
          STAY_CLOSED: { target: 'onward', actions: 'keepClosed' },
        },
      },
      asking,
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
      expecting,
      saving,
      taking,
      storageFailed,
      changed,
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
  }),
);
