/**
 * From the finished length to what is cut, where it is marked, and how exactly.
 *
 *   cut = finished · (1 + spare) + ends · fold
 *
 * `spare`, 2.5 %, is for trimming a resonant wire (cut 2 to 3 % long, fold back, measure, trim); `fold`, 0.15 m, is what an end takes through
 * its insulator or terminal and back along itself. Common practice, no source.
 *
 * A piece behind a link has the same share of the whole leg it ends to spare, since that leg's resonance is trimmed on it.
 *
 * A shorter pair of parallel dipoles has 5 % more to spare: its neighbours make it want 2 to 5 % more than a dipole alone. Common practice; our
 * own solutions of three pairs fanned out by a metre ask for 5 to 6 %.
 */
import type { Dimension, WorkingInput } from '../base/working';

/** Of a resonant wire, as part of what is trimmed. */
export const TRIMMING_SPARE = 0.025;
/** Of a wire that neighbours detune. */
export const NEIGHBOURS_SPARE = 0.05;
const FOLD_M = 0.15;

/**
 * resonant: trimmed to a dip; 0.5 % moves it by less than 40 kHz on 40 m. equal: radials that must match each other. loose: places and
 * lengths with nothing sharp about them.
 */
export type Exactness = 'resonant' | 'equal' | 'loose';

const toleranceShare: Readonly<Record<Exactness, number>> = { resonant: 0.005, equal: 0.01, loose: 0.05 };

/** How far off a finished length may be, m; never below the 2 cm that a wire stretches and a knot takes. */
export const toleranceM = (finishedM: number, exactness: Exactness): number =>
  Math.max(0.02, finishedM * toleranceShare[exactness]);

export interface Cutting {
  readonly cut: Dimension;
  /** From the end where cutting starts: where the first fold ends, and where the far one begins. */
  readonly marksM: readonly number[];
  readonly toleranceM: number;
}

/** `ends`: how many ends of the piece are folded back through an insulator or a terminal. */
export function cutting(
  finished: { readonly metres: number; readonly from: WorkingInput['from'] },
  ends: 1 | 2,
  exactness: Exactness,
  moreSpare = 0,
): Cutting {
  const spare = exactness === 'resonant' ? TRIMMING_SPARE + moreSpare : 0;
  const metres = finished.metres * (1 + spare) + ends * FOLD_M;
  const firstFoldM = ends === 2 ? FOLD_M : 0;
  return {
    cut: {
      metres,
      working: {
        formula: 'L * (1 + spare) + ends * fold',
        inputs: {
          L: { value: finished.metres, unit: 'm', from: finished.from },
          spare: { value: spare, unit: '', from: 'assumed' },
          ends: { value: ends, unit: '', from: 'assumed' },
          fold: { value: FOLD_M, unit: 'm', from: 'assumed' },
        },
        result: { value: metres, unit: 'm' },
        source: 'house-practice',
      },
    },
    marksM: [...(ends === 2 ? [firstFoldM] : []), firstFoldM + finished.metres],
    toleranceM: toleranceM(finished.metres, exactness),
  };
}
