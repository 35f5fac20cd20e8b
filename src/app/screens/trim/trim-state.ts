/** What is known of the wire while it is trimmed: how much of it is in use, the last dips, and where every band's dip is now and after a step. */
import type { Measurement, SavedPlan } from '../../../design/saved-plan';
import { dipForLength, type TrimVerdict, trimVerdict } from '../../../physics/trim';
import { decimalText } from '../../../words/decimal';
import type { TrimTarget } from './trim-targets';

/** To a kilohertz on the low bands, ten above: what an analyser shows. */
export const mhzText = (mhz: number): string => decimalText(mhz, mhz < 10 ? 3 : 2);

export const wireField = (target: TrimTarget): string => `trim-${target.wire}`;
export const dipField = (target: TrimTarget): string => `trim-dip-${target.band}`;

/** Wire in use, m: as last told, else as last measured, else as planned. */
export function wireInUseM(saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): number {
  const told = Number(saved.typed[wireField(target)]?.text);
  if (told > 0) return told;
  const bands = all.filter(({ wire }) => wire === target.wire).map(({ band }) => band as string);
  return (
    saved.measurements.findLast(({ band, wireM }) => bands.includes(band) && wireM !== undefined)?.wireM ??
    target.plannedM
  );
}

/** Both were measured or told with the same wire, m: no knot is tied nearer. */
export const isSameWire = (aM: number, bM: number): boolean => Math.abs(aM - bM) < 0.005;

/** Measurements of a band, the oldest first. */
export const measuredOn = (saved: SavedPlan, target: TrimTarget): readonly Measurement[] =>
  saved.measurements.filter(({ band }) => band === target.band).sort((a, b) => a.at - b.at);

export const verdictOn = ({ aimMHz }: TrimTarget, { dipMHz, swr }: Measurement): TrimVerdict =>
  trimVerdict({ dipMHz, wantedMHz: aimMHz, swr });

export interface DipNow {
  readonly megahertz: number;
  /** False: worked out from another band or another length. */
  readonly measured: boolean;
}

/** Where the dip of a band is with the wire in use; null before anything was measured on that wire. */
export function dipNow(saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): DipNow | null {
  const wireM = wireInUseM(saved, target, all);
  const own = measuredOn(saved, target).at(-1);
  if (own !== undefined) {
    const atM = own.wireM ?? wireM;
    return { megahertz: dipForLength(own.dipMHz, atM, wireM), measured: isSameWire(atM, wireM) };
  }
  const others = all.filter((each) => each.wire === target.wire && each !== target);
  for (const other of others) {
    const last = measuredOn(saved, other).at(-1);
    if (last === undefined) continue;
    // Dips of one wire keep the proportion that the plan worked out for them.
    const there = dipForLength(last.dipMHz, last.wireM ?? wireM, wireM);
    return { megahertz: (there * target.aimMHz) / other.aimMHz, measured: false };
  }
  return null;
}
