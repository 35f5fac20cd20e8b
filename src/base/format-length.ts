/**
 * A length as numbers to show or say, rounded as far as wire can be cut: three significant figures and at finest 1 cm; feet and inches to
 * half an inch under 3 m, else to an inch, twelve inches carried to a foot. Words and signs are added elsewhere.
 */
import { METRES_PER_INCH } from './convert';

export interface MetricParts {
  readonly metres: number;
  /** Figures after the point. */
  readonly decimals: number;
}

export interface FeetInches {
  readonly feet: number;
  readonly inches: number;
  /** Half an inch more. */
  readonly half: boolean;
}

/** Below this, m, half inches are shown. */
const HALF_INCHES_BELOW_M = 3;

const roundTo = (value: number, decimals: number): number => Number(value.toFixed(decimals));

export function metricParts(metres: number): MetricParts {
  const decimals = [2, 1, 0].find((figures) => roundTo(metres, figures) < 10 ** (3 - figures));
  if (decimals !== undefined) return { metres: roundTo(metres, decimals), decimals };
  return { metres: Number(metres.toPrecision(3)), decimals: 0 };
}

export function feetInches(metres: number): FeetInches {
  const steps = metres < HALF_INCHES_BELOW_M ? 2 : 1;
  const halves = (Math.round((metres / METRES_PER_INCH) * steps) * 2) / steps;
  return { feet: Math.floor(halves / 24), inches: Math.floor((halves % 24) / 2), half: halves % 2 === 1 };
}

/** The same numbers for saying aloud: whole metres and centimetres, and feet and inches. */
export interface SpokenLength extends FeetInches {
  readonly metres: number;
  readonly centimetres: number;
}

export function spokenLength(metres: number): SpokenLength {
  const centimetres = Math.round(metricParts(metres).metres * 100);
  return { metres: Math.floor(centimetres / 100), centimetres: centimetres % 100, ...feetInches(metres) };
}
