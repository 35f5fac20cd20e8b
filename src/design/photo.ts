/** A picture of how an antenna hung, made small before it was kept. It stays on the phone: no link, code or export file carries it. */
import * as z from 'zod/mini';

export const photoVersion = 2;

/** Longest side, px, and largest file, bytes. */
export const PHOTO_MOST_PX = 1600;
export const PHOTO_MOST_BYTES = 400_000;

export const Photo = z.strictObject({
  version: z.literal(photoVersion),
  id: z.uuid(),
  planId: z.string().check(z.minLength(1), z.maxLength(200)),
  /** When it was put here, milliseconds since 1970. */
  at: z.int().check(z.gte(0)),
  widthPx: z.int().check(z.gte(1), z.lte(PHOTO_MOST_PX)),
  heightPx: z.int().check(z.gte(1), z.lte(PHOTO_MOST_PX)),
  jpeg: z.instanceof(Uint8Array),
  /** When it was taken off the screens; null while it is shown. It is kept until it is deleted for good. */
  takenAwayAt: z.nullable(z.int().check(z.gte(0))),
});
export type Photo = z.infer<typeof Photo>;

/** The size in which a picture is kept: its own, or smaller in the same proportion. */
export function photoSize(widthPx: number, heightPx: number, mostPx: number = PHOTO_MOST_PX): [number, number] {
  const scale = Math.min(1, mostPx / Math.max(widthPx, heightPx));
  return [Math.max(1, Math.round(widthPx * scale)), Math.max(1, Math.round(heightPx * scale))];
}
