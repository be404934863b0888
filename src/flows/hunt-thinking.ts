/** The states of a hunt in which the engine works, and what follows from what it found. */
import type { Assessment } from '../diagnosis/assessment.ts';
import type { Ask } from '../readings/reading.ts';
import { hunt, joinedQuietly } from './hunt-setup.ts';
import { asksWhatChanged, keepsWhatChanged } from './hunt-taking.ts';
import { keepFailure } from './saving.ts';
import { evidenceOf } from './work.ts';

const keepAssessment = {
  type: 'keepAssessment',
  params: ({ event }: { event: { output: Assessment } }) => ({ assessment: event.output }),
} as const;

/** What the newest reading did, where that is not known since it was stored. */
export const standing = hunt.createStateConfig({
  invoke: {
    ...asksWhatChanged,
    onDone: { target: 'changed', actions: [...keepsWhatChanged] },
    onError: { target: 'engineFailed', actions: keepFailure },
  },
});

export const assessing = hunt.createStateConfig({
  invoke: {
    src: 'assess',
    input: ({ context }) => evidenceOf(context.work),
    onDone: { target: 'onward', actions: keepAssessment },
    onError: { target: 'engineFailed', actions: keepFailure },
  },
});

/** What the newest reading did is shown while it is worked out what follows from it. */
export const changed = hunt.createStateConfig({
  invoke: {
    src: 'assessMeanwhile',
    input: ({ context }) => evidenceOf(context.work),
    onDone: { actions: keepAssessment },
    // It is asked for once more when it is needed, and said then what is wrong.
    onError: {},
  },
  always: [
    { guard: 'wishesOn', target: 'onward', actions: 'forgetNewest' },
    { guard: 'wishesOwn', target: 'volunteering', actions: 'forgetNewest' },
  ],
  on: {
    ON: { target: 'onward', actions: 'forgetNewest' },
    VOLUNTEER: { target: 'volunteering', actions: 'forgetNewest' },
  },
});

/** The belief is known: what comes next follows from it. */
export const onward = hunt.createStateConfig({
  entry: 'chooseQuestion',
  always: [
    { guard: 'isHalfAssessed', target: 'assessing' },
    { guard: 'ownAskWaits', target: 'expecting' },
    { guard: 'guitarMustBeOpened', target: 'opening' },
    { guard: 'openingTellsMore', target: 'opening' },
    { guard: 'hasQuestion', target: 'asking' },
    { guard: 'hasVerdict', target: 'verdict' },
    { target: 'nothingLeft' },
  ],
});

export const expecting = hunt.createStateConfig({
  invoke: {
    src: 'expect',
    input: ({ context }) => ({ work: context.work, ask: context.ownAsk as Ask }),
    onDone: {
      target: 'asking',
      actions: { type: 'askOwn', params: ({ event }) => ({ expected: event.output }) },
    },
    onError: { target: 'volunteering', actions: keepFailure },
  },
  on: { CHANGED_ELSEWHERE: joinedQuietly },
});
