import type { NotebookDatabase } from './database.ts';
import type { Kept } from './kept.ts';

/** Where records are kept once more, and what is locked while one changes. */
const NAME = 'lugwise-second-copy';
/** What is kept twice: what was measured and told. */
const COPIED = ['jobs', 'sheets'] as const;
type Copied = (typeof COPIED)[number];
/** The moment of a record, which copy of it this is, and its bytes, readable without the record. */
const MOMENT = 'lugwise-changed-at';
const TURN = 'lugwise-turn';
const SIZE = 'lugwise-size';
/** A copy is written beside the one before it: one of them is whole at any moment. */
const SIDES = [0, 1] as const;
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
  /** The newest copy of each record as this page wrote it. */
  readonly #written = new Map<string, Copy>();

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
          const newest = await newestOf(cache, placeOf(store, record.id));
          if (newest?.moment !== momentOf(record)) await this.#put(cache, store, record, newest);
        }
    });
  }

  /**
   * Copies a record while it is being written into the database.
   * @param before what the database had of it until now
   */
  keep(store: Copied, record: Kept, before: unknown): Promise<void> {
    return safely(async () => {
      const cache = await this.#open();
      const place = placeOf(store, record.id);
      const own = this.#written.get(place);
      // Another tab has written since where the database has something else than was written here.
      const newest = own?.moment === momentOf(before) ? own : await newestOf(cache, place);
      await this.#put(cache, store, record, newest);
    });
  }

  async #put(cache: Cache, store: Copied, record: Kept, newest: Copy | undefined): Promise<void> {
    const place = placeOf(store, record.id);
    const copy: Copy = { turn: (newest?.turn ?? 0) + 1, moment: momentOf(record) };
    const bytes = new TextEncoder().encode(JSON.stringify(record));
    const headers = {
      [MOMENT]: copy.moment,
      [TURN]: String(copy.turn),
      [SIZE]: String(bytes.length),
    };
    await cache.put(sideOf(place, copy.turn), new Response(bytes, { headers }));
    this.#written.set(place, copy);
  }

  drop(store: Copied, id: string): Promise<void> {
    return safely(async () => {
      const cache = await this.#open();
      const place = placeOf(store, id);
      this.#written.delete(place);
      for (const side of SIDES) await cache.delete(sideOf(place, side));
    });
  }

  /** Fills a database that has nothing in it. */
  async fill(db: NotebookDatabase): Promise<void> {
    await safely(async () => {
      const all = ['jobs', 'sheets', 'photos', 'bin'] as const;
      const counts = await Promise.all(all.map((store) => db.count(store)));
      if (counts.some((count) => count > 0)) return;
      const cache = await this.#open();
      const found: { readonly store: Copied; readonly record: unknown }[] = [];
      const places = new Set((await cache.keys()).map(({ url }) => url.replace(/\/[01]$/, '')));
      for (const url of places) {
        const place = new URL(url).pathname;
        const store = COPIED.find((one) => place.startsWith(placeOf(one, '')));
        const newest = await newestOf(cache, place);
        if (store && newest)
          found.push({ store, record: JSON.parse(new TextDecoder().decode(newest.bytes)) });
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

/** One of the two copies of a record. */
interface Copy {
  /** Counts the copies that were made of it. */
  readonly turn: number;
  readonly moment: string;
}

/** The newest copy that is whole: the other was being written when the browser ended, or is the one before. */
async function newestOf(
  cache: Cache,
  place: string,
): Promise<(Copy & { readonly bytes: ArrayBuffer }) | undefined> {
  const found = await Promise.all(
    SIDES.map(async (side) => {
      const response = await cache.match(sideOf(place, side));
      if (!response) return [];
      const { headers } = response;
      const bytes = await response.arrayBuffer().catch(() => new ArrayBuffer(0));
      const copy = { turn: Number(headers.get(TURN)), moment: headers.get(MOMENT) ?? '', bytes };
      return bytes.byteLength === Number(headers.get(SIZE)) ? [copy] : [];
    }),
  );
  return found.flat().sort((a, b) => b.turn - a.turn)[0];
}

const momentOf = (record: unknown): string =>
  encodeURIComponent(
    String((record as { readonly changedAt?: unknown } | null | undefined)?.changedAt),
  );

/** No address that is ever fetched: a name for the copies of a record. */
const placeOf = (store: Copied, id: string): string =>
  `/${NAME}/${store}/${encodeURIComponent(id)}`;
const sideOf = (place: string, turn: number): string => `${place}/${turn % SIDES.length}`;
