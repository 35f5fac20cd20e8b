/** A number with so many figures after the point, written as the language writes it: its figures, its point or comma, no groups. */
import { language } from './en/language';

/** Made once for each count of figures: making one takes longer than a hundred uses of it. */
const formats = new Map<number, Intl.NumberFormat>();

export function decimalText(value: number, decimals: number): string {
  const format =
    formats.get(decimals) ??
    new Intl.NumberFormat(language.tag, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
  formats.set(decimals, format);
  return format.format(value);
}
