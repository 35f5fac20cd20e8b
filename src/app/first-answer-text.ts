/** Answers to the first four questions as they read in lists and beside the questions. */
import type { AnswerKey, DraftAnswers } from '../design/answers';
import { firstQuestions, isFirstQuestion, type QuestionWords } from '../words/en/first-questions';
import { language } from '../words/en/language';
import { bandNames } from '../words/en/names';

export const listFormat = new Intl.ListFormat(language.tag, { type: 'conjunction' });

/** "40, 20 and 15 m": the unit once, as people say it. */
export function bandList(bands: readonly string[]): string {
  const names = bands.map((band) => (bandNames as Readonly<Record<string, string>>)[band] ?? band);
  const numbers = names.map((name) => name.replace(/\D+$/, ''));
  const unit = names.at(-1)?.slice(numbers.at(-1)?.length).trim() ?? '';
  return `${listFormat.format(numbers)}\u00a0${unit}`;
}

export function firstAnswerText(key: AnswerKey, draft: DraftAnswers): string | null {
  const value = draft[key];
  if (value === undefined || !isFirstQuestion(key)) return null;
  if (key === 'bands') return bandList(draft.bands ?? []);
  const words: QuestionWords = firstQuestions[key];
  return words.options?.[String(value)] ?? String(value);
}
