import { parentPort } from 'node:worker_threads';
import { type ClosingOptions, close } from './closing.ts';

parentPort?.on('message', (group: readonly ClosingOptions[]) =>
  parentPort?.postMessage(group.map(close)),
);
