/** Work that rests now and then: whoever drives it goes on at once, or lets others in first. */
export type Rests<Result> = Generator<undefined, Result>;
