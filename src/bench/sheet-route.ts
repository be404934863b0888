import type { Sheet } from '../notebook/index.ts';
import type { Route } from './route.ts';

/** Where a sheet is gone on with. */
export const routeOfSheet = ({ id, format }: Pick<Sheet, 'id' | 'format'>): Route =>
  format === 'lugwise-pickup' ? { at: 'pickup', id, view: 'sort' } : { at: 'together', id };
