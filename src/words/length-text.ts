/**
 * Lengths as people read them, from the numbers of base/format-length. Numbers and units are joined by no-break spaces, so that no line
 * break falls inside a unit.
 */
import { feetInches, metricParts } from '../base/format-length';

const narrow = '\u00a0';

export function metresText(metres: number): string {
  const { metres: shown, decimals } = metricParts(metres);
  return `${shown.toFixed(decimals)}${narrow}m`;
}

export function feetInchesText(metres: number): string {
  const { feet, inches, half } = feetInches(metres);
  const rest = `${inches === 0 && half ? '' : inches}${half ? '½' : ''}${narrow}in`;
  if (feet === 0) return rest;
  return inches === 0 && !half ? `${feet}${narrow}ft` : `${feet}${narrow}ft${narrow}${rest}`;
}
