import type { MemoryBin } from './memory-shelf.ts';
import { NotebookError } from './notebook-error.ts';
import type { Photo } from './photo.ts';
import { isTooMuch, type PhotoSize, type Photos, soundPhotos } from './photos.ts';

/** Photos that this page alone holds. */
export class MemoryPhotos implements Photos {
  readonly #bin: MemoryBin;
  readonly items = new Map<string, Photo>();

  constructor(bin: MemoryBin) {
    this.#bin = bin;
  }

  of = async (job: string): Promise<readonly Photo[]> =>
    soundPhotos([...this.items.values()].filter((photo) => photo.job === job));

  async add(photo: Photo): Promise<void> {
    const ofJob = (await this.of(photo.job)).length;
    if (isTooMuch(photo, ofJob, await this.size())) throw new NotebookError('photos-full');
    this.items.set(photo.id, photo);
  }

  async remove(id: string): Promise<void> {
    const photo = this.items.get(id);
    if (photo) this.#bin.take('photos', photo, () => this.items.set(id, photo));
    this.items.delete(id);
  }

  async size(): Promise<PhotoSize> {
    const bytes = [...this.items.values()].reduce((sum, photo) => sum + photo.bytes, 0);
    return { count: this.items.size, bytes };
  }
}
