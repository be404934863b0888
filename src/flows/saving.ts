/** Of the actor that failed, why. */
export const keepFailure = {
  type: 'keepFailure',
  params: ({ event }: { event: { readonly error: unknown } }) => ({ error: event.error }),
} as const;

/** Nothing new is asked before the last act is stored: the state `saving` of a machine that keeps this kind of work. */
export const storing = <Work>() =>
  ({
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
