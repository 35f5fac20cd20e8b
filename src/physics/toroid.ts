/**
 * Ring core of rectangular section, stacked `count` high and wound with N turns that link all of it.
 *
 *   L = µ0 µ N² · count · Ae / le      Z = jω µ0 (µ′ − jµ″) N² · count · Ae / le      Ae / le = h ln(OD/ID) / 2π
 *   B̂ = √2 V / (ω N Ae count)          mean over the section; the inner edge sees more by le / π ID
 *
 * Limits: sharp corners (real edges are rounded: 2 % less), the field of the winding outside the core left out (below 1 % for µ > 100).
 * Source: IEC 60205, effective parameters of magnetic parts, ring core.
 */
import { type Complex, complex } from '../base/complex';
import { MU0 } from '../base/constants';
import { type RingSize, ringConstants } from '../catalog/cores';
import type { Permeability } from '../catalog/ferrites';

/** Area over magnetic length, m: what one turn's inductance is made of. */
export const areaOverLengthM = ({ outsideDiameterM, insideDiameterM, heightM }: RingSize): number =>
  (heightM * Math.log(outsideDiameterM / insideDiameterM)) / (2 * Math.PI);

/** Density of sintered ferrite, kg/m³: 4800 manganese-zinc to 5000 nickel-zinc (memory). */
const FERRITE_KG_PER_M3 = 4900;

/** Weight of a stack, kg. */
export const stackMassKg = ({ outsideDiameterM, insideDiameterM, heightM }: RingSize, count: number): number =>
  FERRITE_KG_PER_M3 * (Math.PI / 4) * (outsideDiameterM ** 2 - insideDiameterM ** 2) * heightM * count;

/** Bare surface of a stack, m²: two faces, the outside and the hole. */
export const stackSurfaceM2 = ({ outsideDiameterM, insideDiameterM, heightM }: RingSize, count: number): number =>
  (Math.PI / 2) * (outsideDiameterM ** 2 - insideDiameterM ** 2) +
  Math.PI * (outsideDiameterM + insideDiameterM) * heightM * count;

/** Inductance of one turn, nH, at an initial permeability: the A_L of catalogues. */
export const alNanohenry = (ring: RingSize, muInitial: number): number => MU0 * muInitial * areaOverLengthM(ring) * 1e9;

/** Turns, not rounded, for an inductance; `al` is the maker's A_L in nH per turn². */
export const toroidTurns = (inductanceH: number, al: number): number => Math.sqrt(inductanceH / (al * 1e-9));

/** Impedance of N turns without stray capacitance, Ω. */
export function windingImpedance(ring: RingSize, count: number, turns: number, mu: Permeability, hz: number): Complex {
  const perMu = 2 * Math.PI * hz * MU0 * turns ** 2 * count * areaOverLengthM(ring);
  return complex(perMu * mu.muImag, perMu * mu.muReal);
}

/** Peak flux density, T, for `voltsRms` across N turns. */
export const fluxDensityT = (ring: RingSize, count: number, turns: number, voltsRms: number, hz: number): number =>
  (Math.SQRT2 * voltsRms) / (2 * Math.PI * hz * turns * count * ringConstants(ring).areaM2);
