/**
 * A plan's answers as text short enough for a QR code: `b40m.20m~rinverted-v~fcentre~sradio~h8~~k3f9`.
 * One field for each answer, opened by its letter; a check at the end, because a link cut short in a message would otherwise be read as
 * another antenna. Letters are kept in links that people hold: never changed, never reused.
 */
import type { Problem } from '../base/problem';
import { type AnswerKey, type Answers, answersVersion } from '../design/answers';
import { readAnswers } from '../design/read-answers';

type Form = 'text' | 'number' | 'flag' | 'list' | 'json';

const fields: Readonly<Record<Exclude<AnswerKey, 'schema'>, readonly [letter: string, form: Form]>> = {
  bands: ['b', 'list'],
  radiator: ['r', 'text'],
  fedAt: ['f', 'text'],
  shackEnd: ['s', 'text'],
  name: ['n', 'text'],
  units: ['u', 'text'],
  region: ['A', 'number'],
  country: ['C', 'text'],
  ruleSet: ['R', 'text'],
  station: ['S', 'text'],
  indoors: ['I', 'flag'],
  focusMHz: ['F', 'json'],
  powerW: ['p', 'number'],
  mode: ['m', 'text'],
  transmitShare: ['t', 'number'],
  feedFraction: ['x', 'number'],
  lengthChoice: ['c', 'text'],
  wireLengthM: ['l', 'number'],
  loopShape: ['q', 'text'],
  loopPlane: ['Q', 'text'],
  feedImpedance: ['Z', 'json'],
  balanced: ['B', 'flag'],
  spanM: ['w', 'number'],
  heightM: ['h', 'number'],
  endHeightM: ['e', 'number'],
  supportHeightM: ['H', 'number'],
  wire: ['W', 'text'],
  ground: ['g', 'text'],
  returnPath: ['P', 'text'],
  radialCount: ['d', 'number'],
  radialLengthM: ['D', 'number'],
  counterpoiseM: ['k', 'number'],
  feedLine: ['L', 'text'],
  feedLineLengthM: ['y', 'number'],
  feedLineRoute: ['o', 'text'],
  runHeightM: ['j', 'number'],
  entryDistanceM: ['E', 'number'],
  houseEarth: ['G', 'text'],
  onHand: ['O', 'json'],
  rfInShack: ['X', 'flag'],
  nearestPersonM: ['N', 'number'],
  nearestPowerLineM: ['K', 'number'],
};
const entries = Object.entries(fields) as [Exclude<AnswerKey, 'schema'>, readonly [string, Form]][];

export type LinkRefusal = { readonly cut: true } | { readonly problems: readonly Problem[] };

export function linkText(answers: Answers): string {
  const written = entries
    .filter(([key]) => answers[key] !== undefined)
    .map(([key, [letter, form]]) => letter + encoded(answers[key], form));
  const body = [`v${answersVersion}`, ...written].join('~');
  return `${body}~~${checkOf(body)}`;
}

export function readLink(text: string): Answers | LinkRefusal {
  const [body = '', check, ...more] = text.split('~~');
  if (more.length > 0 || check !== checkOf(body)) return { cut: true };
  const [version = '', ...parts] = body.split('~');
  const raw = rawOf(parts);
  if (raw === undefined) return { cut: true };
  const read = readAnswers({ schema: Number(version.slice(1)), ...raw });
  return 'answers' in read ? read.answers : { problems: read.problems };
}

function rawOf(parts: readonly string[]): Record<string, unknown> | undefined {
  const raw: Record<string, unknown> = {};
  try {
    for (const part of parts) {
      const entry = entries.find(([, [letter]]) => letter === part[0]);
      // A letter of a newer version becomes an unknown key, which is then said.
      if (entry === undefined) raw[part] = true;
      else raw[entry[0]] = decoded(part.slice(1), entry[1][1]);
    }
    return raw;
  } catch {
    return undefined; // percent signs or JSON that nobody of ours wrote
  }
}

const encoded = (value: unknown, form: Form): string => {
  if (form === 'list') return (value as readonly string[]).join('.');
  if (form === 'flag') return value === true ? '1' : '0';
  return escaped(form === 'json' ? JSON.stringify(value) : String(value));
};

function decoded(text: string, form: Form): unknown {
  switch (form) {
    case 'list':
      return text.split('.');
    case 'flag':
      return text === '1';
    case 'number':
      return Number(text);
    case 'text':
      return unescaped(text);
    case 'json':
      return JSON.parse(unescaped(text));
  }
}

/** Only letters, figures, point, minus and underscore stay; the rest is written by the standard's percent signs, `~` too. */
const escaped = (text: string): string => encodeURIComponent(text).replace(/[~!*'()]/g, percent);
const percent = (sign: string): string => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`;
const unescaped = (text: string): string => decodeURIComponent(text);

/** Fowler, Noll and Vo's 32-bit hash (FNV-1a) in base 36: finds cuts and slips, guards against nobody. */
function checkOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash.toString(36);
}
