/** What the operator has set once for every plan. Absent: not set, the phone or the default decides. */
import * as z from 'zod/mini';
import { ruleSetIds } from './choices';

export const settingsVersion = 1;

export const Settings = z.strictObject({
  version: z.literal(settingsVersion),
  units: z.optional(z.enum(['metric', 'imperial'])),
  light: z.optional(z.enum(['day', 'night'])),
  hand: z.optional(z.enum(['left', 'right'])),
  region: z.optional(z.literal([1, 2, 3])),
  country: z.optional(z.string().check(z.regex(/^[A-Z]{2}$/))),
  ruleSet: z.optional(z.enum(ruleSetIds)),
});
export type Settings = z.infer<typeof Settings>;
export const noSettings: Settings = { version: settingsVersion };
