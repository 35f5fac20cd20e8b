/** "1 plan", "3 plans". English has two forms; a language with more has a file of its own here. */
const rules = new Intl.PluralRules('en');

export const many = (count: unknown, one: string, more: string): string =>
  `${count} ${rules.select(Number(count)) === 'one' ? one : more}`;
