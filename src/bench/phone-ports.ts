import { signal } from '@preact/signals';
import { openDrafts } from '../notebook/drafts.ts';
import { type Notebook, openNotebook } from '../notebook/index.ts';
import { createEngine } from '../worker/index.ts';
import { failureOf } from './failure.ts';
import type { Ports } from './ports.ts';
import { askToKeep } from './storage.ts';

/** Why jobs are kept in this page alone, in a sentence fit to show. Null while they are on the disk. */
export const storageTrouble = signal<string | null>(null);

let opened: Promise<Notebook> | undefined;

function notebook(): Promise<Notebook> {
  opened ??= noted(openNotebook()).then((found) => {
    storageTrouble.value = found.trouble?.sentence ?? null;
    return found;
  });
  return opened;
}

/** Tries the disk again, and moves there what this page alone holds; `storageTrouble` is null where that went well. */
export async function retryStorage(): Promise<void> {
  try {
    const next = await (await notebook()).retry();
    opened = noted(Promise.resolve(next));
    await lookForUnsaved(null);
  } catch (error) {
    await lookForUnsaved(failureOf(error));
  }
}

/** Asked once, when there is something to keep. */
let askedToKeep = false;

/** A write; what it could not put on the disk is said on every screen, and held against closing the page by accident. */
async function watched<T>(write: () => Promise<T>): Promise<T> {
  try {
    const stored = await write();
    if (!askedToKeep) void askToKeep();
    askedToKeep = true;
    await lookForUnsaved(null);
    return stored;
  } catch (error) {
    await lookForUnsaved(failureOf(error));
    throw error;
  }
}

async function lookForUnsaved(sentence: string | null): Promise<void> {
  const { unsaved, trouble } = await notebook();
  const count = unsaved();
  storageTrouble.value =
    trouble?.sentence ?? (count > 0 ? (sentence ?? storageTrouble.value) : null);
  const hold = count > 0 ? addEventListener : removeEventListener;
  hold('beforeunload', stay);
}

/** The browser asks before it closes a page that holds what is stored nowhere else. */
const stay = (event: BeforeUnloadEvent): void => event.preventDefault();

type Listener = Parameters<Notebook['watch']>[0];
const listeners = new Set<Listener>();
let unwatch = () => {};

async function noted(opening: Promise<Notebook>): Promise<Notebook> {
  const found = await opening;
  // After a retry it may be another notebook.
  unwatch();
  unwatch = found.watch((notice) => {
    for (const listener of listeners) listener(notice);
  });
  return found;
}

/** The world as it is on a phone: the engine in its worker, the notebook on the disk. */
export const phonePorts = (): Ports => ({
  engine: createEngine(),
  notebook: {
    list: async () => (await notebook()).list(),
    withPractice: async () => (await notebook()).withPractice(),
    read: async (id) => (await notebook()).read(id),
    write: (job) => watched(async () => (await notebook()).write(job)),
    remove: async (id, how) => (await notebook()).remove(id, how),
    rescue: async (id) => (await notebook()).rescue(id),
    sheets: {
      list: async () => (await notebook()).sheets.list(),
      read: async (id) => (await notebook()).sheets.read(id),
      write: (sheet) => watched(async () => (await notebook()).sheets.write(sheet)),
      remove: async (id, how) => (await notebook()).sheets.remove(id, how),
      rescue: async (id) => (await notebook()).sheets.rescue(id),
    },
    photos: {
      of: async (job) => (await notebook()).photos.of(job),
      add: async (photo) => (await notebook()).photos.add(photo),
      remove: async (id) => (await notebook()).photos.remove(id),
      size: async () => (await notebook()).photos.size(),
    },
    bin: {
      list: async () => (await notebook()).bin.list(),
      putBack: async (id) => (await notebook()).bin.putBack(id),
      empty: async () => (await notebook()).bin.empty(),
    },
    everything: async () => (await notebook()).everything(),
    plan: async (brought) => (await notebook()).plan(brought),
    takeIn: async (brought) => (await notebook()).takeIn(brought),
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  },
  drafts: openDrafts(),
  now: () => new Date().toISOString(),
  newId: () => crypto.randomUUID(),
});
