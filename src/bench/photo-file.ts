import { MOST_PHOTOS, type Photo } from '../notebook/photo.ts';
import { keepingWords } from '../words/en/keeping.ts';
import { size } from './storage.ts';

/** Above any phone's camera; a larger picture could fill the phone's memory when it is unpacked. */
const LARGEST = { bytes: 60_000_000, megapixels: 220 };

/** Tries from good to poor; a picture that is still too large is made smaller. */
const QUALITIES = [0.85, 0.7, 0.55];
const SMALLER = 0.7;

/**
 * A picture from the camera, made small enough to be kept. Drawing it anew leaves out all that the camera wrote into the file,
 * the place where it was taken too. Throws an Error with a sentence where the file is no picture, or one too large to be unpacked.
 */
export async function smallPhoto(
  file: Blob,
): Promise<Pick<Photo, 'width' | 'height' | 'bytes' | 'data'>> {
  await checkSize(file);
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new Error(keepingWords().noPicture);
  });
  try {
    let scale = Math.min(1, MOST_PHOTOS.edge / Math.max(picture.width, picture.height));
    for (;;) {
      const canvas = drawn(picture, scale);
      for (const quality of QUALITIES) {
        const blob = await jpegOf(canvas, quality);
        if (blob.size > MOST_PHOTOS.bytes) continue;
        const { width, height } = canvas;
        const data = new Uint8Array(await blob.arrayBuffer());
        return { width, height, bytes: data.length, data };
      }
      scale *= SMALLER;
    }
  } finally {
    picture.close();
  }
}

/** The picture's size is in its first bytes: the browser tells it without unpacking the rest. */
async function checkSize(file: Blob): Promise<void> {
  const { bytes, megapixels } = LARGEST;
  if (file.size > bytes)
    throw new Error(keepingWords().pictureIsTooLarge(size(file.size), size(bytes)));
  const image = new Image();
  const address = URL.createObjectURL(file);
  try {
    await new Promise((resolve, reject) => {
      image.onload = resolve;
      image.onerror = reject;
      image.src = address;
    }).catch(() => {
      throw new Error(keepingWords().noPicture);
    });
  } finally {
    URL.revokeObjectURL(address);
  }
  const pixels = Math.ceil((image.naturalWidth * image.naturalHeight) / 1e6);
  if (pixels > megapixels)
    throw new Error(keepingWords().pictureHasTooManyPixels(pixels, megapixels));
}

function drawn(picture: ImageBitmap, scale: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error(keepingWords().cannotMakeSmaller);
  // What is see-through would turn black.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

const jpegOf = (canvas: HTMLCanvasElement, quality: number): Promise<Blob> =>
  new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error(keepingWords().cannotMakeSmaller))),
      'image/jpeg',
      quality,
    );
  });
