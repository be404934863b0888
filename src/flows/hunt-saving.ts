import { hunt } from './hunt-setup.ts';
import { storing } from './saving.ts';
import type { Work } from './work.ts';

export const saving = hunt.createStateConfig({
  ...storing<Work>(),
  // Storing joins what both tabs did, and gives it back.
  on: {
    CHANGED_ELSEWHERE: {},
    SAW: {},
    // Chosen meanwhile, as on the reading card: it is asked once this is stored.
    OWN_ASK: {
      guard: 'isOpenJob',
      actions: { type: 'keepOwnAsk', params: ({ event }) => event },
    },
  },
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
