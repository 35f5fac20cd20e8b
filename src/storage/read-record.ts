/**
 * A record on its way out of storage or a file: brought up to the newest version, then parsed. Nothing is used unparsed and nothing is
 * dropped: what a newer version wrote is kept for it, what is broken is kept for the operator to take out. What is wrong with it is told
 * by record-problems.ts.
 */
import type * as z from 'zod/mini';

/** Step n turns a record of version n + 1 into one of version n + 2. Append only. */
export type RecordSteps = readonly ((record: Readonly<Record<string, unknown>>) => Record<string, unknown>)[];

export type ReadRecord<T> =
  | { readonly kind: 'good'; readonly record: T }
  | { readonly kind: 'newer'; readonly raw: unknown; readonly version: number }
  | { readonly kind: 'broken'; readonly raw: unknown };

/** `newest` is the version the steps lead to, or would if they were at hand. */
export function readRecord<T>(
  raw: unknown,
  schema: z.ZodMiniType<T>,
  steps: RecordSteps,
  newest = steps.length + 1,
): ReadRecord<T> {
  const version = versionOf(raw);
  if (version === undefined) return { kind: 'broken', raw };
  if (version > newest) return { kind: 'newer', raw, version };
  try {
    const parsed = schema.safeParse(broughtUp(raw, version, steps));
    return parsed.success ? { kind: 'good', record: parsed.data } : { kind: 'broken', raw };
  } catch {
    return { kind: 'broken', raw }; // a step met a shape its version never had
  }
}

/** A record as the newest version has it, not yet parsed. Throws where it has a shape that its version never had. */
export const broughtUp = (raw: unknown, version: number, steps: RecordSteps): Record<string, unknown> =>
  steps.slice(version - 1).reduce((record, step) => step(record), raw as Record<string, unknown>);

export function versionOf(raw: unknown): number | undefined {
  const version = typeof raw === 'object' && raw !== null ? (raw as { version?: unknown }).version : undefined;
  return typeof version === 'number' && Number.isInteger(version) && version >= 1 ? version : undefined;
}
