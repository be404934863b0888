import type { Rests } from '../diagnosis/rests.ts';

/** Milliseconds of work before others are let in. */
const PIECE = 8;

/** Does the work in pieces, each in a task of its own: what is touched meanwhile is answered in between. */
export async function aside<Result>(work: Rests<Result>): Promise<Result> {
  let until = performance.now() + PIECE;
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    if (performance.now() < until) continue;
    await new Promise((go) => setTimeout(go, 0));
    until = performance.now() + PIECE;
  }
}

/** Does the work to its end in one piece, as a transaction of the database asks for. */
export function atOnce<Result>(work: Rests<Result>): Result {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
