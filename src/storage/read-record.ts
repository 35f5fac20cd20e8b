/**
 * A record on its way out of storage or a file: brought up to the newest version, then parsed. Nothing is used unparsed and nothing is
 * dropped: what a newer version wrote is kept for it, what is broken is kept for the operator to take out.
 */
import type * as z from 'zod/mini';
import { type Problem, problemsOf } from '../base/problem';

/** Step n turns a record of version n + 1 into one of version n + 2. Append only. */
export type RecordSteps = readonly ((record: Readonly<Record<string, unknown>>) => Record<string, unknown>)[];

export type ReadRecord<T> =
  | { readonly kind: 'good'; readonly record: T }
  | { readonly kind: 'newer'; readonly raw: unknown; readonly version: number }
  | { readonly kind: 'broken'; readonly raw: unknown; readonly problems: readonly Problem[] };

export function readRecord<T>(raw: unknown, schema: z.ZodMiniType<T>, steps: RecordSteps): ReadRecord<T> {
  const newest = steps.length + 1;
  const version = versionOf(raw);
  if (version === undefined) {
    return { kind: 'broken', raw, problems: [{ key: 'version', code: 'missing', data: { expected: 'int' } }] };
  }
  if (version > newest) return { kind: 'newer', raw, version };
  try {
    const current = steps.slice(version - 1).reduce((record, step) => step(record), raw as Record<string, unknown>);
    const parsed = schema.safeParse(current);
    if (parsed.success) return { kind: 'good', record: parsed.data };
    return { kind: 'broken', raw, problems: problemsOf(current, (each) => schema.safeParse(each)) };
  } catch (error) {
    // A step that meets a shape its version never had: the record is as broken as one that does not parse.
    return { kind: 'broken', raw, problems: [{ key: '', code: 'cannot-read', data: { detail: String(error) } }] };
  }
}

function versionOf(raw: unknown): number | undefined {
  const version = typeof raw === 'object' && raw !== null ? (raw as { version?: unknown }).version : undefined;
  return typeof version === 'number' && Number.isInteger(version) && version >= 1 ? version : undefined;
}
