/** Fits metres into a drawing, the same scale both ways, and chooses the square of its paper. */

export interface Scale {
  readonly pixelsPerM: number;
  /** Side of one square, m. */
  readonly squareM: number;
}

const squaresM = [0.5, 1, 2, 5, 10, 20, 50, 100, 200] as const;
/** Smallest square that can still be counted, px. */
const LEAST_SQUARE_PX = 13;

export function scaleFor(widthM: number, heightM: number, widthPx: number, heightPx: number): Scale {
  const pixelsPerM = Math.min(widthPx / Math.max(widthM, 1), heightPx / Math.max(heightM, 1));
  const squareM = squaresM.find((metres) => metres * pixelsPerM >= LEAST_SQUARE_PX) ?? 500;
  return { pixelsPerM, squareM };
}
