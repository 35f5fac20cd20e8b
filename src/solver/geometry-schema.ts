/** The schemas of an explicit geometry and of its solution, as they stand in JSON. Types are inferred in geometry.ts. */
import * as z from 'zod/mini';

const positive = z.number().check(z.positive());
const name = z.string().check(z.minLength(1), z.maxLength(80));

export const Point = z.readonly(z.tuple([z.number(), z.number(), z.number()]));

export const Ground = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('perfect-conductor') }),
  z.strictObject({
    kind: z.literal('soil'),
    epsilonR: z.number().check(z.minimum(1), z.maximum(200)),
    sigmaSPerM: z.number().check(z.minimum(0), z.maximum(1e7)),
  }),
]);

export const Insulation = z.strictObject({ epsilonR: z.number().check(z.minimum(1)), thicknessM: positive });

export const Wire = z.strictObject({
  id: name,
  from: Point,
  to: Point,
  radiusM: positive,
  conductivitySPerM: z.optional(z.nullable(positive)),
  insulation: z.optional(z.nullable(Insulation)),
});

/** A place on a wire: exactly one of `distanceM`, `fraction` and `at`; checked where the wire is known. */
const place = {
  wire: name,
  distanceM: z.optional(z.number()),
  fraction: z.optional(z.number()),
  at: z.optional(z.enum(['from', 'to'])),
};
export const Place = z.strictObject(place);
export const Gap = z.strictObject({ ...place, volts: z.strictObject({ re: z.number(), im: z.number() }) });

const impedance = z.strictObject({ r: z.number(), x: z.number() });
export const Load = z.strictObject({ ...place, impedance });
export const Probe = z.strictObject({ ...place, id: name });

const list = <T extends z.core.$ZodType>(entry: T) => z.readonly(z.array(entry));

export const Geometry = z.strictObject({
  frequencyMHz: z.number().check(z.positive(), z.maximum(3000)),
  ground: Ground,
  wires: z.readonly(z.array(Wire).check(z.minLength(1))),
  source: z.optional(Place),
  sources: z.optional(z.readonly(z.array(Gap).check(z.minLength(1)))),
  loads: z.optional(list(Load)),
  probes: z.optional(list(Probe)),
  fieldPoints: z.optional(list(Point)),
  powerW: z.optional(positive),
  /** Ask for where it sends. */
  pattern: z.optional(z.boolean()),
});

export const Solution = z.strictObject({
  impedance,
  probes: list(z.strictObject({ id: z.string(), re: z.number(), im: z.number(), magnitude: z.number() })),
  powerShare: z.strictObject({ radiated: z.number(), wire: z.number(), loads: z.number(), ground: z.number() }),
  gainDbi: z.number(),
  gainThetaDeg: z.number(),
  gainPhiDeg: z.number(),
  fields: list(z.strictObject({ point: Point, electricVPerM: z.number(), magneticAPerM: z.number() })),
  pattern: z.optional(
    z.strictObject({
      elevationShares: z.readonly(z.tuple([z.number(), z.number(), z.number(), z.number()])),
      zoneGain: z.readonly(z.strictObject({ far: z.number(), near: z.number() })),
      elevation: list(z.strictObject({ deg: z.number(), db: z.number() })),
      azimuth: list(z.strictObject({ deg: z.number(), db: z.number() })),
    }),
  ),
  segments: z.number(),
  errorEstimate: z.number(),
  warnings: list(
    z.strictObject({
      code: z.enum(['wires-close', 'segment-short', 'segment-thick', 'ground-close']),
      wire: z.string(),
      data: z.record(z.string(), z.union([z.number(), z.string()])),
    }),
  ),
  millis: z.number(),
});
