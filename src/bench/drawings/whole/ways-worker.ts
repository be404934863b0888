import type { Box } from '../geometry.ts';
import type { Errand, Way } from './maze.ts';
import { route } from './route.ts';

/** The leads to be laid around these boxes; the answer bears the same number. */
export interface WaysRequest {
  readonly id: number;
  readonly errands: readonly Errand[];
  readonly boxes: readonly Box[];
}

export interface WaysReply {
  readonly id: number;
  readonly ways: ReadonlyMap<string, Way>;
}

/** Entry of a worker: the search for the ways of leads. It keeps nothing. */
self.onmessage = ({ data: { id, errands, boxes } }: MessageEvent<WaysRequest>) => {
  self.postMessage({ id, ways: route(errands, boxes) } satisfies WaysReply);
};
