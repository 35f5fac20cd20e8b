/**
 * What the radio sees: the feed point's impedance carried through the chain, device by device, from the wire to the first tuner or the radio.
 * A designed transformer shows what its model gives, one that is only a ratio divides by it; a line transforms and loses exactly (physics/line); a
 * choke and an arrester leave it alone. A tuner at the feed point makes 50 Ω of whatever it reaches.
 */
import { type Complex, complex, scale } from '../base/complex';
import type { Band } from '../catalog/band-ids';
import type { LineId } from '../catalog/line-ids';
import { lines } from '../catalog/lines';
import { lineDataOf } from '../physics/catalogue-line';
import { inputImpedance, lineConstants, lineLoss, swr } from '../physics/line';
import type { Link } from './finding';

export const SYSTEM_OHM = 50;

export interface LineRun {
  /** At the feed point, after the transformer that stands there. */
  readonly afterTransformer: Complex;
  /** At the shack end of the line, before any tuner there. */
  readonly atRadio: Complex;
  readonly lossDb: number;
  readonly sections: readonly LineSection[];
}

export interface LineSection {
  readonly line: LineId;
  readonly lengthM: number;
  readonly load: Complex;
  readonly lossDb: number;
}

const isLine = (id: string | null): id is LineId => id !== null && id in lines;

/** Largest mismatch that each tuner brings to 50 Ω; the first is what a radio stands without one. Common practice, no source. */
export const REACH = { none: 2, radio: 3, wide: 10, openLine: 40 } as const;

export function runOfChain(chain: readonly Link[], feedPoint: Complex, frequencyMHz: number): LineRun {
  const hz = frequencyMHz * 1e6;
  let z = feedPoint;
  let afterTransformer: Complex | null = null;
  let lossDb = 0;
  const sections: LineSection[] = [];
  for (const link of chain) {
    if (link.device === 'transformer' && link.ratio !== null)
      z = link.figures?.inputAt?.(hz, z) ?? scale(z, 1 / link.ratio);
    if (link.device === 'tuner' && link.at !== 'feed-point') break;
    const isSection = link.device === 'line' && isLine(link.line) && link.lengthM !== null;
    if (isSection || link.device === 'tuner') afterTransformer ??= z;
    if (link.device === 'tuner' && swr(z, SYSTEM_OHM) <= REACH.openLine) z = complex(SYSTEM_OHM);
    if (!isSection) continue;
    const constants = lineConstants(lineDataOf(lines[link.line]), hz);
    const loss = lineLoss(constants, link.lengthM, z).totalDb;
    sections.push({ line: link.line, lengthM: link.lengthM, load: z, lossDb: loss });
    lossDb += loss;
    z = inputImpedance(constants, link.lengthM, z);
  }
  return { afterTransformer: afterTransformer ?? z, atRadio: z, lossDb, sections };
}

/** Loss in the transformer and the chokes on one band, dB; null while one of them has no design. A bought tuner's own loss is not in it. */
export function deviceLossOn(chain: readonly Link[], band: Band): number | null {
  const devices = chain.filter(({ device }) => device === 'transformer' || device === 'choke');
  const losses = devices.map(({ figures }) => figures?.bands.find((each) => each.band === band)?.lossDb ?? null);
  return losses.includes(null) ? null : losses.reduce<number>((sum, lossDb) => sum + (lossDb ?? 0), 0);
}
