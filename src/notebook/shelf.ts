import type { Rests } from '../diagnosis/rests.ts';
import { aside } from './aside.ts';
import { removedRecord } from './bin.ts';
import type { NotebookDatabase } from './database.ts';
import type { Dated, Kept } from './kept.ts';
import { NotebookError } from './notebook-error.ts';
import type { Notice } from './notices.ts';
import { removePhotos } from './photos.ts';
import type { SecondCopy } from './second-copy.ts';
import { wholly } from './transaction.ts';

/** Records of one kind on this device. Every failure is a NotebookError. */
export interface Shelf<Item, Summary> {
  /** Newest first. A damaged record is listed, and says so. */
  list(): Promise<readonly Summary[]>;
  /** Rejects with `missing`, `damaged` or `newer-version`. */
  read(id: string): Promise<Item>;
  /**
   * Resolves once the record is on disk, twice, with the record as it stands there: what other tabs added is kept
   * beside the caller's, who may go on with it or with their own. What the caller's record had before
   * and has no longer is taken back. On failure the record is kept in this page and read from there.
   */
  write(item: Item): Promise<Item>;
  /** Into the bin, from which it can be put back, or for good. */
  remove(id: string, how?: 'forever'): Promise<void>;
  /** The record as the text of a file, whatever state it is in. */
  rescue(id: string): Promise<string>;
}

/** What differs between the kinds of record. */
export interface RecordKind<Item extends Kept, Summary extends Dated> {
  readonly store: 'jobs' | 'sheets';
  /** Throws NotebookError that says why not. */
  restoring(raw: unknown): Rests<Item>;
  /** A line for whatever is stored. */
  summarising(raw: unknown): Rests<Summary>;
  /**
   * What to store for the caller's record where `raw` is stored already. A record that it cannot be joined
   * with comes back as `aside`, to be kept under an id of its own. Throws NotebookError where the
   * record was written by a newer app.
   */
  joinedWith(
    raw: Item | undefined,
    base: Item | undefined,
    mine: Item,
  ): { readonly joined: Item; readonly aside?: unknown };
  /** An object inside the record; one that was joined has another, by which a later write tells whether the caller took it up. */
  mark(item: Item): object;
}

/** A line for each record, newest first; of two with one id the later one counts. */
export function* summariesOf<Item extends Kept, Summary extends Dated>(
  kind: RecordKind<Item, Summary>,
  records: readonly Kept[],
): Rests<readonly Summary[]> {
  const summaries = new Map<string, Summary>();
  for (const raw of records) {
    summaries.set(String(raw.id), yield* kind.summarising(raw));
    yield;
  }
  return [...summaries.values()].sort((a, b) =>
    a.changedAt < b.changedAt ? 1 : a.changedAt > b.changedAt ? -1 : 0,
  );
}

/** A record as the caller last gave it, and as it then stood on disk, with what other tabs had added. */
interface Known<Item> {
  readonly given: Item;
  readonly stored: Item;
}

/** Runs an act on the database, on a new connection if the browser closed the old one. */
type Run = <T>(act: (db: NotebookDatabase) => Promise<T>) => Promise<T>;

export class DiskShelf<Item extends Kept, Summary extends Dated> implements Shelf<Item, Summary> {
  readonly #kind: RecordKind<Item, Summary>;
  readonly #run: Run;
  readonly #tell: (notice: Notice) => void;
  readonly #copy: SecondCopy;
  readonly #known = new Map<string, Known<Item>>();
  /** Records that could not be written; this page alone holds them. */
  readonly #unsaved = new Map<string, Item>();
  #queue: Promise<unknown> = Promise.resolve();

  constructor(
    kind: RecordKind<Item, Summary>,
    run: Run,
    tell: (notice: Notice) => void,
    copy: SecondCopy,
  ) {
    this.#kind = kind;
    this.#run = run;
    this.#tell = tell;
    this.#copy = copy;
  }

  async list(): Promise<readonly Summary[]> {
    const stored = (await this.#run((db) => db.getAll(this.#kind.store))) as readonly unknown[];
    return aside(
      summariesOf(this.#kind, [...stored, ...this.#unsaved.values()] as readonly Kept[]),
    );
  }

  read(id: string): Promise<Item> {
    return this.#inTurn(async () => {
      const unsaved = this.#unsaved.get(id);
      if (unsaved) return unsaved;
      const item = await aside(this.#kind.restoring(await this.#raw(id)));
      this.#known.set(id, { given: item, stored: item });
      return item;
    });
  }

  write(item: Item): Promise<Item> {
    return this.#inTurn(() => this.#writeNow(item));
  }

  /** One after the other, so that each write knows what was given before it. */
  #inTurn<Result>(act: () => Promise<Result>): Promise<Result> {
    const done = this.#queue.then(act);
    this.#queue = done.catch(() => {});
    return done;
  }

