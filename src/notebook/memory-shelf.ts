import { aside } from './aside.ts';
import { type Bin, newestRemoved, type Removed, removedRecord } from './bin.ts';
import type { Dated, Kept } from './kept.ts';
import { NotebookError } from './notebook-error.ts';
import { type RecordKind, type Shelf, summariesOf } from './shelf.ts';

/** Keeps records in this page alone, where the disk cannot be had. */
export class MemoryShelf<Item extends Kept, Summary extends Dated> implements Shelf<Item, Summary> {
  readonly #kind: RecordKind<Item, Summary>;
  readonly #bin: MemoryBin;
  readonly items = new Map<string, Item>();

  constructor(kind: RecordKind<Item, Summary>, bin: MemoryBin) {
    this.#kind = kind;
    this.#bin = bin;
  }

  list = (): Promise<readonly Summary[]> =>
    aside(summariesOf(this.#kind, [...this.items.values()]));

  async read(id: string): Promise<Item> {
    const item = this.items.get(id);
    if (!item) throw new NotebookError('missing');
    return item;
  }

  async write(item: Item): Promise<Item> {
    this.items.set(item.id, item);
    return item;
  }

  async remove(id: string, how?: 'forever'): Promise<void> {
    const item = this.items.get(id);
    if (item && !how) this.#bin.take(this.#kind.store, item, () => this.items.set(item.id, item));
    this.items.delete(id);
  }

  rescue = async (id: string): Promise<string> =>
    `${JSON.stringify(await this.read(id), null, 2)}\n`;

  /** Moves everything to another shelf. */
  async moveTo(other: Shelf<Item, Summary>): Promise<void> {
    for (const item of this.items.values()) await other.write(item);
  }
}

export class MemoryBin implements Bin {
  readonly #removed = new Map<string, { readonly one: Removed; readonly back: () => unknown }>();

  take(what: Removed['what'], record: Kept, back: () => unknown): void {
    const one = removedRecord(what, record, new Date().toISOString());
    this.#removed.set(one.id, { one, back });
  }

  list = async () => newestRemoved([...this.#removed.values()].map(({ one }) => one));

  async putBack(id: string): Promise<string> {
    const removed = this.#removed.get(id);
    if (!removed) throw new NotebookError('missing');
    removed.back();
    this.#removed.delete(id);
    return removed.one.record.id;
  }

  async empty(): Promise<void> {
    this.#removed.clear();
  }
}
