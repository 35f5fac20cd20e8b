/** Numbers as people read them, both length units always. Built on base/format-length; the author of the screens' words owns more of it. */
import { feetInchesText, metresText } from './length-text';

export interface Format {
  /** "4.2 m (13 ft 9 in)", or feet first. Never broken inside a unit. */
  length(metres: number): string;
  /** Two or three figures, no unit. */
  number(value: number, figures?: number): string;
}

export function createFormat(units: 'metric' | 'imperial'): Format {
  const number = (value: number, figures = 3): string =>
    new Intl.NumberFormat('en', { maximumSignificantDigits: figures }).format(value);
  return {
    length(metres) {
      const metric = metresText(metres);
      const imperial = feetInchesText(metres);
      return units === 'metric' ? `${metric} (${imperial})` : `${imperial} (${metric})`;
    },
    number,
  };
}