  async #writeNow(mine: Item): Promise<Item> {
    try {
      const base = this.#baseOf(mine);
      const onDisk = await this.#copy.inTurn(() => this.#run((db) => this.#store(db, base, mine)));
      this.#known.set(mine.id, { given: mine, stored: onDisk });
      this.#unsaved.delete(mine.id);
      this.#tell({ id: mine.id, what: 'written' });
      return onDisk;
    } catch (error) {
      this.#unsaved.set(mine.id, mine);
      throw error;
    }
  }

  /** After what is being written still: that would bring the record back. */
  remove(id: string, how?: 'forever'): Promise<void> {
    return this.#inTurn(async () => {
      await this.#copy.inTurn(async () => {
        await this.#run((db) => this.#removed(db, id, how));
        await this.#copy.drop(this.#kind.store, id);
      });
      this.#unsaved.delete(id);
      this.#known.delete(id);
      this.#tell({ id, what: 'removed' });
    });
  }

  async rescue(id: string): Promise<string> {
    const record = this.#unsaved.get(id) ?? (await this.#raw(id));
    return `${JSON.stringify(record, null, 2)}\n`;
  }

  /** Done once all that was asked for so far is: what is read of the database then has it. */
  settled(): Promise<void> {
    return this.#inTurn(async () => {});
  }

  /** What this page alone holds. */
  unsaved(): readonly Item[] {
    return [...this.#unsaved.values()];
  }

  /** These were written past this shelf: what it knew of them no longer holds. */
  forget(ids: Iterable<string>): void {
    for (const id of ids) {
      this.#known.delete(id);
      this.#unsaved.delete(id);
    }
  }

  /** Writes again what could not be written. */
  async retry(): Promise<void> {
    for (const item of this.unsaved()) await this.write(item);
  }

  /**
   * The version that the caller's record grew from: what it lacks since, the caller took back. A caller
   * that took up the record from the disk carries its very mark; one that did not never saw
   * what other tabs added, and cannot have taken that back.
   */
  #baseOf(mine: Item): Item | undefined {
    const known = this.#known.get(mine.id);
    const { mark } = this.#kind;
    return known && (mark(mine) === mark(known.stored) ? known.stored : known.given);
  }

  async #raw(id: string): Promise<unknown> {
    const raw: unknown = await this.#run((db) => db.get(this.#kind.store, id));
    if (raw === undefined) throw new NotebookError('missing');
    return raw;
  }

  async #removed(db: NotebookDatabase, id: string, how: 'forever' | undefined): Promise<void> {
    const { store } = this.#kind;
    await this.#copy.ready(db);
    await wholly(
      db.transaction([store, 'bin', 'photos'], 'readwrite', { durability: 'strict' }),
      async (tx) => {
        const record = this.#unsaved.get(id) ?? (await tx.objectStore(store).get(id));
        if (record && !how) {
          const removed = removedRecord(store, record, new Date().toISOString());
          await tx.objectStore('bin').put(removed);
        }
        await tx.objectStore(store).delete(id);
        if (store === 'jobs' && how) await removePhotos(tx.objectStore('photos'), id);
      },
    );
  }

  /** Reads, merges and writes in one transaction, so that no other tab comes between; done once it is in the second copy, too. */
  async #store(db: NotebookDatabase, base: Item | undefined, mine: Item): Promise<Item> {
    const { store } = this.#kind;
    await this.#copy.ready(db);
    let copied: Promise<void> | undefined;
    try {
      return await wholly(
        db.transaction(store, 'readwrite', { durability: 'strict' }),
        async (tx) => {
          const raw = (await tx.store.get(mine.id)) as unknown as Item | undefined;
          const { joined, aside } = this.#kind.joinedWith(raw, base, mine);
          // A record that cannot be joined is set aside under an id of its own: nothing stored is overwritten unseen.
          if (aside !== undefined) await tx.store.put(aside as never);
          await tx.store.put(joined as never);
          copied = this.#copy.keep(store, joined, raw);
          return joined;
        },
      );
    } finally {
      await copied;
    }
  }
}
