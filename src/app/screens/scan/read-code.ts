/**
 * QR codes in pictures: by the browser's own detector where there is one for this kind of code, else by a library that is fetched only then.
 * The library works on plain pixels; photographs are made smaller first, since a code that fills a picture needs no 12 megapixels.
 */
export type Picture = HTMLVideoElement | ImageBitmap;

export interface CodeReader {
  /** What the code says; null where no code can be read. `patient` tries harder, for a single photo. */
  read(picture: Picture, patient: boolean): Promise<string | null>;
}

interface Detector {
  detect(picture: Picture): Promise<readonly { readonly rawValue: string }[]>;
}
interface DetectorClass {
  new (options: { readonly formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** Longest side of what the library is given, pixels. */
const MOST_LIVE = 900;
const MOST_PHOTO = 2000;

export async function codeReader(): Promise<CodeReader> {
  return (await ownReader()) ?? libraryReader();
}

async function ownReader(): Promise<CodeReader | null> {
  const found = (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;
  if (found === undefined || !(await found.getSupportedFormats()).includes('qr_code')) return null;
  const detector = new found({ formats: ['qr_code'] });
  return {
    read: async (picture) => {
      const [first] = await detector.detect(picture);
      return first?.rawValue ?? null;
    },
  };
}

async function libraryReader(): Promise<CodeReader> {
  const { decodeQR } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  return {
    read: async (picture, patient) => {
      const pixels = pixelsOf(picture, canvas, patient ? MOST_PHOTO : MOST_LIVE);
      if (pixels === null) return null;
      const effort = patient ? { effort: Number.POSITIVE_INFINITY, timeLimit: Number.POSITIVE_INFINITY } : {};
      try {
        return decodeQR(pixels, effort);
      } catch {
        return null; // the library throws where it sees no code
      }
    },
  };
}

const sizeOf = (picture: Picture): readonly [number, number] =>
  picture instanceof HTMLVideoElement ? [picture.videoWidth, picture.videoHeight] : [picture.width, picture.height];

function pixelsOf(picture: Picture, canvas: HTMLCanvasElement, most: number): ImageData | null {
  const [width, height] = sizeOf(picture);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (width === 0 || height === 0 || context === null) return null;
  const scale = Math.min(1, most / Math.max(width, height));
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
