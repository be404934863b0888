import { type Signal, signal } from '@preact/signals';

/** The place in the app, kept in the hash so that it works in any folder of any host, offline too. */
export type Route =
  | { readonly at: 'home' }
  | { readonly at: 'new' }
  /** A new guitar that is to be checked before it is closed. */
  | { readonly at: 'new-check' }
  /** Which guitar is to be checked. */
  | { readonly at: 'check' }
  | { readonly at: 'import' }
  /** A pickup to be told of. */
  | { readonly at: 'leads' }
  | { readonly at: 'draw'; readonly id: string }
  | { readonly at: 'bench' }
  /** What is kept on this phone, and what was removed. */
  | { readonly at: 'notebook' }
  /** One guitar and the jobs on it; `new-job` to begin another. */
  | { readonly at: 'guitar'; readonly id: string; readonly view: GuitarView }
  | { readonly at: 'pickup'; readonly id: string; readonly view: PickupView }
  /** Pickups that play together: to be told of where there is no id, beside the sorted pickup `beside` if there is one. */
  | { readonly at: 'together'; readonly id?: string; readonly beside?: string }
  | { readonly at: 'job'; readonly id: string; readonly view: JobView };
export type GuitarView = 'jobs' | 'new-job';
export type PickupView = 'sort' | 'job';
export type JobView =
  | 'hunt'
  | 'drawing'
  | 'card'
  | 'record'
  | 'values'
  | 'closing'
  | 'proof'
  | 'trial';

const views: readonly string[] = [
  'hunt',
  'drawing',
  'card',
  'record',
  'values',
  'closing',
  'proof',
  'trial',
] satisfies JobView[];

/** Anything unknown is home, and so is what no address of ours can be: links come from anywhere. */
export function parseRoute(hash: string): Route {
  const [first, writtenId, writtenView = 'hunt'] = hash.replace(/^#\/?/, '').split('/');
  const id = decoded(writtenId ?? '');
  const view = decoded(writtenView);
  if (id === null || view === null) return { at: 'home' };
  if (first === 'new') return { at: 'new' };
  if (first === 'new-check') return { at: 'new-check' };
  if (first === 'check') return { at: 'check' };
  if (first === 'import') return { at: 'import' };
  if (first === 'leads') return { at: 'leads' };
  if (first === 'draw' && id) return { at: 'draw', id };
  if (first === 'bench') return { at: 'bench' };
  if (first === 'notebook') return { at: 'notebook' };
  if (first === 'guitar' && id)
    return { at: 'guitar', id, view: view === 'new-job' ? 'new-job' : 'jobs' };
  if (first === 'pickup' && id) return { at: 'pickup', id, view: view === 'job' ? 'job' : 'sort' };
  if (first === 'together') {
    if (id === 'beside') return { at: 'together', beside: view };
    return id ? { at: 'together', id } : { at: 'together' };
  }
  if (first === 'job' && id && views.includes(view))
    return { at: 'job', id, view: view as JobView };
  return { at: 'home' };
}

/** Null where it is no percent-encoded text (RFC 3986, 2.1). */
function decoded(written: string): string | null {
  try {
    return decodeURIComponent(written);
  } catch {
    return null;
  }
}

export function hrefOf(route: Route): string {
  if (route.at === 'home') return '#/';
  if (route.at === 'draw') return `#/draw/${encodeURIComponent(route.id)}`;
  if (route.at === 'guitar') {
    const guitar = `#/guitar/${encodeURIComponent(route.id)}`;
    return route.view === 'jobs' ? guitar : `${guitar}/${route.view}`;
  }
  if (route.at === 'pickup') {
    const pickup = `#/pickup/${encodeURIComponent(route.id)}`;
    return route.view === 'job' ? `${pickup}/job` : pickup;
  }
  if (route.at === 'together') {
    if (route.beside !== undefined) return `#/together/beside/${encodeURIComponent(route.beside)}`;
    return route.id === undefined ? '#/together' : `#/together/${encodeURIComponent(route.id)}`;
  }
  if (route.at !== 'job') return `#/${route.at}`;
  const job = `#/job/${encodeURIComponent(route.id)}`;
  return route.view === 'hunt' ? job : `${job}/${route.view}`;
}

export const route: Signal<Route> = signal(parseRoute(window.location.hash));
window.addEventListener('hashchange', () => {
  route.value = parseRoute(window.location.hash);
});

export function go(to: Route): void {
  window.location.hash = hrefOf(to);
}
