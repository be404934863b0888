/** Work that rests now and then: whoever drives it goes on at once, or lets others in first. */
export type Rests<Result> = Generator<undefined, Result>;

/** Does the work to its end in one piece. */
export function ended<Result>(work: Rests<Result>): Result {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
