/** Numbers as people read them in the language of the words, both length units always. Built on base/format-length. */
import { language } from './en/language';
import { feetInchesText, metresText } from './length-text';

export interface Format {
  /** "4.2 m (13 ft 9 in)", or feet first. Never broken inside a unit. */
  length(metres: number): string;
  /** Two or three figures, no unit. */
  number(value: number, figures?: number): string;
}

/** Made once for each count of figures: making one takes longer than a hundred uses of it. */
const numberFormats = new Map<number, Intl.NumberFormat>();

function numberFormat(figures: number): Intl.NumberFormat {
  const known = numberFormats.get(figures);
  if (known !== undefined) return known;
  const made = new Intl.NumberFormat(language.tag, { maximumSignificantDigits: figures });
  numberFormats.set(figures, made);
  return made;
}

export function createFormat(units: 'metric' | 'imperial'): Format {
  const number = (value: number, figures = 3): string => numberFormat(figures).format(value).replace('-', '\u2212');
  return {
    length(metres) {
      const metric = metresText(metres);
      const imperial = feetInchesText(metres);
      return units === 'metric' ? `${metric} (${imperial})` : `${imperial} (${metric})`;
    },
    number,
  };
}
