/**
 * Lengths of an end-fed wire that keep clear of every half-wave multiple of every wanted band.
 *
 *   Ln(f) = 149.9 (n − 0.05) kw / f      clear: |L − Ln(f)| > 5 % of Ln(f) for every n and every f of the band
 *   L ≥ 0.23 λ at the lower edge of the lowest band, L ≤ the span (45 m when none is told)
 *
 *      0.23 λ            L1        window        L2         span
 *        |------------[XXXXXXX]-------------[XXXXXXX]--------|
 *
 * 5 % is far too little about the first half-wave: there a wire from 5 to 30 % off is allowed, and flagged with the SWR to expect
 * (non-resonant-swr.ts). Limits: resonances by rule, not solved for the site. Sources: handbook end-effect rule; clearances by common practice.
 */
import type { Dimension } from '../base/working';
import type { Band } from '../catalog/band-ids';
import { nthHalfWaveM } from './lengths';
import { expectedSwr, firstHalfWaveRange } from './non-resonant-swr';

export const CLEARANCE = 0.05;
export const LEAST_WAVES = 0.23;
export const USUAL_LONGEST_M = 45;
const WAVE = 299.8;
/** Kept from a window's edges where there is room: what cutting and hanging change. */
const INSET = 0.03;

export interface WantedBand {
  readonly band: Band;
  readonly lowMHz: number;
  readonly highMHz: number;
}

/** The lengths at which one half-wave multiple of a band lies: from its upper band edge to its lower one. */
export interface Resonance {
  readonly band: Band;
  readonly n: number;
  readonly shortestM: number;
  readonly longestM: number;
}

/** A band whose first half-wave is near enough for a high SWR. */
export interface TunerRange {
  readonly band: Band;
  /** Length over the first half-wave, at the edge of the band where the SWR is highest. */
  readonly ratio: number;
  readonly expectedSwr: number;
}

export interface ClearWindow {
  readonly fromM: number;
  readonly toM: number;
  readonly best: Dimension;
  /** What bounds it: a resonance, or null for the shortest useful length and for the span. */
  readonly below: Resonance | null;
  readonly above: Resonance | null;
  /** Least |L − Ln| / Ln over all bands at the best length, and where. Null when no resonance is within reach. */
  readonly nearest: { readonly band: Band; readonly n: number; readonly margin: number } | null;
  readonly tunerRange: readonly TunerRange[];
}

export interface LengthSearch {
  readonly bands: readonly WantedBand[];
  readonly wireFactor: number;
  readonly shortestM: number;
  readonly longestM: number;
}

/** The usual search for the radiating wire. Empty bands are refused by the answers' schema. */
export function wireSearch(bands: readonly WantedBand[], wireFactor: number, spanM?: number): LengthSearch {
  const lowestMHz = Math.min(...bands.map(({ lowMHz }) => lowMHz));
  return { bands, wireFactor, shortestM: (LEAST_WAVES * WAVE) / lowestMHz, longestM: spanM ?? USUAL_LONGEST_M };
}

/** All half-wave multiples that can matter up to `longestM`, by length. */
export function resonances({ bands, wireFactor, longestM }: LengthSearch): Resonance[] {
  const list = bands.flatMap(({ band, lowMHz, highMHz }) => {
    const shortest = (n: number): number => nthHalfWaveM(n, highMHz, wireFactor);
    const ofBand: Resonance[] = [];
    for (let n = 1; shortest(n) * (1 - CLEARANCE) <= longestM; n++) {
      ofBand.push({ band, n, shortestM: shortest(n), longestM: nthHalfWaveM(n, lowMHz, wireFactor) });
    }
    return ofBand;
  });
  return list.sort((a, b) => a.shortestM - b.shortestM);
}

/** How far a length keeps from one resonance, as part of it; 0 inside the band. */
export function marginTo(resonance: Resonance, lengthM: number): number {
  if (lengthM > resonance.longestM) return lengthM / resonance.longestM - 1;
  return lengthM < resonance.shortestM ? 1 - lengthM / resonance.shortestM : 0;
}

