import type { Way } from './maze.ts';
import { route } from './route.ts';
import type { Survey } from './route-leads.ts';
import type { WaysReply, WaysRequest } from './ways-worker.ts';

type Ways = ReadonlyMap<string, Way>;

let worker: Worker | undefined;
let lastId = 0;
/** What the worker searches for now, and the newest of what was asked for meanwhile: who draws fast asks for many. */
let running: Asked | undefined;
let waiting: Asked | undefined;

interface Asked {
  readonly request: WaysRequest;
  readonly resolve: (ways: Ways | undefined) => void;
}

/** The ways of these leads, searched in a worker; undefined where others were asked for before it was begun. */
export function waysAside({ errands, boxes }: Survey): Promise<Ways | undefined> {
  return new Promise((resolve) => {
    lastId += 1;
    waiting?.resolve(undefined);
    waiting = { request: { id: lastId, errands, boxes }, resolve };
    if (!running) next();
  });
}

function next(): void {
  running = waiting;
  waiting = undefined;
  if (!running) return;
  try {
    worker ??= started();
    worker.postMessage(running.request);
  } catch {
    here();
  }
}

function started(): Worker {
  const fresh = new Worker(new URL('./ways-worker.ts', import.meta.url), {
    type: 'module',
    name: 'ways',
  });
  fresh.onmessage = ({ data }: MessageEvent<WaysReply>) => {
    if (data.id === running?.request.id) answered(data.ways);
  };
  fresh.onerror = (event) => {
    event.preventDefault();
    fresh.terminate();
    worker = undefined;
    here();
  };
  return fresh;
}

/** Where there is no worker, or it died, the page waits rather than have no drawing. */
function here(): void {
  if (running) answered(route(running.request.errands, running.request.boxes));
}

function answered(ways: Ways): void {
  const done = running;
  next();
  done?.resolve(ways);
}
