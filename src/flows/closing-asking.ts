import { at, check, fromElsewhere } from './closing-setup.ts';

/** A reading of the list is asked: its entry, and what may come between the entry and its keeping. */
export const asking = check.createStateConfig({
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
});
