/**
 * A picture from the camera or the album, made small enough to keep: turned upright, scaled, and written anew as JPEG, so that nothing else
 * that the camera put into the file, such as the place, goes along.
 */
import { PHOTO_MOST_BYTES, PHOTO_MOST_PX, photoSize } from '../../design/photo';

interface ShrunkPhoto {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly jpeg: Uint8Array<ArrayBuffer>;
}

/** From good to just good enough; below that the picture is made smaller instead. */
const QUALITIES = [0.82, 0.7, 0.55, 0.4];
const SMALLER = 0.7;
const LEAST_PX = 200;

/** Null when the file is no picture that this browser can read. */
export async function shrinkPhoto(file: Blob): Promise<ShrunkPhoto | null> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => null);
  if (picture === null) return null;
  try {
    for (let mostPx = PHOTO_MOST_PX; mostPx >= LEAST_PX; mostPx *= SMALLER) {
      const [widthPx, heightPx] = photoSize(picture.width, picture.height, mostPx);
      const jpeg = await smallJpeg(picture, widthPx, heightPx);
      if (jpeg !== null) return { widthPx, heightPx, jpeg };
    }
    return null;
  } finally {
    picture.close();
  }
}

async function smallJpeg(
  picture: ImageBitmap,
  widthPx: number,
  heightPx: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, widthPx, heightPx);
  for (const quality of QUALITIES) {
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
    if (blob !== null && blob.size <= PHOTO_MOST_BYTES) return new Uint8Array(await blob.arrayBuffer());
  }
  return null;
}
