/**
 * Where an antenna sends: part of the radiated power by height above the horizon, one cut from horizon over the top to the opposite horizon along
 * the strongest azimuth, and one round the horizon. Decibels below the strongest of each cut's own antenna peak.
 */
import type { Currents, FarField, FarGround, IntensitySum } from './far-field';
import { intensities, plainIntensities, sourcesOf } from './far-field';
import type { PairPlan } from './pair-plan';

export interface Pattern {
  /** Part of the radiated power up to 15°, 15 to 35°, 35 to 60° and above; over the lower half too where there is no ground. */
  readonly elevationShares: readonly [number, number, number, number];
  /**
   * Mean power towards the heights where contacts are, all azimuths alike, in units of what the radiated power would give spread evenly over
   * the whole sphere: `far` from 5 to 20° above the horizon, `near` from 30° to overhead. Common practice, no source.
   */
  readonly zoneGain: { readonly far: number; readonly near: number };
  /** 0° is the horizon on the strongest azimuth, 180° the one opposite. */
  readonly elevation: readonly { readonly deg: number; readonly db: number }[];
  /** By azimuth from +x, at the height of the peak, or at 30° where the peak is overhead. */
  readonly azimuth: readonly { readonly deg: number; readonly db: number }[];
}

const STEP_DEG = 5;
const LEAST_DB = -60;
const OVERHEAD_DEG = 75;
const USUAL_DEG = 30;
const BOUNDS_DEG = [15, 35, 60] as const;
type Zone = readonly [fromDeg: number, toDeg: number];
/** Both in multiples of the step below. */
const FAR_DEG: Zone = [5, 20];
const NEAR_DEG: Zone = [30, 90];
/** Azimuths and heights of the sum over the sky. */
const SKY_PHIS = 36;
const SKY_STEP_DEG = 2.5;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export function patternOf(
  plan: PairPlan,
  currents: Currents,
  k0: number,
  ground: FarGround,
  far: FarField,
  sum: IntensitySum = plainIntensities,
): Pattern {
  const sources = sourcesOf(plan, currents);
  const towards = (thetaDeg: number, phisDeg: readonly number[]): Float64Array => {
    const out = new Float64Array(phisDeg.length);
    intensities(out, sources, k0, ground, radians(thetaDeg), Float64Array.from(phisDeg, radians), sum);
    return out;
  };
  const db = (value: number): number => Math.max(LEAST_DB, 10 * Math.log10(value / far.peakWPerSr));
  const elevation = steps(180).map((deg) => {
    const [value] = deg <= 90 ? towards(90 - deg, [far.phiDeg]) : towards(deg - 90, [far.phiDeg + 180]);
    return { deg, db: db(value) };
  });
  const peakDeg = 90 - far.thetaDeg;
  const heightDeg = peakDeg >= OVERHEAD_DEG ? USUAL_DEG : peakDeg;
  const round = steps(355);
  const values = towards(90 - heightDeg, round);
  const azimuth = round.map((deg, i) => ({ deg, db: db(values[i]) }));
  return { ...sharesOf(towards, ground), elevation, azimuth };
}

const steps = (toDeg: number): number[] => Array.from({ length: toDeg / STEP_DEG + 1 }, (_, i) => i * STEP_DEG);

const isWithin = (deg: number, [from, to]: Zone): boolean => deg > from && deg < to;

/** Part of a sphere that lies in a zone above the horizon. */
const evenShare = ([from, to]: Zone): number => (Math.sin(radians(to)) - Math.sin(radians(from))) / 2;

function sharesOf(
  towards: (thetaDeg: number, phisDeg: readonly number[]) => Float64Array,
  ground: FarGround,
): Pick<Pattern, 'elevationShares' | 'zoneGain'> {
  const phis = Array.from({ length: SKY_PHIS }, (_, i) => (360 * i) / SKY_PHIS);
  const shares: [number, number, number, number] = [0, 0, 0, 0];
  let [far, near] = [0, 0];
  for (let deg = SKY_STEP_DEG / 2; deg < 90; deg += SKY_STEP_DEG) {
    const both = ground.kind === 'none' ? [90 - deg, 90 + deg] : [90 - deg];
    const bin = BOUNDS_DEG.filter((bound) => deg > bound).length;
    for (const theta of both) {
      const power = Math.cos(radians(deg)) * towards(theta, phis).reduce((sum, value) => sum + value, 0);
      shares[bin] += power;
      if (theta > 90) continue;
      if (isWithin(deg, FAR_DEG)) far += power;
      if (isWithin(deg, NEAR_DEG)) near += power;
    }
  }
  const whole = shares.reduce((sum, share) => sum + share, 0);
  return {
    elevationShares: [shares[0] / whole, shares[1] / whole, shares[2] / whole, shares[3] / whole],
    zoneGain: { far: far / whole / evenShare(FAR_DEG), near: near / whole / evenShare(NEAR_DEG) },
  };
}
