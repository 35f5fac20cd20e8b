/** What every rule of this folder judges from, and how it says what it found. Severity belongs to the id, here in one table. */
import { type Band, bandIds } from '../../catalog/band-ids';
import type { Dimensions } from '../dimensions';
import type { BandFacts, Facts } from '../facts';
import type { FieldFacts } from '../field-facts';
import type { BandFinding, Caution, Data, Exposure, Link, Said, Severity, Warning } from '../finding';

export interface Judged {
  readonly facts: Facts;
  readonly dimensions: Dimensions;
  readonly chain: readonly Link[];
  readonly bands: readonly BandFinding[];
  readonly field?: FieldFacts | undefined;
  readonly cautions?: readonly Caution[] | undefined;
  readonly exposure?: readonly Exposure[] | undefined;
}

export type Rule = (judged: Judged) => readonly Warning[];

export const severities = {
  'no-such-feed-point': 'stop',
  'power-line-too-near': 'stop',
  'outside-band': 'stop',
  'people-too-near': 'warn',
  'power-above-licence': 'warn',
  'power-limit-60m': 'warn',
  'unit-doubt': 'stop',
  'does-not-fit': 'stop',
  'band-not-served': 'warn',
  'wrong-transformer': 'warn',
  'two-in-one-box': 'warn',
  'current-4to1-off-centre': 'warn',
  'no-4to1-on-open-wire': 'warn',
  'open-wire-needs-choke': 'stop',
  'line-does-not-belong': 'stop',
  'wire-near-half-wave': 'warn',
  'tuner-range': 'warn',
  'leg-plus-line-half-wave': 'warn',
  'off-centre-null': 'warn',
  'harmonics-high': 'note',
  'choke-at-voltage-maximum': 'warn',
  'choke-too-small': 'warn',
  'reactive-choke': 'warn',
  'core-heat': 'warn',
  'choke-without-return': 'stop',
  'return-path-needed': 'stop',
  'line-under-wire': 'warn',
  'line-too-short': 'warn',
  'line-shorter-than-counterpoise': 'warn',
  'line-overrated': 'warn',
  'line-loss': 'warn',
  'few-radials': 'warn',
  'radial-symmetry': 'note',
  'low-height': 'warn',
  'end-out-of-reach': 'warn',
  'wires-interact': 'note',
  'open-piece-half-wave': 'warn',
  'links-by-hand': 'note',
  'swr-is-not-proof': 'note',
  'wet-line': 'note',
  indoors: 'warn',
  'static-drain': 'note',
  'thin-wire': 'note',
} as const satisfies Readonly<Record<string, Severity>>;

/** Wordings of an id that say less than it usually does. */
const milder: Readonly<Record<string, Severity>> = { 'national-permission': 'note', 'power-line-ask': 'warn' };

export type WarningId = keyof typeof severities;

/** A way out is a code, or a code with its numbers. It is worded with the warning's own numbers and these. */
export type Way = string | readonly [code: string, data: Data];

/** The most that is allowed, W, is told in two figures, never more than it is. */
const careful = (data: Data): Data =>
  typeof data.mostW === 'number' && data.mostW > 0 ? { ...data, mostW: downToTwoFigures(data.mostW) } : data;

function downToTwoFigures(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  // A value that is short of a step by rounding alone lies on it.
  return Number((Math.floor(value / step + 1e-9) * step).toPrecision(2));
}

const said = (way: Way, data: Data): Said =>
  typeof way === 'string' ? { code: way, data } : { code: way[0], data: careful({ ...data, ...way[1] }) };

/** Bands that the numbers name: one under `band`, or several under `bands`. */
function bandsIn({ band, bands }: Data): readonly Band[] {
  const named = bands ?? band;
  return typeof named === 'string' ? named.split(',').flatMap((id) => bandIds.filter((known) => known === id)) : [];
}

/** The code is the id, or names one of several ways to word it. */
export const warn = (id: WarningId, data: Data, ways: readonly Way[], code: string = id): Warning => ({
  id,
  severity: milder[code] ?? severities[id],
  code,
  data: careful(data),
  bands: bandsIn(data),
  waysOut: ways.map((way) => said(way, careful(data))),
});

/** Each wanted band with what was found of it. */
export const bandPairs = ({ facts, bands }: Judged): readonly (readonly [BandFacts, BandFinding])[] =>
  facts.bands.flatMap((at) => {
    const finding = bands.find(({ band }) => band === at.band);
    return finding === undefined ? [] : [[at, finding] as const];
  });

/** Band ids in one word, for sentences: `20m,10m`. */
export const listed = (bands: readonly string[]): string => bands.join(',');
