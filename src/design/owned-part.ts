/** A part the operator owns, offered to every plan. */
import * as z from 'zod/mini';
import { PartOnHand } from './answers';

export const ownedPartVersion = 1;

export const OwnedPart = z.strictObject({
  version: z.literal(ownedPartVersion),
  id: z.uuid(),
  addedAt: z.int().check(z.gte(0)),
  part: PartOnHand,
});
export type OwnedPart = z.infer<typeof OwnedPart>;
