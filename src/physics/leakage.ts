/**
 * Leakage inductance of a two-winding ring transformer, referred to the low-impedance side. An estimate: ×/÷ 1.6.
 *
 * Windings apart, the low side over a sector θ of the ring (Nave, stray field of one winding of a common-mode inductor):
 *
 *   L = µe · 0.4π N² Ae / (le √(θ/360° + sin(θ/2)/π)) nH,   µe = 2.5 Γ^1.45,   Γ = √(π/Ae) · le/2      cm, cm²
 *
 * Wires wound as one (bifilar, trifilar): the loop inductance of the pair, L = Z0 in air / c · length.
 * In an autotransformer of turns ratio n the low winding carries only (n − 1)/n of the input current, so both shrink by ((n − 1)/n)².
 *
 * The leads between socket, winding and terminal add about 1 nH per mm; 80 mm of them are reckoned to every build.
 * Limits: the scatter between builds is larger than that between formulas. Check of the sum: the 80 to 120 pF that builders put across the
 * 50 Ω side of a 49:1 stand for C Z² = 0.20 to 0.30 µH; this gives 0.16 to 0.26 µH for 2 to 4 turns on one or two 61 mm rings.
 * Sources: M. J. Nave, "On modeling the common mode inductor", IEEE Int. Symp. EMC, 1991 (memory); Pozar, Microwave Engineering, 4th ed.,
 * table 2.1, two-wire line.
 */
import { C0 } from '../base/constants';
import { type RingSize, ringConstants } from '../catalog/cores';
import type { WoundConductor } from './conductor-on-core';
import { twoWireZ0Ohm } from './two-wire-line';

/** Leads of a short, tidy build, H. */
export const LEAD_H = 80e-9;

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
  (twoWireZ0Ohm(outerM, metalM) / C0) * lengthM;

/** Part of either that counts when the high side continues the low side's winding. */
export const autoPart = (turnsRatio: number): number => ((turnsRatio - 1) / turnsRatio) ** 2;
