import { asking } from './closing-asking.ts';
import { checkOn } from './closing-conversation.ts';
import { at, check, fromElsewhere } from './closing-setup.ts';
import { checkEvidence, checkUnderWay } from './closing-work.ts';
import { once } from './once.ts';
import { keepFailure, storing, unstored } from './saving.ts';
import type { DoneCheck, Work } from './work.ts';

export const closingMachine = once(() =>
  check.createMachine({
    id: 'closing',
    context: ({ input }) => checkOn(input.work),
    initial: 'placing',
    on: {
      UNDO: {
        guard: 'canUndo',
        target: '.saving',
        actions: { type: 'takeBackLastAct', params: at },
      },
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
          START: {
            target: 'saving',
            actions: { type: 'storeStart', params: ({ event }) => event },
          },
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
            actions: keepFailure,
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
          CHOOSE: {
            target: 'asking',
            actions: { type: 'chooseItem', params: ({ event }) => event },
          },
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
      asking,
      /** A reading is off for good: the same job goes on as a hunt, with everything that was read. */
      failed: {
        on: {
          LIST: { target: 'list', actions: 'showList' },
          CHOOSE: {
            target: 'asking',
            actions: { type: 'chooseItem', params: ({ event }) => event },
          },
        },
      },
      passed: {
        on: {
          LIST: { target: 'list', actions: 'showList' },
          END: { target: 'saving', actions: { type: 'storeEnd', params: ({ event }) => event } },
        },
      },
      saving: storing<Work>(),
      storageFailed: {
        on: {
          ...unstored.on,
          GO_ON_UNSAVED: { target: 'placing', actions: 'forgetFailure' },
        },
      },
    },
  }),
);
