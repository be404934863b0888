/** What was done since a start, without limit, and what was taken back and can be done again. Newest last. */
export interface History<State, Act> {
  readonly start: State;
  readonly done: readonly Act[];
  readonly undone: readonly Act[];
  /** The state after each act of `done`. */
  readonly states: readonly State[];
}

export type Step<State, Act> = (state: State, act: Act) => State;

export const begun = <State, Act>(start: State): History<State, Act> => ({
  start,
  done: [],
  undone: [],
  states: [],
});

export const presentOf = <State, Act>({ start, states }: History<State, Act>): State =>
  states.at(-1) ?? start;

/** Does an act; what was taken back before is gone. Throws what `step` throws, and then nothing was done. */
export const did = <State, Act>(
  history: History<State, Act>,
  act: Act,
  step: Step<State, Act>,
): History<State, Act> => ({
  ...history,
  done: [...history.done, act],
  undone: [],
  states: [...history.states, step(presentOf(history), act)],
});

/** Takes back the newest act; without one, the same history. */
export function undid<State, Act>(history: History<State, Act>): History<State, Act> {
  const act = history.done.at(-1);
  if (act === undefined) return history;
  return {
    ...history,
    done: history.done.slice(0, -1),
    undone: [...history.undone, act],
    states: history.states.slice(0, -1),
  };
}

/** Does again what was taken back last; without any, the same history. */
export function redid<State, Act>(
  history: History<State, Act>,
  step: Step<State, Act>,
): History<State, Act> {
  const act = history.undone.at(-1);
  if (act === undefined) return history;
  return { ...did(history, act, step), undone: history.undone.slice(0, -1) };
}

/** A history from what was stored of it. Throws what `step` throws where an act no longer fits. */
export function replayed<State, Act>(
  start: State,
  done: readonly Act[],
  undone: readonly Act[],
  step: Step<State, Act>,
): History<State, Act> {
  const history = done.reduce((so, act) => did(so, act, step), begun<State, Act>(start));
  return { ...history, undone };
}