/** The resonance a length comes nearest to; null when there is none. */
export function nearestResonance(list: readonly Resonance[], lengthM: number): ClearWindow['nearest'] {
  let nearest: ClearWindow['nearest'] = null;
  for (const resonance of list) {
    const margin = marginTo(resonance, lengthM);
    if (nearest === null || margin < nearest.margin) nearest = { band: resonance.band, n: resonance.n, margin };
  }
  return nearest;
}

/** Bands whose first half-wave is 5 to 30 % away, with the highest SWR to expect on them. */
export function tunerRangeAt(search: LengthSearch, lengthM: number): TunerRange[] {
  return search.bands.flatMap(({ band, lowMHz, highMHz }) => {
    const ratios = [lowMHz, highMHz].map((edge) => lengthM / nthHalfWaveM(1, edge, search.wireFactor));
    const nearest = Math.min(...ratios.map((ratio) => Math.abs(ratio - 1)));
    if (nearest > firstHalfWaveRange.share) return [];
    const worst = expectedSwr(Math.min(...ratios), Math.max(...ratios));
    return [{ band, ratio: worst.ratio, expectedSwr: worst.swr }];
  });
}

interface Gap {
  readonly fromM: number;
  readonly toM: number;
  readonly below: Resonance | null;
  readonly above: Resonance | null;
}

/** Stretches between the kept-off zones, which widen each resonance by `clearance`. */
function gapsBetween(list: readonly Resonance[], search: LengthSearch, clearance: number): Gap[] {
  const gaps: Gap[] = [];
  let fromM = search.shortestM;
  let below: Resonance | null = null;
  for (const resonance of list) {
    const zoneFromM = resonance.shortestM * (1 - clearance);
    const zoneToM = resonance.longestM * (1 + clearance);
    if (zoneFromM > fromM) gaps.push({ fromM, toM: Math.min(zoneFromM, search.longestM), below, above: resonance });
    if (zoneToM > fromM) {
      fromM = zoneToM;
      below = resonance;
    }
  }
  if (fromM < search.longestM) gaps.push({ fromM, toM: search.longestM, below, above: null });
  return gaps.filter((gap) => gap.toM > gap.fromM);
}

/** Length as far, in parts, from the resonance below as from the one above: 2ab / (a + b). */
const evenlyBetween = (belowM: number, aboveM: number): number => (2 * belowM * aboveM) / (belowM + aboveM);

const within = (value: number, fromM: number, toM: number): number => Math.min(Math.max(value, fromM), toM);

const worstSwr = (tunerRange: readonly TunerRange[]): number =>
  Math.max(1, ...tunerRange.map((each) => each.expectedSwr));

/**
 * Best length of a gap: where the worst SWR about a first half-wave is least, and of those the one with most clearance. Looked for at the
 * even point, near both edges and where a band leaves the range of its first half-wave.
 */
function bestInGap(gap: Gap, search: LengthSearch, list: readonly Resonance[]): number {
  const inset = Math.min(INSET * gap.toM, (gap.toM - gap.fromM) / 2);
  const [fromM, toM] = [gap.fromM + inset, gap.toM - inset];
  const even =
    gap.below !== null && gap.above !== null ? evenlyBetween(gap.below.longestM, gap.above.shortestM) : undefined;
  const { share } = firstHalfWaveRange;
  const borders = search.bands.flatMap(({ lowMHz, highMHz }) => [
    nthHalfWaveM(1, highMHz, search.wireFactor) * (1 - share) * 0.999,
    nthHalfWaveM(1, lowMHz, search.wireFactor) * (1 + share) * 1.001,
  ]);
  const candidates = [...(even === undefined ? [] : [even]), fromM, toM, ...borders]
    .map((metres) => within(metres, fromM, toM))
    .map((metres) => ({
      metres,
      swr: Math.round(worstSwr(tunerRangeAt(search, metres)) * 2) / 2,
      margin: nearestResonance(list, metres)?.margin ?? 1,
    }))
    .sort((a, b) => a.swr - b.swr || b.margin - a.margin);
  return candidates[0]?.metres ?? fromM;
}

