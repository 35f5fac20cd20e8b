/**
 * What is wrong with a record that came from outside, as codes. One problem to a key; every problem is listed, not only the first.
 * words/ turns each into `key: what is wrong; what is allowed`.
 */
export type ProblemCode =
  | 'cannot-read'
  | 'not-json'
  | 'not-an-object'
  | 'unknown-key'
  | 'missing'
  | 'null'
  | 'null-required'
  | 'wrong-type'
  | 'not-one-of'
  | 'too-small'
  | 'too-big'
  | 'bad-format'
  | 'newer-version';

export interface Problem {
  /** `spanM`, `onHand[0].turns`, `[3].wires[2].from`; empty for the whole record. */
  readonly key: string;
  readonly code: ProblemCode;
  readonly data: Readonly<Record<string, number | string | readonly (string | number)[]>>;
}

/** The part of a zod issue that problems are made from; kept structural so that this file needs no schema library. */
export interface SchemaIssue {
  readonly code?: string | undefined;
  readonly path: readonly PropertyKey[];
}

const detail = (issue: SchemaIssue, name: string): unknown => (issue as unknown as Record<string, unknown>)[name];

/** What a schema finds wrong with a record. */
type Parse = (raw: unknown) => { readonly error?: { readonly issues: readonly SchemaIssue[] } | undefined };

/** Every problem of a record that does not parse; none for one that does. */
export function problemsOf(raw: unknown, parse: Parse, prefix = ''): Problem[] {
  const issues = parse(raw).error?.issues ?? [];
  const isNull = ({ path }: SchemaIssue): boolean => path.length > 0 && valueAt(raw, path) === null;
  const left = issues.some(isNull) ? (parse(withoutNulls(raw)).error?.issues ?? []) : [];
  const required = new Set(left.map(({ path }) => keyOf(path)));
  return issues.flatMap((issue) => {
    if (!isNull(issue)) return problemsOfIssue(raw, issue, prefix);
    const code = required.has(keyOf(issue.path)) ? 'null-required' : 'null';
    return [{ key: keyOf(issue.path, prefix), code, data: allowedBy(issue) }];
  });
}

/** A schema does not tell which keys it requires; it complains of them when they are left out. */
const withoutNulls = (raw: unknown): unknown =>
  JSON.parse(JSON.stringify(raw), (_key, value: unknown) => value ?? undefined);

export const keyOf = (path: readonly PropertyKey[], prefix = ''): string =>
  path.reduce<string>((key, step) => {
    if (typeof step === 'number') return `${key}[${step}]`;
    return key === '' ? nameOf(String(step)) : `${key}.${nameOf(String(step))}`;
  }, prefix);

/** An empty name, or one with a line break or the like in it, stands in quotes: each problem is one line. */
const nameOf = (name: string): string => (/^[^\p{C}\p{Zl}\p{Zp}]+$/u.test(name) ? name : JSON.stringify(name));

function problemsOfIssue(raw: unknown, issue: SchemaIssue, prefix: string): Problem[] {
  const key = keyOf(issue.path, prefix);
  const given = valueAt(raw, issue.path);
  if (issue.code === 'unrecognized_keys') {
    return (detail(issue, 'keys') as string[]).map((name) => ({
      key: keyOf([...issue.path, name], prefix),
      code: 'unknown-key',
      data: {},
    }));
  }
  if (given === undefined) return [{ key, code: 'missing', data: allowedBy(issue) }];
  switch (issue.code) {
    case 'invalid_value':
    case 'invalid_union':
      return [{ key, code: 'not-one-of', data: { given: shown(given), ...allowedBy(issue) } }];
    case 'invalid_key':
      return [{ key, code: 'unknown-key', data: {} }];
    case 'too_small':
    case 'too_big':
      return [
        {
          key,
          code: issue.code === 'too_small' ? 'too-small' : 'too-big',
          data: { given: shown(given), ...allowedBy(issue) },
        },
      ];
    case 'invalid_format':
    case 'custom':
      return [{ key, code: 'bad-format', data: { given: shown(given) } }];
    default:
      return [
        {
          key,
          code: issue.path.length === 0 ? 'not-an-object' : 'wrong-type',
          data: { given: shown(given), ...allowedBy(issue) },
        },
      ];
  }
}

function allowedBy(issue: SchemaIssue): Problem['data'] {
  const values = detail(issue, 'values') ?? detail(issue, 'options');
  if (Array.isArray(values)) return { allowed: values as (string | number)[] };
  const limit = detail(issue, 'minimum') ?? detail(issue, 'maximum');
  const of = detail(issue, 'origin');
  if (typeof limit === 'number')
    return {
      limit,
      inclusive: detail(issue, 'inclusive') === false ? 'no' : 'yes',
      of: typeof of === 'string' ? of : 'number',
    };
  const expected = detail(issue, 'expected');
  return typeof expected === 'string' ? { expected } : {};
}

const valueAt = (raw: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    raw,
  );

/** JSON, on one line; a number too large for JSON, as 1e999 is, by its name. */
const shown = (value: unknown): string => {
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};
