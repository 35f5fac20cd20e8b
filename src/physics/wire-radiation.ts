/**
 * Radiation resistance of thin wires with sinusoidal current, referred to the current maximum, and what the ground below does to it.
 *
 *   centre-fed, length L, k = 2π/λ:
 *   R = 60 {γ + ln kL − Ci(kL) + ½ sin kL [Si(2kL) − 2 Si(kL)] + ½ cos kL [γ + ln(kL/2) + Ci(2kL) − 2 Ci(kL)]}
 *   n half-waves in alternating phase (off-centre or end-fed):  R = 30 Cin(2πn), carried on between the multiples
 *   half-wave over ground:  Z = Z11 − Z21(d)     Z21(d) = 30 [−2 E1(ju0) + E1(ju1) + E1(ju2)]
 *   u0 = kd, u1,2 = k (√(d² + λ²/4) ± λ/2)      d = 2h over a perfect conductor, 2h + 2/γg over soil, γg = jk √(εr − jσ/ωε0)
 *
 * The complex depth 2/γg stands for the reflection. What the soil close to a low wire takes is added by a fit to our own field solutions,
 * 131 Ω · e^(−h / 0.045λ), less on ground that conducts well. Together within about 15 % of those solutions from 0.05 λ up.
 * Sources: Balanis, Antenna Theory, 3rd ed., eq. 4-70 and 8-69; Stratton, Electromagnetic Theory, §8.7 (n half-waves); Bannister, image theory
 * of finitely conducting earth, Radio Science 21 (1986) 605 (memory).
 */
import { add, type Complex, complex, multiply, reciprocal, scale, squareRoot, subtract } from '../base/complex';
import { C0, EPSILON0 } from '../base/constants';
import { cosineIntegralEntire, expIntegral1, sineIntegral } from './exponential-integral';

export interface Soil {
  readonly epsilonR: number;
  readonly sigmaSPerM: number;
}

/** Resistance of a free half-wave at its middle, Ω. */
export const HALF_WAVE_OHM = 30 * cosineIntegralEntire(2 * Math.PI);

/** Centre-fed wire of electrical length `kL` radians, at its current maximum, Ω. */
export function centreFedRadiationOhm(kL: number): number {
  const half = sineIntegral(2 * kL) - 2 * sineIntegral(kL);
  // γ + ln(kL/2) + Ci(2kL) − 2Ci(kL), written with Cin so that it stays exact for short wires.
  const far = 2 * cosineIntegralEntire(kL) - cosineIntegralEntire(2 * kL);
  return 60 * (cosineIntegralEntire(kL) + 0.5 * Math.sin(kL) * half + 0.5 * Math.cos(kL) * far);
}

/** Wire whose half-waves alternate in phase, of electrical length `theta` radians, Ω. */
export const harmonicRadiationOhm = (theta: number): number => 30 * cosineIntegralEntire(2 * theta);

/** Propagation constant in the soil, 1/m. */
export function soilGamma(soil: Soil, frequencyHz: number): Complex {
  const omega = 2 * Math.PI * frequencyHz;
  const root = squareRoot(complex(soil.epsilonR, -soil.sigmaSPerM / (omega * EPSILON0)));
  return multiply(complex(0, omega / C0), root);
}

/** Mutual impedance of two parallel half-waves at a (complex) spacing of `kd` radians, Ω. */
export function mutualHalfWaveOhm(kd: Complex): Complex {
  const slant = squareRoot(add(multiply(kd, kd), complex(Math.PI ** 2)));
  const turned = (u: Complex): Complex => expIntegral1(complex(-u.im, u.re));
  const ends = add(turned(add(slant, complex(Math.PI))), turned(subtract(slant, complex(Math.PI))));
  return scale(add(scale(turned(kd), -2), ends), 30);
}

/** What low wire loses to the soil near it, Ω at the middle of a half-wave: the fit described above. */
function soilLossOhm(heightM: number, frequencyHz: number, soil: Soil): number {
  const permittivity = Math.hypot(soil.epsilonR, soil.sigmaSPerM / (2 * Math.PI * frequencyHz * EPSILON0));
  const conducting = Math.min(1, (25 / permittivity) ** 0.45);
  return 131 * conducting * Math.exp((-heightM * frequencyHz) / C0 / 0.045);
}

/**
 * Factor on the resistance of a horizontal wire `heightM` above ground against free space, from the half-wave. `soil` null is a perfect
 * conductor. At least 0.1, so that a wire lying on the ground still has a finite resistance.
 */
export function groundFactor(heightM: number, frequencyHz: number, soil: Soil | null): number {
  const k = (2 * Math.PI * frequencyHz) / C0;
  const height = Math.max(heightM, 0.1);
  const depth = soil === null ? complex(0) : scale(reciprocal(soilGamma(soil, frequencyHz)), 2);
  const kd = scale(add(complex(2 * height), depth), k);
  const reflected = HALF_WAVE_OHM - mutualHalfWaveOhm(kd).re;
  const lost = soil === null ? 0 : soilLossOhm(height, frequencyHz, soil);
  return Math.max((reflected + lost) / HALF_WAVE_OHM, 0.1);
}

/** Characteristic impedance of one wire as a line against the neutral plane, averaged along it, Ω (Schelkunoff; `lengthM` of that leg). */
export const wireZ0Ohm = (lengthM: number, radiusM: number): number =>
  60 * Math.max(Math.log((2 * lengthM) / radiusM) - 1, 1);
