/** A quantity as text: on buttons, in lists, and as it stands in its field. */
import { megahertz, percent, watts } from '../../words/en/fields';
import type { Format } from '../../words/format';
import { feetInchesText, metresText } from '../../words/length-text';
import type { Quantity } from './reading';

const plain = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

export function quantityText({ kind, value }: Quantity, format: Format): string {
  switch (kind) {
    case 'length':
      return format.length(value);
    case 'frequency':
      return megahertz({ value: plain(value, 6) });
    case 'power':
      return watts({ value: plain(value, 4) });
    case 'share':
      return percent({ value: plain(value * 100, 3) });
    case 'count':
      return String(value);
  }
}

/** As a field shows it: one unit for a length, and no sign that nobody types, since it is typed over. */
export function fieldText(quantity: Quantity, units: 'metric' | 'imperial', format: Format): string {
  const length = units === 'metric' ? metresText : feetInchesText;
  const text = quantity.kind === 'length' ? length(quantity.value) : quantityText(quantity, format);
  return text.replaceAll('\u00a0', ' ').replace(/[\u2066\u2069]/g, '');
}
