/** A typed dip: a frequency, or what is doubtful about it. A dip may well lie outside its band; far from it, another unit or band is meant. */
import { isFrequencyProblem, readFrequency } from '../../../base/read-frequency';
import type { TrimTarget } from './trim-targets';

export type DipReading =
  | { readonly kind: 'dip'; readonly megahertz: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-a-number' }
  | { readonly kind: 'unit'; readonly megahertz: readonly number[] }
  | { readonly kind: 'far'; readonly megahertz: number; readonly onBand: TrimTarget | null };

/** Farther off than this no fold brings it back: another band or another unit is meant. */
const FAR = 0.2;

const isNear = (megahertz: number, { aimMHz }: TrimTarget): boolean => Math.abs(megahertz / aimMHz - 1) <= FAR;

export function readDip(typed: string, target: TrimTarget, all: readonly TrimTarget[]): DipReading {
  const read = readFrequency(typed);
  if (isFrequencyProblem(read)) {
    if (read.code === 'empty') return { kind: 'empty' };
    const megahertz = read.candidates.map((each) => each.megahertz).filter((each) => isNear(each, target));
    return read.code === 'unit-doubt' && megahertz.length > 0 ? { kind: 'unit', megahertz } : { kind: 'not-a-number' };
  }
  const { megahertz } = read;
  if (isNear(megahertz, target)) return { kind: 'dip', megahertz };
  return { kind: 'far', megahertz, onBand: all.find((each) => each !== target && isNear(megahertz, each)) ?? null };
}
