import { at, fromElsewhere, hunt, joinedQuietly } from './hunt-setup.ts';

/** A reading is asked: its entry, and what may come between the entry and its keeping. */
export const asking = hunt.createStateConfig({
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
            target: '#hunt.taking',
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
          target: '#hunt.taking',
          actions: {
            type: 'storeDoubted',
            params: ({ event }) => ({ take: 'entered' as const, at: event.at }),
          },
        },
        TAKE_BETTER: {
          target: '#hunt.taking',
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
          target: '#hunt.taking',
          actions: { type: 'storeJump', params: ({ event }) => event },
        },
        BACK: 'entry',
      },
    },
    help: { on: { BACK: 'entry' } },
  },
});
