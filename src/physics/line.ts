/**
 * Uniform lossy line, terminated in any load.
 *
 *   γ  = α + jβ          α = αc + αd, Np/m      β = ω / (VF · c)
 *   αc = k1 · √f         conductor (series) loss      αd = k2 · f   dielectric (shunt) loss      f in MHz, k in dB per 100 m
 *   Z0 = R0 · (1 − j (αc − αd) / β)
 *   Zin = Z0 · (ZL cosh γl + Z0 sinh γl) / (Z0 cosh γl + ZL sinh γl)
 *
 * That Z0 makes the series resistance per metre Re(γ Z0) = 2 R0 αc and the shunt conductance Re(γ / Z0) ≈ 2 αd / R0: it can only lose power,
 * and its matched loss is the attenuation fit itself. The loss is the ratio of the powers at both ends, so it holds on lines shorter than a
 * quarter-wave, where the formula with a real Z0 and the standing-wave ratio does not (it counts series loss at a voltage maximum).
 * Limits: R0 and VF are the nominal high-frequency values; below about 1 MHz both drift. The fit speaks for clean, dry, 20 °C line.
 * Source: Pozar, Microwave Engineering, 4th ed., §2.1 and §2.7 (general line equations; low-loss Z0 carried to first order).
 */
import {
  add,
  type Complex,
  complex,
  conjugate,
  cosh,
  divide,
  magnitude,
  multiply,
  scale,
  sinh,
  subtract,
} from '../base/complex';
import { C0 } from '../base/constants';
import { InputError } from '../base/input-error';

/** What the model needs of a feed line. Attenuation in dB per 100 m is `k1·√f + k2·f`, f in MHz. */
export interface LineData {
  readonly z0Ohm: number;
  readonly velocityFactor: number;
  readonly k1: number;
  readonly k2: number;
  /** Copper over steel, thinner than the skin depth: more series loss than k1 says, up to `untilMHz`. */
  readonly clad: { readonly atMHz: number; readonly dbPer100M: number; readonly untilMHz: number } | null;
}

/** A water film on an open line slows the wave and adds shunt loss. */
export interface WetFilm {
  readonly velocityFactorRatio: number;
  readonly lossRatio: number;
}

export interface LineConstants {
  readonly z0: Complex;
  /** α + jβ, 1/m. */
  readonly gammaPerM: Complex;
  /** Series resistance, Ω/m, and shunt conductance, S/m, behind that loss. */
  readonly resistanceOhmPerM: number;
  readonly conductanceSPerM: number;
}

export interface LineLoss {
  readonly totalDb: number;
  readonly matchedDb: number;
  /** What standing waves add. Below zero on short lines whose load asks for less current than a matched one. */
  readonly addedDb: number;
}

/** 20 / ln 10: decibels in a neper. */
export const DB_PER_NEPER = 20 / Math.LN10;

/**
 * Series part of the loss, dB per 100 m. Thin cladding carries the current with all of its section, so below `atMHz` the loss stays what
 * it is there; from there to `untilMHz` it runs over into k1·√f on a straight line in the logarithms (our bridge between two points).
 */
function seriesDbPer100M({ k1, clad }: LineData, fMHz: number): number {
  const solid = k1 * Math.sqrt(fMHz);
  if (clad === null || fMHz >= clad.untilMHz) return solid;
  if (fMHz <= clad.atMHz) return Math.max(solid, clad.dbPer100M);
  const part = Math.log(fMHz / clad.atMHz) / Math.log(clad.untilMHz / clad.atMHz);
  return Math.max(solid, clad.dbPer100M ** (1 - part) * (k1 * Math.sqrt(clad.untilMHz)) ** part);
}

/** Matched loss, dB per 100 m, clean and dry. */
export const attenuationDbPer100M = (line: LineData, hz: number): number =>
  seriesDbPer100M(line, hz / 1e6) + line.k2 * (hz / 1e6);

/** Propagation constant and characteristic impedance at one frequency. A wet film raises the shunt loss and the capacitance only. */
export function lineConstants(line: LineData, hz: number, film?: WetFilm): LineConstants {
  if (!(hz > 0)) throw new InputError('frequency-not-positive', { hz });
  const slowing = film?.velocityFactorRatio ?? 1;
  const r0 = line.z0Ohm * slowing;
  const beta = (2 * Math.PI * hz) / (line.velocityFactor * slowing * C0);
  const alpha = ((film?.lossRatio ?? 1) * attenuationDbPer100M(line, hz)) / (100 * DB_PER_NEPER);
  const alphaSeries = seriesDbPer100M(line, hz / 1e6) / (100 * DB_PER_NEPER);
  return fromLosses(r0, beta, alphaSeries, alpha - alphaSeries);
}

function fromLosses(r0: number, beta: number, alphaSeries: number, alphaShunt: number): LineConstants {
  const skew = (alphaSeries - alphaShunt) / beta;
  const z0 = complex(r0, -r0 * skew);
  const gammaPerM = complex(alphaSeries + alphaShunt, beta);
  return {
    z0,
    gammaPerM,
    resistanceOhmPerM: 2 * r0 * alphaSeries,
    conductanceSPerM: (2 * alphaShunt) / (r0 * (1 + skew ** 2)),
  };
}

/** Impedance seen into `lengthM` of line that ends in `load`. */
export function inputImpedance({ z0, gammaPerM }: LineConstants, lengthM: number, load: Complex): Complex {
  const thetaL = scale(gammaPerM, lengthM);
  const c = cosh(thetaL);
  const s = sinh(thetaL);
  return divide(multiply(z0, add(multiply(load, c), multiply(z0, s))), add(multiply(z0, c), multiply(load, s)));
}

/** Exact loss between the input and the load. A load that takes no power gives an infinite loss. */
export function lineLoss(constants: LineConstants, lengthM: number, load: Complex): LineLoss {
  const thetaL = scale(constants.gammaPerM, lengthM);
  const c = cosh(thetaL);
  const s = sinh(thetaL);
  const volts = add(multiply(load, c), multiply(constants.z0, s)); // for 1 A in the load
  const amps = add(c, divide(multiply(load, s), constants.z0));
  const inputW = multiply(volts, conjugate(amps)).re;
  const matchedDb = constants.gammaPerM.re * lengthM * DB_PER_NEPER;
  // Rounding can put a lossless line a hair below zero; a passive line never gains.
  const totalDb = load.re > 0 ? Math.max(0, 10 * Math.log10(inputW / load.re)) : Number.POSITIVE_INFINITY;
  return { totalDb, matchedDb, addedDb: totalDb - matchedDb };
}

/** Reflection coefficient Γ of `z` on `z0`. */
export const gamma = (z: Complex, z0: Complex): Complex => divide(subtract(z, z0), add(z, z0));

/** Impedance that has the reflection coefficient `reflection` on `z0Ohm`. */
export const impedanceOfGamma = (reflection: Complex, z0Ohm: number): Complex =>
  scale(divide(add(complex(1), reflection), subtract(complex(1), reflection)), z0Ohm);

/** Standing-wave ratio of `z` on a real reference impedance; infinite when nothing is absorbed. */
export function swr(z: Complex, z0Ohm: number): number {
  if (!(z.re > 0)) return Number.POSITIVE_INFINITY;
  const size = magnitude(gamma(z, complex(z0Ohm)));
  return size < 1 ? (1 + size) / (1 - size) : Number.POSITIVE_INFINITY;
}
