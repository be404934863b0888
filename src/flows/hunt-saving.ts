import { hunt, keepFailure } from './hunt-setup.ts';

/** Nothing new is asked before the last act is stored. */
export const saving = hunt.createStateConfig({
  invoke: {
    src: 'save',
    input: ({ context }) => context.work,
    onDone: {
      target: 'placing',
      actions: { type: 'keepStored', params: ({ event }) => ({ work: event.output }) },
    },
    onError: { target: 'storageFailed', actions: keepFailure },
  },
  // Storing joins what both tabs did, and gives it back.
  on: { CHANGED_ELSEWHERE: {}, OWN_ASK: {}, SAW: {} },
});

export const storageFailed = hunt.createStateConfig({
  on: {
    // What is here is not stored: it is joined when it is.
    CHANGED_ELSEWHERE: {},
    OWN_ASK: {},
    SAW: {},
    RETRY: { target: 'saving', actions: 'forgetFailure' },
    GO_ON_UNSAVED: { target: 'placing', actions: 'forgetFailure' },
  },
});
