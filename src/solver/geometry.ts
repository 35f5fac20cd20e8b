/**
 * What the solver is given and what it gives back. Metres, ohms, watts; the frequency in MHz at this edge only. z is up and the ground
 * surface is z = 0. Current counts positive from a wire's `from` to its `to`; `conductivitySPerM` null is a perfect conductor. A place
 * is `distanceM` from the wire's `from`, or a `fraction` of it, or `at` an end. `source` is one gap of 1 V; `sources` several gaps with
 * their volts. Time is e^(+jωt). Fields are √(|Fx|² + |Fy|² + |Fz|²), rms, at `powerW` accepted. Probe currents are relative to the
 * feed current.
 */
import type * as z from 'zod/mini';
import type * as schema from './geometry-schema';

export type Point = z.infer<typeof schema.Point>;
export type Ground = z.infer<typeof schema.Ground>;
export type Insulation = z.infer<typeof schema.Insulation>;
export type Wire = z.infer<typeof schema.Wire>;
export type Place = z.infer<typeof schema.Place>;
export type Gap = z.infer<typeof schema.Gap>;
export type Load = z.infer<typeof schema.Load>;
export type Probe = z.infer<typeof schema.Probe>;
export type Geometry = z.infer<typeof schema.Geometry>;
export type Solution = z.infer<typeof schema.Solution>;
export type PowerShare = Solution['powerShare'];
export type GeometryWarning = Solution['warnings'][number];
