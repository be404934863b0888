import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { restoredDraft, type WiringDraft } from './draft.ts';

/** Drafts are thrown away once they are used: a database of their own keeps them out of the way of the jobs'. */
interface DraftSchema extends DBSchema {
  drafts: { key: string; value: WiringDraft };
}

/** Wirings that are being drawn. Nothing rejects: what cannot be stored is kept in this page, and `write` says so. */
export interface Drafts {
  /** Newest first. */
  list(): Promise<readonly WiringDraft[]>;
  /** Null where there is none that can be read. */
  read(id: string): Promise<WiringDraft | null>;
  /** True once it is on the disk; false where this page alone holds it. */
  write(draft: WiringDraft): Promise<boolean>;
  remove(id: string): Promise<void>;
}

export function openDrafts(): Drafts {
  const held = new Map<string, WiringDraft>();
  let opened: Promise<IDBPDatabase<DraftSchema>> | undefined;
  const database = () => {
    opened ??= openDB<DraftSchema>('lugwise-drafts', 1, {
      upgrade: (db) => {
        db.createObjectStore('drafts', { keyPath: 'id' });
      },
      terminated: () => {
        opened = undefined;
      },
    });
    return opened;
  };
  /** What the disk says, or null where it cannot be asked. */
  const onDisk = async <T>(
    act: (db: IDBPDatabase<DraftSchema>) => Promise<T>,
  ): Promise<T | null> => {
    try {
      return await act(await database());
    } catch {
      opened = undefined;
      return null;
    }
  };
  /** A board that is left and opened again at once is found as the write that is still under way leaves it. */
  let queue: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const next = queue.then(act);
    queue = next;
    return next;
  };
  return {
    list: () =>
      inTurn(async () => {
        const stored = (await onDisk((db) => db.getAll('drafts'))) ?? [];
        const all = new Map(stored.map((draft) => [draft.id, draft]));
        for (const draft of held.values()) all.set(draft.id, draft);
        return [...all.values()]
          .flatMap((draft) => restoredDraft(draft) ?? [])
          .sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
      }),
    read: (id) =>
      inTurn(async () =>
        restoredDraft(held.get(id) ?? (await onDisk((db) => db.get('drafts', id)))),
      ),
    write: (draft) =>
      inTurn(async () => {
        const key = await onDisk(async (db) => {
          const tx = db.transaction('drafts', 'readwrite', { durability: 'strict' });
          const [put] = await Promise.all([tx.store.put(draft), tx.done]);
          return put;
        });
        if (key === null) held.set(draft.id, draft);
        else held.delete(draft.id);
        return key !== null;
      }),
    remove: (id) =>
      inTurn(async () => {
        held.delete(id);
        await onDisk((db) => db.delete('drafts', id));
      }),
  };
}
