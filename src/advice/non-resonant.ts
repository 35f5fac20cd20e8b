/** Lengths clear of every half-wave of every wanted band. */
import {
  type ClearWindow,
  clearWindows,
  type LengthSearch,
  leastBadLength,
  wireSearch,
} from '../physics/non-resonant-length';
import type { LengthWindow } from './dimensions';
import type { Facts } from './facts';
import type { RadiatorLength } from './radiator-length';

/** Upright wire when nobody told how high it can go: 13.5 m, or 0.28 λ of the lowest band if that is more. Common practice. */
const USUAL_VERTICAL_M = 13.5;
const VERTICAL_WAVES = 0.28;

export function clearLength(facts: Facts): RadiatorLength {
  const search = searchOf(facts);
  const windows = clearWindows(search);
  const [best] = windows;
  if (best !== undefined) return { radiator: best.best, windows: windows.map(asLengthWindow), sufferingBand: null };
  const { window, suffers } = leastBadLength(search);
  return { radiator: window.best, windows: [], sufferingBand: suffers };
}

/** The search the radiator's length comes from; also what a told length is judged by. */
export function searchOf(facts: Facts): LengthSearch {
  const bands = facts.bands.map(({ band, edgesMHz }) => ({ band, ...edgesMHz }));
  return wireSearch(bands, facts.wire.velocityFactor.value, roomOf(facts));
}

function roomOf({ settled, answers, bands }: Facts): number | undefined {
  if (settled.radiator !== 'vertical') return settled.spanM ?? undefined;
  const { supportHeightM } = answers;
  if (supportHeightM !== undefined && supportHeightM > settled.heightM) return supportHeightM - settled.heightM;
  return Math.max(USUAL_VERTICAL_M, VERTICAL_WAVES * bands[0].wavelengthM);
}

const asLengthWindow = (window: ClearWindow): LengthWindow => ({
  fromM: window.fromM,
  toM: window.toM,
  bestM: window.best.metres,
  tunerRangeBands: window.tunerRange.map(({ band }) => band),
});
