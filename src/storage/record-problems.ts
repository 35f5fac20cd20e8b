/** What is wrong with a record that is broken. Apart from reading: a first screen only sets it aside. */
import type * as z from 'zod/mini';
import { type Problem, problemsOf } from '../base/problem';
import { broughtUp, type RecordSteps, versionOf } from './read-record';

/** Every problem of a record that `readRecord` calls broken. */
export function recordProblems<T>(raw: unknown, schema: z.ZodMiniType<T>, steps: RecordSteps): readonly Problem[] {
  const version = versionOf(raw);
  if (version === undefined) return [{ key: 'version', code: 'missing', data: { expected: 'int' } }];
  try {
    return problemsOf(broughtUp(raw, version, steps), (each) => schema.safeParse(each));
  } catch (error) {
    return [{ key: '', code: 'cannot-read', data: { detail: String(error) } }];
  }
}
