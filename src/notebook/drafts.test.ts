import 'fake-indexeddb/auto';
import { expect, it, vi } from 'vitest';
import type { WiringDraft } from './draft.ts';
import { openDrafts } from './drafts.ts';
import { circuitFor, moment } from './job.fixture.ts';

const drawn = { circuit: circuitFor('one-humbucker-one-knob'), places: {} };
const draft = (id: string, minute: number): WiringDraft => ({
  format: 'lugwise-draft',
  id,
  title: 'The blue one',
  access: 'open',
  changedAt: moment(minute),
  start: drawn,
  done: [{ do: 'cut', lead: 'hot' }],
  undone: [],
  now: drawn,
});

it('keeps drafts from one page to the next, newest first, until they are removed', async () => {
  const here = openDrafts();
  expect(await here.write(draft('a', 1))).toBe(true);
  await here.write(draft('b', 2));
  await here.write({ ...draft('a', 3), title: 'The red one' });
  const elsewhere = openDrafts();
  expect((await elsewhere.list()).map(({ id }) => id)).toEqual(['a', 'b']);
  expect(await elsewhere.read('a')).toEqual({ ...draft('a', 3), title: 'The red one' });
  await elsewhere.remove('a');
  expect(await here.read('a')).toBeNull();
});

it('reads and lists what is still being written', async () => {
  const here = openDrafts();
  await here.write(draft('late', 1));
  const writing = here.write({ ...draft('late', 9), title: 'The green one' });
  const [read, [first]] = await Promise.all([here.read('late'), here.list()]);
  expect([read?.title, first?.title]).toEqual(['The green one', 'The green one']);
  expect(await writing).toBe(true);
  const gone = here.remove('late');
  expect(await here.read('late')).toBeNull();
  await gone;
});

it('keeps a wiring without parts, and takes no record that is no draft', async () => {
  const here = openDrafts();
  const nothing = { circuit: { ...drawn.circuit, parts: [], leads: [], pickups: [] }, places: {} };
  await here.write({ ...draft('empty', 4), start: nothing, now: nothing });
  expect((await here.read('empty'))?.now.circuit.parts).toEqual([]);
  const lead = { id: 'slip', kind: 'wire', from: 'volume.9', to: 'jack.tip' } as const;
  const bad = { ...drawn, circuit: { ...drawn.circuit, leads: [lead] } };
  await here.write({ ...draft('bad', 5), now: bad });
  expect(await here.read('bad')).toBeNull();
  await here.write({ ...draft('odd', 6), done: 'nothing' } as unknown as WiringDraft);
  expect(await here.read('odd')).toBeNull();
});

it('says where the disk cannot be had, and holds the draft in the page', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const here = openDrafts();
  expect(await here.write(draft('c', 1))).toBe(false);
  expect(await here.read('c')).toEqual(draft('c', 1));
  expect((await here.list()).map(({ id }) => id)).toEqual(['c']);
  await here.remove('c');
  expect(await here.list()).toEqual([]);
  vi.unstubAllGlobals();
});

it('has a draft on the disk, and through, when write says so', async () => {
  const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await openDrafts().write(draft('strict', 7));
  expect(transaction).toHaveBeenLastCalledWith('drafts', 'readwrite', { durability: 'strict' });
  transaction.mockRestore();
});
