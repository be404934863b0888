import type { Standing } from '../diagnosis/assessment.ts';
import { saving } from './hunt-saving.ts';
import { hunt } from './hunt-setup.ts';
import { keepFailure, storing } from './saving.ts';
import { evidenceOf, type Work } from './work.ts';

const { invoke: writing } = storing<Work>();

/** Asks what the newest reading did. */
export const asksWhatChanged = {
  src: 'stand',
  input: ({ context }: { context: { readonly work: Work } }) => evidenceOf(context.work),
} as const;

/** What is believed since the newest reading, and what that changed. */
export const keepsWhatChanged = [
  {
    type: 'keepStanding',
    params: ({ event }: { event: { readonly output: Standing } }) => ({ standing: event.output }),
  },
  'compareWithBefore',
] as const;

/**
 * An answer is stored, and what it changed is worked out and shown meanwhile; nothing new is asked before both are done. What the
 * person does on that screen before is done then.
 */
export const taking = hunt.createStateConfig({
  type: 'parallel',
  on: {
    ...saving.on,
    ON: { guard: 'newestIsShown', actions: { type: 'keepWish', params: { wish: 'next' } } },
    VOLUNTEER: { guard: 'newestIsShown', actions: { type: 'keepWish', params: { wish: 'own' } } },
  },
  onDone: 'placing',
  states: {
    // Begun first: the engine works while this writes.
    standing: {
      initial: 'asked',
      states: {
        asked: {
          invoke: {
            ...asksWhatChanged,
            onDone: { target: 'told', actions: [...keepsWhatChanged] },
            // It is asked once more when this is stored, and said then what is wrong.
            onError: 'told',
          },
        },
        told: { type: 'final' },
      },
    },
    storing: {
      initial: 'writing',
      states: {
        writing: {
          invoke: {
            ...writing,
            onDone: { target: 'written', actions: writing.onDone.actions },
            onError: { target: '#hunt.storageFailed', actions: keepFailure },
          },
        },
        written: { type: 'final' },
      },
    },
  },
});
