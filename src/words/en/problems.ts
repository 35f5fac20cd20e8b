/** `key: what is wrong; what is allowed`, for records that came from outside. */
import type { Problem } from '../../base/problem';

const kinds: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
};

const list = (values: unknown): string => (Array.isArray(values) ? values.join(', ') : '');

function allowed({ data }: Problem): string {
  if (Array.isArray(data.allowed)) return `allowed: ${list(data.allowed)}`;
  if (typeof data.expected === 'string') return `allowed: ${kinds[data.expected] ?? data.expected}`;
  return 'see the schema for what is allowed';
}

/** What a limit counts: one, several. */
const counted: Readonly<Record<string, readonly [string, string]>> = {
  string: [' character', ' characters'],
  array: [' entry', ' entries'],
};

function limitOf({ code, data }: Problem): string {
  const bound = code === 'too-small' ? 'least' : 'most';
  const many = counted[String(data.of)]?.[data.limit === 1 ? 0 : 1] ?? '';
  if (data.inclusive === 'no') return `allowed: ${code === 'too-small' ? 'above' : 'below'} ${data.limit}${many}`;
  return `allowed: at ${bound} ${data.limit}${many}`;
}

const said: Record<Problem['code'], (problem: Problem) => string> = {
  'cannot-read': ({ data }) =>
    `cannot be read (${data.detail}); a file that exists, or - for standard input, is allowed`,
  'not-json': ({ data }) => `is not JSON (${data.detail}); a JSON object is allowed`,
  'not-an-object': ({ data }) => `is ${data.given}; a JSON object is allowed`,
  'unknown-key': () => 'is not a key of this record; remove it or correct its name, the schema lists all keys',
  missing: (problem) => `is missing; it is required, ${allowed(problem)}`,
  'null-required': (problem) => `is null; it is required, ${allowed(problem)}`,
  null: (problem) => `is null; leave the key out for "not sure", ${allowed(problem)}`,
  'wrong-type': (problem) => `is ${problem.data.given}; ${allowed(problem)}`,
  'not-one-of': (problem) => `is ${problem.data.given}; ${allowed(problem)}`,
  'too-small': (problem) => `is ${problem.data.given}, too small; ${limitOf(problem)}`,
  'too-big': (problem) => `is ${problem.data.given}, too big; ${limitOf(problem)}`,
  'bad-format': ({ data }) => `is ${data.given}; a country is two capital letters, as in DE or US`,
  'newer-version': ({ data }) =>
    `is ${data.given}, made by a newer version; allowed: 1 to ${data.newest}, update this one to read it`,
};

/** Lists of more entries than this are told in short on a screen. */
const LONG_LIST = 12;
/** So many of a long list are named. */
const NAMED = 3;

/** One line for each problem. The whole record is called by the given name. */
export const problemLine = (problem: Problem, wholeRecord: string): string =>
  `${problem.key === '' ? wholeRecord : problem.key}: ${said[problem.code](problem)}`;

/** The same for a screen: of a long list its count and the first few, since nobody reads thirty ids there. */
export function shortProblemLine(problem: Problem, wholeRecord: string): string {
  const { allowed } = problem.data;
  if (typeof allowed !== 'object' || allowed.length <= LONG_LIST) return problemLine(problem, wholeRecord);
  const short = `one of ${allowed.length} known names, such as ${allowed.slice(0, NAMED).join(', ')}`;
  return problemLine({ ...problem, data: { ...problem.data, allowed: [short] } }, wholeRecord);
}
