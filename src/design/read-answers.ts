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
  const problems = problemsOf(raw, issuesOf, prefix);
  return parsed.success && problems.length === 0 ? { answers: parsed.data } : { problems };
}

const feedPointLacks = { code: 'invalid_value', path: ['fedAt'], values: feedPositionIds };

/** The schema's issues, and that a radiator asks for the place where it is fed. */
function issuesOf(raw: unknown) {
  const issues = Answers.safeParse(raw).error?.issues ?? [];
  const needsFeedPoint = has(raw, 'radiator') && !has(raw, 'fedAt');
  return { error: { issues: needsFeedPoint ? [...issues, feedPointLacks] : issues } };
}

const has = (raw: unknown, key: string): boolean => typeof raw === 'object' && raw !== null && key in raw;

function versionOf(raw: unknown): number {
  const version = has(raw, 'schema') ? (raw as { schema: unknown }).schema : answersVersion;
  return typeof version === 'number' && Number.isInteger(version) ? version : answersVersion;
}
