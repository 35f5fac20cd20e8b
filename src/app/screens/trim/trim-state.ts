/** What is known of the wire while it is trimmed: how much of it is in use, the last dips, and where every band's dip is now and after a step. */
import type { Measurement, SavedPlan } from '../../../design/saved-plan';
import { dipForLength, type TrimVerdict, trimVerdict } from '../../../physics/trim';
import { decimalText } from '../../../words/decimal';
import type { TrimTarget } from './trim-targets';

/** To a kilohertz on the low bands, ten above: what an analyser shows. */
export const mhzText = (mhz: number): string => decimalText(mhz, mhz < 10 ? 3 : 2);

export const wireField = (target: TrimTarget): string => `trim-${target.wire}`;
export const dipField = (target: TrimTarget): string => `trim-dip-${target.band}`;

/** What a linked band's own pieces were when its dip was last read. */
export const readField = (target: TrimTarget): string => `trim-read-${target.wire}`;

/** Wire that makes the dip, m: where links join it, with the pieces inside and the closed links between. */
export const wireInUseM = (saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): number =>
  innerM(saved, target, all) + ownWireM(saved, target, all);

const innerM = (saved: SavedPlan, { inner, linksM }: TrimTarget, all: readonly TrimTarget[]): number =>
  all.filter(({ wire }) => inner.includes(wire)).reduce((sum, each) => sum + ownWireM(saved, each, all), linksM);

const typedM = (saved: SavedPlan, field: string): number | null => {
  const metres = Number(saved.typed[field]?.text);
  return metres > 0 ? metres : null;
};

/** What is folded for this band alone, m: as last told, else as last measured, else as planned. */
function ownWireM(saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): number {
  const told = typedM(saved, wireField(target));
  if (told !== null) return told;
  // A whole as measured says nothing of this piece once one inside has changed.
  if (target.inner.length > 0) return typedM(saved, readField(target)) ?? target.plannedM;
  const bands = all.filter(({ wire }) => wire === target.wire).map(({ band }) => band as string);
  return (
    saved.measurements.findLast(({ band, wireM }) => bands.includes(band) && wireM !== undefined)?.wireM ??
    target.plannedM
  );
}

/** The text that keeps this band's own wire while the whole, pieces inside included, is so many metres; null where nothing is left for it. */
export function ownWireText(
  saved: SavedPlan,
  target: TrimTarget,
  all: readonly TrimTarget[],
  wholeM: number,
): string | null {
  const ownM = wholeM - innerM(saved, target, all);
  return ownM > 0 ? ownM.toFixed(3) : null;
}

/** The whole with this band's own wire as it was when the dip was last read, m. */
export function wireAsReadM(saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): number {
  const nowM = wireInUseM(saved, target, all);
  if (target.inner.length === 0) return measuredOn(saved, target).at(-1)?.wireM ?? nowM;
  const readM = typedM(saved, readField(target));
  return readM === null ? nowM : innerM(saved, target, all) + readM;
}

/** Bands whose dip moves with this wire, itself among them. */
export const movedWith = (target: TrimTarget, all: readonly TrimTarget[]): readonly TrimTarget[] =>
  all.filter(({ wire, inner }) => wire === target.wire || inner.includes(target.wire));

function isLeft(saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): boolean {
  const now = dipNow(saved, target, all);
  const read = now?.measured === true ? measuredOn(saved, target).at(-1) : undefined;
  if (read !== undefined) return verdictOn(target, read) === 'go-on';
  return now === null || trimVerdict({ dipMHz: now.megahertz, wantedMHz: target.aimMHz }) === 'go-on';
}

/** The first band whose piece lies inside this one and is still to be trimmed; null where none is. */
export const untrimmedInside = (saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): TrimTarget | null =>
  all.find((each) => target.inner.includes(each.wire) && isLeft(saved, each, all)) ?? null;

/** The next band, in the order of trimming, whose own wire is still to be trimmed; null where none is. */
export const nextToTrim = (saved: SavedPlan, target: TrimTarget, all: readonly TrimTarget[]): TrimTarget | null =>
  all.slice(all.indexOf(target) + 1).find((each) => each.wire !== target.wire && isLeft(saved, each, all)) ?? null;

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
