/**
 * Resistance of round wire.
 *
 *   δ = √(1 / (π f µ0 σ))      R' = 1 / (σ π δ (d − δ))  while δ < d/2,  else  1 / (σ π d² / 4)
 *
 * The second form is a ring of depth δ under the surface: within 6 % of the exact Bessel solution at δ = d/4, within 1 % below d/8, which
 * every wire of the catalogue keeps at 1.8 MHz and up. Stranded wire is taken as solid of the bundle's diameter, so its loss is a little low.
 * Source: Pozar, Microwave Engineering, 4th ed., eq. 1.60 (skin depth) and §2.2 (surface resistance).
 */
import { MU0 } from '../base/constants';

export const skinDepthM = (frequencyHz: number, conductivitySPerM: number): number =>
  1 / Math.sqrt(Math.PI * frequencyHz * MU0 * conductivitySPerM);

export const directResistanceOhmPerM = (diameterM: number, conductivitySPerM: number): number =>
  4 / (conductivitySPerM * Math.PI * diameterM ** 2);

export function wireResistanceOhmPerM(frequencyHz: number, diameterM: number, conductivitySPerM: number): number {
  const depthM = skinDepthM(frequencyHz, conductivitySPerM);
  if (depthM >= diameterM / 2) return directResistanceOhmPerM(diameterM, conductivitySPerM);
  return 1 / (conductivitySPerM * Math.PI * depthM * (diameterM - depthM));
}
