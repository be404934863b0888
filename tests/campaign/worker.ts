import { parentPort } from 'node:worker_threads';
import { type HuntOptions, hunt } from './hunt.ts';

parentPort?.on('message', (options: HuntOptions) => parentPort?.postMessage(hunt(options)));
