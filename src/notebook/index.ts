export { exportJob, importJob } from './exchange.ts';
export type { Job } from './job.ts';
export type { JobSummary } from './job-summary.ts';
export type { Notebook } from './notebook.ts';
export type {
  PickupSheet,
  PlayingPickup,
  Sheet,
  SheetSummary,
  TogetherSheet,
} from './sheet.ts';
export { SHEET_VERSION } from './sheet.ts';
export { openNotebook } from './store.ts';
