/** An answer as it reads in lists and beside the questions. */
import type { AnswerKey, DraftAnswers, PartOnHand } from '../design/answers';
import { coreName, lineName, wireName } from '../words/en/catalog-names';
import { ohms } from '../words/en/fields';
import { language } from '../words/en/language';
import { partNames } from '../words/en/places';
import { optionWords, questions } from '../words/en/questions';
import type { Format } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import { quantityText } from './fields/quantity-text';
import type { QuantityKind } from './fields/reading';
import { bandList, listFormat } from './first-answer-text';

/** What kind of number an answer is; lengths are told by their name's end. */
export function quantityKindOf(key: AnswerKey): QuantityKind | null {
  if (key === 'powerW') return 'power';
  if (key === 'transmitShare' || key === 'feedFraction') return 'share';
  if (key === 'radialCount') return 'count';
  return /M$/.test(key) ? 'length' : null;
}

const focusText = (focus: Readonly<Record<string, number>>, format: Format): string =>
  Object.entries(focus)
    .map(([band, mhz]) => `${bandList([band])}: ${quantityText({ kind: 'frequency', value: mhz }, format)}`)
    .join(', ');

/** Null when there is no answer. */
export function answerText(key: AnswerKey, draft: DraftAnswers, format: Format): string | null {
  const value = draft[key];
  if (value === undefined) return null;
  const kind = quantityKindOf(key);
  if (kind !== null && typeof value === 'number') return quantityText({ kind, value }, format);
  if (key === 'bands') return bandList(draft.bands ?? []);
  if (key === 'focusMHz') return focusText(draft.focusMHz ?? {}, format);
  if (key === 'feedImpedance') {
    const { r, x } = draft.feedImpedance ?? { r: 0, x: 0 };
    return ohms({ r: String(r), x: String(x) });
  }
  if (key === 'onHand') return listFormat.format((draft.onHand ?? []).map((part) => partText(part, format)));
  if (key === 'country') return countryName(String(value));
  return key in questions ? optionWords(key, String(value)) : String(value);
}

export function partText(part: PartOnHand, format: Format): string {
  const message: Message = partNames[part.part];
  const rated =
    'ratingW' in part && part.ratingW !== undefined ? render(partNames.rated, { ratingW: part.ratingW }, format) : '';
  return render(message, worded(part), format) + rated;
}

const idNames: Readonly<Record<string, (id: string) => string>> = { core: coreName, line: lineName, wire: wireName };

/** The part with its ids replaced by names. */
const worded = (part: PartOnHand): Data =>
  Object.fromEntries(
    Object.entries(part).flatMap(([key, value]) =>
      value === undefined ? [] : [[key, idNames[key]?.(String(value)) ?? value] as const],
    ),
  );

export const countryName = (code: string): string =>
  new Intl.DisplayNames([language.tag], { type: 'region', fallback: 'code' }).of(code) ?? code;