function windowOf(gap: Gap, search: LengthSearch, list: readonly Resonance[], chosenM?: number): ClearWindow {
  const metres = chosenM ?? bestInGap(gap, search, list);
  const part = gap.toM > gap.fromM ? (metres - gap.fromM) / (gap.toM - gap.fromM) : 0;
  return {
    ...gap,
    best: {
      metres,
      working: {
        formula: 'a + part * (b - a)',
        inputs: {
          a: { value: gap.fromM, unit: 'm', from: 'solved' },
          b: { value: gap.toM, unit: 'm', from: 'solved' },
          part: { value: part, unit: '', from: 'solved' },
        },
        result: { value: metres, unit: 'm' },
        source: 'house-practice',
      },
    },
    nearest: nearestResonance(list, metres),
    tunerRange: tunerRangeAt(search, metres),
  };
}

/** Least SWR about the first half-waves first; of equals the one with most clearance, of those the shorter. */
const byMerit = (a: ClearWindow, b: ClearWindow): number =>
  Math.round(2 * worstSwr(a.tunerRange)) - Math.round(2 * worstSwr(b.tunerRange)) ||
  (b.nearest?.margin ?? 1) - (a.nearest?.margin ?? 1) ||
  a.fromM - b.fromM;

/** Every window that is clear, best first. Empty when there is none. */
export function clearWindows(search: LengthSearch): ClearWindow[] {
  const list = resonances(search);
  return gapsBetween(list, search, CLEARANCE)
    .map((gap) => windowOf(gap, search, list))
    .sort(byMerit);
}

/** The best that can be done without a clear window. */
export interface LeastBad {
  readonly window: ClearWindow;
  /** The band that suffers, and from what. */
  readonly suffers: Band;
  readonly reason: 'near-half-wave' | 'too-short';
}

/** Part of the room that a wire shorter than the shortest useful length should still take. */
const LEAST_OF_ROOM = 0.6;
/** Below that there is no room at all, and parts of it are no numbers. */
const LEAST_ROOM_M = 0.001;

/**
 * What to do when no window is clear: the length with most clearance among those allowed, and the band it comes too near to. With less room
 * than the shortest useful length: the longest clear length that fits, and the lowest band suffers.
 */
export function leastBadLength(search: LengthSearch): LeastBad {
  if (search.shortestM >= search.longestM) return shortOfRoom(search);
  const list = resonances(search);
  const { shortestM, longestM } = search;
  const between = gapsBetween(list, search, 0).flatMap(({ below, above }) =>
    below === null || above === null ? [] : [evenlyBetween(below.longestM, above.shortestM)],
  );
  const candidates = [shortestM, longestM, ...between]
    .map((metres) => within(metres, shortestM, longestM))
    .map((metres) => ({ metres, margin: nearestResonance(list, metres)?.margin ?? 1 }))
    .sort((a, b) => b.margin - a.margin || a.metres - b.metres);
  const metres = candidates[0]?.metres ?? longestM;
  const window = windowOf({ fromM: metres, toM: metres, below: null, above: null }, search, list, metres);
  return { window, suffers: window.nearest?.band ?? lowestBand(search), reason: 'near-half-wave' };
}

const lowestBand = ({ bands }: LengthSearch): Band =>
  bands.reduce((low, each) => (each.lowMHz < low.lowMHz ? each : low)).band;

function shortOfRoom(search: LengthSearch): LeastBad {
  const longestM = Math.max(search.longestM, LEAST_ROOM_M);
  const room = { ...search, longestM, shortestM: LEAST_OF_ROOM * longestM };
  const list = resonances(room);
  const longest = gapsBetween(list, room, CLEARANCE).at(-1);
  if (longest === undefined) return { ...leastBadLength(room), suffers: lowestBand(search), reason: 'too-short' };
  const inset = longest.above === null ? 0 : Math.min(INSET * longest.toM, (longest.toM - longest.fromM) / 2);
  const window = windowOf(longest, room, list, longest.toM - inset);
  return { window, suffers: lowestBand(search), reason: 'too-short' };
}
