/** Of the actor that failed, why. */
export const keepFailure = {
  type: 'keepFailure',
  params: ({ event }: { event: { readonly error: unknown } }) => ({ error: event.error }),
} as const;

/** What another tab wrote meanwhile is joined where it is stored, and comes back from there: taken up here, it would put the act away. */
const passedOver = { CHANGED_ELSEWHERE: {} } as const;

/** Nothing new is asked before the last act is stored: the state `saving` of a machine that keeps this kind of work. */
export const storing = <Work>() =>
  ({
    on: passedOver,
    invoke: {
      src: 'save',
      input: ({ context }: { context: { readonly work: Work } }) => context.work,
      onDone: {
        target: 'placing',
        actions: {
          type: 'keepStored',
          params: ({ event }: { event: { readonly output: Work } }) => ({ work: event.output }),
        },
      },
      onError: { target: 'storageFailed', actions: keepFailure },
    },
  }) as const;

/** What is here is not stored, and stays here until it is: the state `storageFailed`. */
export const unstored = {
  on: { ...passedOver, RETRY: { target: 'saving', actions: 'forgetFailure' } },
} as const;
