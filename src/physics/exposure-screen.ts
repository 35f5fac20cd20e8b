/**
 * Far-field screen for people near an antenna.
 *
 *   S = k · P · g / (4π R²)      E = √(η0 S)      H = √(S / η0)      R = √(k P g / (4π S))
 *   k  2.56 for ordinary ground (field × 1.6), 4 for an antenna standing on the ground or beside a reflecting wall
 *   P  power into the antenna, W      g  gain over an isotropic radiator, as a number
 *
 * Limits: inside λ/2π of any part a power density says nothing final; close to half-waves and ground planes the formula over-predicts, for
 * small loops it fails and must not be used. Source: FCC OET Bulletin 65, Supplement B (1997), equations 1 to 7.
 */
import { ETA0 } from '../base/constants';

export const GROUND_FACTOR = 2.56;
export const REFLECTING_FACTOR = 4;

export const gainNumber = (gainDbi: number): number => 10 ** (gainDbi / 10);

/** Power density that gives an electric or a magnetic field in a plane wave, W/m². */
export const densityOfElectric = (voltsPerM: number): number => voltsPerM ** 2 / ETA0;
export const densityOfMagnetic = (ampsPerM: number): number => ampsPerM ** 2 * ETA0;

/** Distance at which the density has fallen to `limit`, m. */
export const screenDistanceM = (powerW: number, gain: number, limit: number, factor: number): number =>
  Math.sqrt((factor * powerW * gain) / (4 * Math.PI * limit));

/** Average power of a transmission that is keyed for `keyed` of a window `window` long, both in the same unit. */
export const averageW = (peakW: number, modeFactor: number, keyed: number, window: number): number =>
  (peakW * modeFactor * Math.min(keyed, window)) / window;

/** Distance below which a power density is no final answer, m: λ/2π. */
export const reactiveLimitM = (wavelengthM: number): number => wavelengthM / (2 * Math.PI);
