/** How steep a stretch of wire hangs, for the rules, the drawing and the field solution alike. */

/** Rise over length of the steepest slope that is laid out. */
export const STEEPEST = 0.9;

interface Slope {
  readonly fromM: number;
  readonly lengthM: number;
  readonly wantedM: number;
  /** Rise over length, at most. */
  readonly steepest: number;
}

/** Height of a stretch's far end, m: as wanted, or as near to it as the steepest slope allows. */
export function reachedM({ fromM, lengthM, wantedM, steepest }: Slope): number {
  const mostM = steepest * lengthM;
  return fromM + Math.max(Math.min(wantedM - fromM, mostM), -mostM);
}

/** An end-fed wire goes over a support that stands that much above both its ends, m. */
const OVER_M = 0.5;

interface Heights {
  readonly heightM: number;
  readonly endHeightM: number;
  readonly supportHeightM: number;
}

export const goesOverSupport = ({ heightM, endHeightM, supportHeightM }: Heights): boolean =>
  supportHeightM > Math.max(heightM, endHeightM) + OVER_M;
