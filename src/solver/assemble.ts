/**
 * The impedance matrix of the unknown currents from the impedances between element ends: Z = Cᵀ Z_ends C, with C the ±1 coefficients
 * of the mesh. Wire resistance and insulation act on an element alone and are added here:
 *
 *   wire        Z′ ∬ s_i s_j dl = Z′ L/3 (i = j) or Z′ L/6
 *   insulation  −(1 − 1/εr) ln(b/a) / (jω 2πε0) · (±1)(±1)/L       a, b  inner and outer radius of the coat
 *
 * The coat's form is that of the charge, which gives the exact TM0 mode of a coated wire (Richmond & Newman, Radio Science 11, 1976,
 * treat the same boundary). The matrix is complex symmetric; only its lower triangle is kept, row after row, re and im apart: row i begins at
 * i(i + 1)/2.
 */
import { type Complex, complex } from '../base/complex';
import { EPSILON0 } from '../base/constants';
import { ENDS_WIDTH } from './fill';
import type { Mesh } from './mesh';
import type { ResolvedGeometry } from './resolve';
import { wireImpedanceOhmPerM } from './wire-impedance';

export interface SymmetricMatrix {
  readonly size: number;
  /** Packed lower triangle: entry (row, column ≤ row) at row(row + 1)/2 + column. */
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export function assembleMatrix(mesh: Mesh, ends: Float64Array): SymmetricMatrix {
  const size = mesh.unknownCount;
  const re = new Float64Array((size * (size + 1)) / 2);
  const im = new Float64Array(re.length);
  const { offset, unknown, sign } = mesh;
  for (let e = 0, pair = 0; e < mesh.elementCount; e++) {
    for (let f = 0; f <= e; f++, pair++) {
      for (let i = 0; i < 2; i++) {
        for (let j = 0; j < 2; j++) {
          const o = ENDS_WIDTH * pair + 4 * i + 2 * j;
          for (let m = offset[2 * e + i]; m < offset[2 * e + i + 1]; m++) {
            for (let n = offset[2 * f + j]; n < offset[2 * f + j + 1]; n++) {
              const [row, column] = [unknown[m], unknown[n]];
              const factor = sign[m] * sign[n];
              // A pair of different elements stands twice in the sum, as (e, f) and (f, e): on the diagonal both fall together.
              const twice = row === column && e !== f ? 2 * factor : factor;
              if (e === f && column > row) continue;
              const slot = row >= column ? (row * (row + 1)) / 2 + column : (column * (column + 1)) / 2 + row;
              re[slot] += twice * ends[o];
              im[slot] += twice * ends[o + 1];
            }
          }
        }
      }
    }
  }
  return { size, re, im };
}

/** Adds what each element has by itself to the pairs (e, e). */
export function addOwnImpedances(
  ends: Float64Array,
  geometry: ResolvedGeometry,
  mesh: Mesh,
  frequencyHz: number,
): void {
  const perWire = geometry.wires.map(({ wire }) => ({
    series: wireSeries(wire.conductivitySPerM, wire.radiusM, frequencyHz),
    coat: coatElastance(wire.insulation, wire.radiusM, frequencyHz),
  }));
  for (let e = 0; e < mesh.elementCount; e++) {
    const { series, coat } = perWire[mesh.wire[e]];
    const lengthM = mesh.lengthM[e];
    const o = ENDS_WIDTH * ((e * (e + 1)) / 2 + e);
    for (let n = 0; n < 4; n++) {
      const isSame = n === 0 || n === 3;
      const share = lengthM / (isSame ? 3 : 6);
      ends[o + 2 * n] += series.re * share;
      ends[o + 2 * n + 1] += series.im * share + ((isSame ? 1 : -1) * coat) / lengthM;
    }
  }
}

const wireSeries = (conductivity: number | null | undefined, radiusM: number, frequencyHz: number): Complex =>
  conductivity ? wireImpedanceOhmPerM(frequencyHz, radiusM, conductivity) : complex(0);

/** −(1 − 1/εr) ln(b/a) / (jω 2πε0) is +j times this, in Ω·m. */
function coatElastance(
  insulation: { epsilonR: number; thicknessM: number } | null | undefined,
  radiusM: number,
  frequencyHz: number,
): number {
  if (!insulation) return 0;
  const logarithm = Math.log((radiusM + insulation.thicknessM) / radiusM);
  return ((1 - 1 / insulation.epsilonR) * logarithm) / ((2 * Math.PI) ** 2 * frequencyHz * EPSILON0);
}
