import type { Rests } from '../diagnosis/rests.ts';

/** Milliseconds of work before others are let in. */
const PIECE = 8;

/**
 * Does long work in pieces, so that a worker hears meanwhile what else it is asked: one piece of work at a time, a newer one in place of
 * an older one.
 */
export class Pieces {
  private readonly later: (act: () => void) => void;
  private cut: (() => void) | null = null;

  constructor(later: (act: () => void) => void = nextTask()) {
    this.later = later;
  }

  /** Gives what comes of `work`, or null once something newer took its place. */
  do<Result>(work: Rests<Result>): Promise<Result | null> {
    this.end();
    let ended = false;
    return new Promise<Result | null>((resolve, reject) => {
      this.cut = () => {
        ended = true;
        resolve(null);
      };
      const go = () => {
        if (ended) return;
        try {
          const until = performance.now() + PIECE;
          do {
            const { done, value } = work.next();
            if (!done) continue;
            this.cut = null;
            resolve(value);
            return;
          } while (performance.now() < until);
          this.later(go);
        } catch (error) {
          this.cut = null;
          reject(error);
        }
      };
      this.later(go);
    });
  }

  /** Leaves what is under way where it is. */
  end(): void {
    this.cut?.();
    this.cut = null;
  }
}

/** A task of its own each time, after the messages that came before. A timer would wait for 4 ms. */
function nextTask(): (act: () => void) => void {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return (act) => {
    waiting.push(act);
    port2.postMessage(null);
  };
}
