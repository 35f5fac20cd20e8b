/**
 * Lengths as people read them, from the numbers of base/format-length. Numbers and units are joined by no-break spaces, so that no line
 * break falls inside a unit. Among words written from right to left a length is kept together and runs its own way (Unicode bidirectional
 * algorithm, UAX 9: left-to-right isolate).
 */
import { feetInches, metricParts } from '../base/format-length';
import { decimalText } from './decimal';
import { language } from './en/language';

const narrow = '\u00a0';
const inOrder = (text: string): string => (language.direction === 'rtl' ? `\u2066${text}\u2069` : text);

export function metresText(metres: number): string {
  const { metres: shown, decimals } = metricParts(metres);
  return inOrder(`${decimalText(shown, decimals)}${narrow}m`);
}

export function feetInchesText(metres: number): string {
  const { feet, inches, half } = feetInches(metres);
  const rest = `${inches === 0 && half ? '' : inches}${half ? '½' : ''}${narrow}in`;
  if (feet === 0) return inOrder(rest);
  return inOrder(inches === 0 && !half ? `${feet}${narrow}ft` : `${feet}${narrow}ft${narrow}${rest}`);
}
