import type { NotebookDatabase } from './database.ts';
import type { Kept } from './kept.ts';

/** Where records are kept once more, and what is locked while one changes. */
const NAME = 'lugwise-second-copy';
/** What is kept twice: what was measured and told. */
const COPIED = ['jobs', 'sheets'] as const;
type Copied = (typeof COPIED)[number];
/** The moment of a record, readable without the record. */
const MOMENT = 'lugwise-changed-at';
/** Milliseconds: some private windows never answer, and nobody waits for a copy longer than this. */
const PATIENCE = 3000;

/**
 * Jobs and sheets once more, outside the database. Chromium (seen with 156) that is killed in the middle of a write passes over what was
 * written in part when it opens the database next, and writes on behind it; the opening after that finds the file damaged, and the
 * browser throws away every database of the app. So a record counts as stored once it is in both, and an empty database is
 * filled again. Where there is no such place, as without a certificate, the database stands alone.
 */
export class SecondCopy {
  #cache: Promise<Cache> | undefined;
  #ready: Promise<void> | undefined;

  /** Does what changes records in the database and here while no other tab does: the last in the one is the last in the other. */
  async inTurn<T>(act: () => Promise<T>): Promise<T> {
    const locks = globalThis.navigator?.locks;
    if (!locks) return await act();
    let begun = false;
    try {
      return await locks.request(NAME, { signal: AbortSignal.timeout(PATIENCE) }, () => {
        begun = true;
        return act();
      });
    } catch (error) {
      if (begun) throw error;
      return await act();
    }
  }

  /** Done once all that is in the database is here too; from then on each write keeps it so. */
  ready(db: NotebookDatabase): Promise<void> {
    this.#ready ??= this.refresh(db);
    return this.#ready;
  }

  /** Copies what the database has and this has not, or has from another moment. */
  refresh(db: NotebookDatabase): Promise<void> {
    return safely(async () => {
      const cache = await this.#open();
      for (const store of COPIED)
        for (const record of (await db.getAll(store)) as readonly Kept[]) {
          const copy = await cache.match(urlOf(store, record.id));
          if (copy?.headers.get(MOMENT) !== momentOf(record)) await put(cache, store, record);
        }
    });
  }

  keep(store: Copied, record: Kept): Promise<void> {
    return safely(async () => put(await this.#open(), store, record));
  }

  drop(store: Copied, id: string): Promise<void> {
    return safely(async () => void (await (await this.#open()).delete(urlOf(store, id))));
  }

  /** Fills a database that has nothing in it. */
  async fill(db: NotebookDatabase): Promise<void> {
    await safely(async () => {
      const all = ['jobs', 'sheets', 'photos', 'bin'] as const;
      const counts = await Promise.all(all.map((store) => db.count(store)));
      if (counts.some((count) => count > 0)) return;
      const cache = await this.#open();
      const found: { readonly store: Copied; readonly record: unknown }[] = [];
      for (const request of await cache.keys()) {
        const store = COPIED.find((one) => request.url.includes(`/${NAME}/${one}/`));
        const record = await cache.match(request).then((copy) => copy?.json());
        if (store && record) found.push({ store, record });
      }
      if (found.length === 0) return;
      const tx = db.transaction(COPIED, 'readwrite', { durability: 'strict' });
      for (const { store, record } of found) void tx.objectStore(store).put(record as never);
      await tx.done;
    });
  }

  #open(): Promise<Cache> {
    this.#cache ??= caches.open(NAME);
    return this.#cache;
  }
}

/** Nothing here rejects, and nothing waits for ever. */
async function safely(act: () => Promise<void>): Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, PATIENCE);
  });
  await Promise.race([act().catch(() => undefined), late]);
  clearTimeout(timer);
}

const put = (cache: Cache, store: Copied, record: Kept): Promise<void> =>
  cache.put(
    urlOf(store, record.id),
    new Response(JSON.stringify(record), { headers: { [MOMENT]: momentOf(record) } }),
  );

const momentOf = (record: unknown): string =>
  encodeURIComponent(String((record as { readonly changedAt?: unknown }).changedAt));

/** No address that is ever fetched: a name for the copy. */
const urlOf = (store: Copied, id: string): string => `/${NAME}/${store}/${encodeURIComponent(id)}`;
