import { notebookWords } from '../words/en/notebook.ts';
import { identifier, moment } from './job-shape.ts';
import { type Check, JobShapeError, number, object, text, whole } from './shape.ts';

/** A photo that belongs to a job: of a joint that was looked at, or of the whole. */
export interface Photo {
  readonly id: string;
  /** Id of the job. */
  readonly job: string;
  /** What it shows, in words. */
  readonly words: string;
  /** When it was added. ISO 8601. */
  readonly at: string;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
  /** A JPEG file. */
  readonly data: Uint8Array<ArrayBuffer>;
}

/** What the phone keeps of photos. `edge` is the longer side in pixels, the rest but `ofJob` are bytes. */
export const MOST_PHOTOS = { edge: 1280, bytes: 250_000, ofJob: 12, ofAll: 30_000_000 } as const;

const common = {
  id: identifier,
  job: identifier,
  words: text(() => notebookWords().whatItShowsInWords, 300),
  at: moment,
  width: whole(() => notebookWords().aNumberOfPixels, 1, MOST_PHOTOS.edge),
  height: whole(() => notebookWords().aNumberOfPixels, 1, MOST_PHOTOS.edge),
  bytes: whole(() => notebookWords().aNumberOfBytes, 4, MOST_PHOTOS.bytes),
};

const bytesOfJpeg: Check = (value, place) => {
  // A JPEG file begins with the marker SOI and the first byte of the next one (ISO/IEC 10918-1, annex B).
  const data = value as Uint8Array;
  const isJpeg =
    value instanceof Uint8Array && data[0] === 0xff && data[1] === 0xd8 && data[2] === 0xff;
  if (!isJpeg) throw new JobShapeError(place, notebookWords().expectedAJpegPicture);
};

const LONGEST_BASE64 = Math.ceil(MOST_PHOTOS.bytes / 3) * 4;

/** A photo as it is stored. Throws JobShapeError. */
export function restorePhoto(raw: unknown): Photo {
  object({ ...common, data: bytesOfJpeg })(raw, '');
  const photo = raw as Photo;
  number(
    () => notebookWords().theNumberOfBytesInThePicture,
    photo.data.length,
    photo.data.length,
  )(photo.bytes, 'bytes');
  return photo;
}

/** A photo as it stands in a file. Throws JobShapeError. */
export function photoOfFile(raw: unknown): Photo {
  const data = text(() => notebookWords().aPictureInBase64, LONGEST_BASE64);
  object({ ...common, data })(raw, '');
  const written = raw as { readonly data: string };
  return restorePhoto({ ...written, data: bytesOf(written.data) });
}

export const photoForFile = (photo: Photo): unknown => ({ ...photo, data: base64Of(photo.data) });

function bytesOf(written: string): Uint8Array<ArrayBuffer> {
  try {
    return Uint8Array.from(atob(written), (letter) => letter.charCodeAt(0));
  } catch {
    throw new JobShapeError('data', notebookWords().expectedAPictureInBase64);
  }
}

function base64Of(data: Uint8Array): string {
  const letters: string[] = [];
  // So many arguments a call takes on every engine.
  for (let at = 0; at < data.length; at += 8192)
    letters.push(String.fromCharCode(...data.subarray(at, at + 8192)));
  return btoa(letters.join(''));
}
