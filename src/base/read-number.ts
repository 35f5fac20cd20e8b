/**
 * Numbers as people type them: decimal point or comma, thousands set apart by a space or by the other separator, common fractions
 * (`66 1/2`, `66½`). One comma before exactly three figures can mean either, so it gives two candidates instead of a guess.
 */
export type NumberProblem = 'not-a-number' | 'two-commas';
export type ReadNumber =
  | { readonly value: number }
  | { readonly candidates: readonly [decimal: number, thousands: number] }
  | { readonly problem: NumberProblem };

const fractionSigns: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Plain spelling of the signs that keyboards and word processors put in: fractions, minus, spaces, primes and quotes. */
export const plainSigns = (text: string): string =>
  text
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${fractionSigns[sign]} `)
    .replace(/⁄/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/[′’‘´`]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();

const plain = /^\d+(?:[.,]\d*)?$|^[.,]\d+$/;
const thousandsThenDecimal = /^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:\.\d{3})+,\d+$/;
const eitherMeaning = /^[1-9]\d{0,2},\d{3}$/;
const spacedThousands = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/;
const fraction = /^(?:(\d+) )?(\d+) ?\/ ?(\d+)$/;

const finite = (value: number): ReadNumber => (Number.isFinite(value) ? { value } : { problem: 'not-a-number' });

/** Reads one number without sign or unit; `text` has been through plainSigns. */
export function readNumber(text: string): ReadNumber {
  const parts = fraction.exec(text);
  if (parts !== null) return finite(Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]));
  if (eitherMeaning.test(text)) return { candidates: [Number(text.replace(',', '.')), Number(text.replace(',', ''))] };
  if (plain.test(text)) return finite(Number(text.replace(',', '.')));
  if (spacedThousands.test(text)) return finite(Number(text.replaceAll(' ', '').replace(',', '.')));
  if (thousandsThenDecimal.test(text)) {
    const decimal = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
    return finite(Number(`${text.slice(0, decimal).replace(/[.,]/g, '')}.${text.slice(decimal + 1)}`));
  }
  return { problem: (text.match(/[.,]/g) ?? []).length > 1 && /^[\d., ]+$/.test(text) ? 'two-commas' : 'not-a-number' };
}
