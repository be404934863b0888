import { hunt } from './hunt-setup.ts';
import { storing, unstored } from './saving.ts';
import type { Work } from './work.ts';

const stored = storing<Work>();

export const saving = hunt.createStateConfig({
  ...stored,
  on: {
    ...stored.on,
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
    ...unstored.on,
    OWN_ASK: {},
    SAW: {},
    GO_ON_UNSAVED: { target: 'placing', actions: 'forgetFailure' },
  },
});
