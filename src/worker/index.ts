export { createEngine } from './client.ts';
