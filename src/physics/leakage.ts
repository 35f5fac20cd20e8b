/**
 * Leakage inductance of a two-winding ring transformer, referred to the low-impedance side. An estimate: ×/÷ 1.6.
 *
 * Windings apart, the low side over a sector θ of the ring (Nave, stray field of one winding of a common-mode inductor):
 *
 *   L = µe · 0.4π N² Ae / (le √(θ/360° + sin(θ/2)/π)) nH,   µe = 2.5 Γ^1.45,   Γ = √(π/Ae) · le/2      cm, cm²
 *
 * Wires wound as one (bifilar, trifilar): the loop inductance of the pair, L = (µ0/π) arcosh(D/d) · length.
 * In an autotransformer of turns ratio n the low winding carries only (n − 1)/n of the input current, so both shrink by ((n − 1)/n)².
 *
 * Limits: lead length to terminals and capacitor adds about 1 nH per mm; the scatter between builds is larger than that between formulas.
 * Sources: M. J. Nave, "On modeling the common mode inductor", IEEE Int. Symp. EMC, 1991 (memory); Pozar, Microwave Engineering, 4th ed.,
 * table 2.1, two-wire line.
 */
import { MU0 } from '../base/constants';
import { type RingSize, ringConstants } from '../catalog/cores';
import type { WoundConductor } from './conductor-on-core';

/** Factor by which the real leakage may be larger or smaller. */
export const LEAKAGE_FACTOR = 1.6;

/** Windings of their own; `sectorDeg` is what the low side covers of the ring. */
export function spacedLeakageH(ring: RingSize, count: number, turns: number, sectorDeg: number): number {
  const { areaM2, lengthM } = ringConstants(ring);
  const areaCm2 = areaM2 * count * 1e4;
  const lengthCm = lengthM * 100;
  const shape = Math.sqrt(Math.PI / areaCm2) * (lengthCm / 2);
  const muEffective = 2.5 * shape ** 1.45;
  const sector = Math.sqrt(sectorDeg / 360 + Math.sin((sectorDeg * Math.PI) / 360) / Math.PI);
  return (muEffective * 0.4 * Math.PI * turns ** 2 * areaCm2 * 1e-9) / (lengthCm * sector);
}

/** Wires wound side by side over `lengthM` each. */
export const multifilarLeakageH = ({ outerM, metalM }: WoundConductor, lengthM: number): number =>
  (MU0 / Math.PI) * Math.acosh(outerM / metalM) * lengthM;

/** Part of either that counts when the high side continues the low side's winding. */
export const autoPart = (turnsRatio: number): number => ((turnsRatio - 1) / turnsRatio) ** 2;
