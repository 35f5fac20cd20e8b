/**
 * Envelope peak that a heat limit and a peak limit allow in each mode: the steady watts over the mode's average while keyed, and never above the
 * peak limit (flux, volts). Overs of minutes reach the steady rise, so pauses between overs are not counted here; the caller may.
 */
import { type Mode, modeAverageFactor, modeIds } from '../catalog/modes';

export type PowerByMode = Readonly<Record<Mode, number>>;

export const powerByMode = (continuousW: number, peakW: number = Number.POSITIVE_INFINITY): PowerByMode =>
  Object.fromEntries(
    modeIds.map((mode) => [mode, Math.min(peakW, continuousW / modeAverageFactor[mode].value)]),
  ) as PowerByMode;
