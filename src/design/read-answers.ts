/** Reads an answers record that came from outside (a file, a link, storage, a script) or says everything that is wrong with it. */
import { type Problem, problemsOf } from '../base/problem';
import { Answers, answersVersion } from './answers';
import { feedPositionIds } from './choices';

export type ReadAnswers = { readonly answers: Answers } | { readonly problems: readonly Problem[] };

export function readAnswers(raw: unknown, prefix = ''): ReadAnswers {
  const newer = versionOf(raw) > answersVersion;
  if (newer) {
    const data = { given: versionOf(raw), newest: answersVersion };
    return { problems: [{ key: prefix === '' ? 'schema' : `${prefix}.schema`, code: 'newer-version', data }] };
  }
  const parsed = Answers.safeParse(raw);
  const problems = parsed.success ? [] : problemsOf(raw, parsed.error.issues, prefix);
  const needsFeedPoint = has(raw, 'radiator') && !has(raw, 'fedAt');
  if (needsFeedPoint)
    problems.push({
      key: prefix === '' ? 'fedAt' : `${prefix}.fedAt`,
      code: 'missing',
      data: { allowed: feedPositionIds },
    });
  return parsed.success && problems.length === 0 ? { answers: parsed.data } : { problems };
}

const has = (raw: unknown, key: string): boolean => typeof raw === 'object' && raw !== null && key in raw;

function versionOf(raw: unknown): number {
  const version = has(raw, 'schema') ? (raw as { schema: unknown }).schema : answersVersion;
  return typeof version === 'number' && Number.isInteger(version) ? version : answersVersion;
}
