/**
 * Which wanted bands a wire serves as half-wave multiples. Each higher resonance falls a little above the exact multiple of the lowest, so
 * one wire for several bands is a compromise (physics/lengths). Limits: ± 3 %, by height and ground, until a field solution tells the dips.
 */
import type { System } from '../design/choices';
import { nthHalfWaveM, nthResonanceMHz } from '../physics/lengths';
import type { Dimensions, Harmonic } from './dimensions';
import type { BandFacts, Facts } from './facts';
import type { SolvedLengths } from './field-facts';

const onMultiples: readonly System[] = ['end-fed-half-wave', 'off-centre-fed'];

/** One wire cut for several bands at once: the multiples of its half-wave. */
export const servesMultiples = ({ system }: Facts): boolean => onMultiples.includes(system);

/** A band counts as a multiple when the length it asks for lies this near the lowest band's; the ends alone make it up to 5 % longer. */
const SHORTEST = 0.97;
const LONGEST = 1.1;
/** Part of the greatest current below which a feed point stands too near a current minimum to serve the band. */
const NEAR_NULL = 0.3;

export interface Multiple {
  readonly at: BandFacts;
  readonly n: number;
}

/** Lowest band first. */
export const multiplesOf = (facts: Facts): readonly Multiple[] =>
  fittingMultiples(facts).filter(({ n }) => !isFeedNull(facts, n));

/** Those whose length fits, wherever the wire is fed. */
export function fittingMultiples(facts: Facts): readonly Multiple[] {
  const [lowest] = facts.bands;
  const kw = facts.wire.velocityFactor.value;
  const baseM = nthHalfWaveM(1, lowest.focusMHz, kw);
  return facts.bands
    .map((at) => ({ at, n: Math.max(1, Math.round((0.95 * at.focusMHz) / lowest.focusMHz + 0.05)) }))
    .filter(({ at, n }) => {
      const part = nthHalfWaveM(n, at.focusMHz, kw) / baseM;
      return part >= SHORTEST && part <= LONGEST;
    });
}

/** An off-centre feed point near a current minimum of the n-th multiple. */
const isFeedNull = (facts: Facts, n: number): boolean =>
  n > 1 &&
  facts.system === 'off-centre-fed' &&
  Math.abs(Math.sin(n * Math.PI * facts.settled.feedFraction)) < NEAR_NULL;

/** `dipsMHz`: where a field solution saw the dips of this very length. */
export function harmonicsOf(facts: Facts, radiatorM: number, dipsMHz: SolvedLengths['dipsMHz'] = {}): Harmonic[] {
  if (!servesMultiples(facts)) return [];
  return multiplesOf(facts).map(({ at, n }) => {
    const resonanceMHz = dipsMHz[at.band] ?? nthResonanceMHz(n, radiatorM, facts.wire.velocityFactor.value);
    return { band: at.band, n, resonanceMHz, offset: resonanceMHz / at.focusMHz - 1 };
  });
}

/** Where the dip of the lowest band is meant to fall, MHz: at its focus, or where a wire that serves several bands puts it. */
export const aimedDipMHz = ({ bands: [lowest] }: Facts, { harmonics }: Pick<Dimensions, 'harmonics'>): number =>
  harmonics.find(({ band }) => band === lowest.band)?.resonanceMHz ?? lowest.focusMHz;
