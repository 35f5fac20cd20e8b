/** Spans, pulls, rope, guys and ladder, and the volts on the antenna. */
import * as z from 'zod/mini';
import { bandIds } from '../catalog/band-ids';
import { Working } from './working-schema';

const maybe = z.nullable(z.number());
const pull = z.strictObject({ newton: z.number(), factor: z.number(), working: Working });

export const MechanicsPlan = z.strictObject({
  spans: z.array(
    z.strictObject({
      id: z.enum(['span', 'leg', 'top', 'side']),
      count: z.number(),
      spanM: z.number(),
      sagM: z.number(),
      sagMWorking: Working,
      /** Of the catenary; null where a weight hangs from the middle. */
      exactSagM: maybe,
      wireM: maybe,
      centreN: z.number(),
      rest: pull,
      wind: pull,
      ice: pull,
    }),
  ),
  breakN: z.number(),
  code: z.strictObject({
    spanM: z.number(),
    askedAwg: z.number(),
    awg: z.number(),
    sizeMeets: z.boolean(),
    metalMeets: z.boolean(),
  }),
  rope: z.nullable(
    z.strictObject({
      diameterM: z.number(),
      breakN: z.number(),
      neededN: z.number(),
      weightKg: z.number(),
      swayM: z.number(),
    }),
  ),
  guys: z.nullable(z.strictObject({ count: z.number(), spreadM: z.number(), tiedAtM: z.number() })),
  ladderFootM: z.number(),
  text: z.array(z.string()),
});
export type MechanicsPlan = z.infer<typeof MechanicsPlan>;

/** Rms at the crest of a transmission. */
export const VoltagePlan = z.strictObject({
  band: z.enum(bandIds),
  feedPointV: maybe,
  feedPointVWorking: z.nullable(Working),
  wireEndV: maybe,
  wireEndVWorking: z.nullable(Working),
});
export type VoltagePlan = z.infer<typeof VoltagePlan>;
