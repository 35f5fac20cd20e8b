/** One thing or more, by the rules of the language. English has two forms; a language with more has a file of its own here. */
import { language } from './language';

const rules = new Intl.PluralRules(language.tag);

/** "box", "boxes". */
export const plural = (count: unknown, one: string, more: string): string =>
  rules.select(Number(count)) === 'one' ? one : more;

/** "1 plan", "3 plans". */
export const many = (count: unknown, one: string, more: string): string => `${count} ${plural(count, one, more)}`;
