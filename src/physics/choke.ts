/**
 * Common-mode impedance of cable or a pair wound on ring cores, of beads, and of chokes in series.
 *
 *   Z = 1 / (1 / Zw + jωC)      Zw winding on complex permeability, C stray capacitance across it
 *
 * Below its resonance a choke is inductive, at it resistive, above it capacitive. Loss in the core (µ″) keeps the peak broad.
 * Limits: the winding is short against the wavelength (at most about a tenth along its length); dimensional resonance of big manganese-zinc
 * cores is not computed but stands in the tolerance; windings in series do not couple.
 * Source: series permeability model as in ferrite makers' catalogues; parallel stray capacitance as usual for inductors.
 */
import { add, type Complex, complex, magnitude } from '../base/complex';
import type { RingSize } from '../catalog/cores';
import type { Permeability } from '../catalog/ferrites';
import { turnLengthM, type WoundConductor } from './conductor-on-core';
import type { Tolerance } from './core-tolerance';
import { windingImpedance } from './toroid';
import { CAPACITANCE_TOLERANCE, windingCapacitanceF } from './winding-capacitance';

export interface ChokeWinding {
  readonly ring: RingSize;
  readonly count: number;
  readonly turns: number;
  readonly conductor: WoundConductor;
}

/** Lowest and highest that core and capacitance tolerances allow, Ω. */
export interface ImpedanceBand {
  readonly nominal: Complex;
  readonly rOhm: readonly [number, number];
  readonly xOhm: readonly [number, number];
  readonly ohm: readonly [number, number];
}

/** `z` with a capacitor across it. */
export function withCapacitance({ re, im }: Complex, capacitanceF: number, hz: number): Complex {
  const b = 2 * Math.PI * hz * capacitanceF;
  const real = 1 - b * im;
  const size2 = real ** 2 + (b * re) ** 2;
  return complex((re * real + im * b * re) / size2, (im * real - re * b * re) / size2);
}

export const strayCapacitanceF = ({ ring, count, turns, conductor }: ChokeWinding): number =>
  windingCapacitanceF(conductor, turns, turnLengthM(ring, count, conductor.outerM));

/** Common-mode impedance of one winding, Ω. `mu` belongs to `hz`. */
export const chokeImpedance = (winding: ChokeWinding, mu: Permeability, hz: number): Complex =>
  withCapacitance(windingImpedance(winding.ring, winding.count, winding.turns, mu, hz), strayCapacitanceF(winding), hz);

/** The same with every corner of the tolerances: µ′ and µ″ apart, capacitance apart, in half steps, so that a resonance is not stepped over. */
export function chokeBand(winding: ChokeWinding, mu: Permeability, hz: number, tolerance: Tolerance): ImpedanceBand {
  const capacitanceF = strayCapacitanceF(winding);
  const bare = windingImpedance(winding.ring, winding.count, winding.turns, mu, hz);
  const parts = [1 - tolerance.below, 1, 1 + tolerance.above];
  const [rOhm, xOhm, ohm] = [emptyRange(), emptyRange(), emptyRange()];
  for (const real of parts) {
    for (const loss of parts) {
      for (const step of CAPACITANCE_STEPS) {
        const stray = capacitanceF * (1 + step * CAPACITANCE_TOLERANCE);
        const z = withCapacitance({ re: bare.re * loss, im: bare.im * real }, stray, hz);
        widen(rOhm, z.re);
        widen(xOhm, z.im);
        widen(ohm, magnitude(z));
      }
    }
  }
  return { nominal: withCapacitance(bare, capacitanceF, hz), rOhm, xOhm, ohm };
}

const CAPACITANCE_STEPS = [-1, -0.5, 0, 0.5, 1];
const emptyRange = (): [number, number] => [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

function widen(range: [number, number], value: number): void {
  if (value < range[0]) range[0] = value;
  if (value > range[1]) range[1] = value;
}

/** Beads threaded once on a cable: no neighbouring turns, so no stray capacitance is reckoned. */
export function beadsBand(
  bead: RingSize,
  count: number,
  mu: Permeability,
  hz: number,
  tolerance: Tolerance,
): ImpedanceBand {
  const nominal = windingImpedance(bead, count, 1, mu, hz);
  const range = (x: number): [number, number] =>
    x < 0
      ? [x * (1 + tolerance.above), x * (1 - tolerance.below)]
      : [x * (1 - tolerance.below), x * (1 + tolerance.above)];
  return { nominal, rOhm: range(nominal.re), xOhm: range(nominal.im), ohm: range(magnitude(nominal)) };
}

/** Chokes one behind the other on the same cable. */
export const inSeries = (chokes: readonly Complex[]): Complex => chokes.reduce(add, complex(0));

/** Bands of chokes in series: worst and best of each add. */
export function bandsInSeries(bands: readonly ImpedanceBand[]): ImpedanceBand {
  const sum = (of: (band: ImpedanceBand) => readonly [number, number]): [number, number] => [
    bands.reduce((total, band) => total + of(band)[0], 0),
    bands.reduce((total, band) => total + of(band)[1], 0),
  ];
  const rOhm = sum((band) => band.rOhm);
  const xOhm = sum((band) => band.xOhm);
  const nearest = xOhm[0] <= 0 && xOhm[1] >= 0 ? 0 : Math.min(Math.abs(xOhm[0]), Math.abs(xOhm[1]));
  const farthest = Math.max(Math.abs(xOhm[0]), Math.abs(xOhm[1]));
  return {
    nominal: inSeries(bands.map((band) => band.nominal)),
    rOhm,
    xOhm,
    ohm:
      bands.length === 1
        ? (bands[0] as ImpedanceBand).ohm
        : [Math.hypot(rOhm[0], nearest), Math.hypot(rOhm[1], farthest)],
  };
}

/** More reactance than resistance: it may resonate with the cable that it should hold back. */
export const isMostlyReactive = (rOhm: number, xOhm: number): boolean => Math.abs(xOhm) > rOhm;

/** What drives the outside of the cable at the choke's place: open-circuit voltage, rms, and the impedance behind it. */
export interface CommonModeSource {
  readonly openV: number;
  readonly impedance: Complex;
}

export interface ChokeDuty {
  readonly currentA: number;
  readonly voltageV: number;
  readonly heatW: number;
}

/** Current through, voltage across and heat in a choke `z` driven by `source`. */
export function chokeDuty(z: Complex, source: CommonModeSource): ChokeDuty {
  const currentA = source.openV / magnitude(add(z, source.impedance));
  return { currentA, voltageV: currentA * magnitude(z), heatW: currentA ** 2 * z.re };
}

/** The source that gives a measured or solved voltage across the choke it was found with. */
export const sourceBehind = (voltageAcrossV: number, choke: Complex, impedance: Complex): CommonModeSource => ({
  openV: (voltageAcrossV * magnitude(add(choke, impedance))) / magnitude(choke),
  impedance,
});
