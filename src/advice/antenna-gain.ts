/**
 * Greatest gain to reckon with where the pattern is not computed, dBi in free space. A bound for exposure and for power limits, not a promise:
 * it must not come out too low. Half-wave 2.15; longer wires gain at most 2.3 dB for each doubling, 6 dBi at the end (long-wire tables and two
 * half-waves in phase, from memory); a loop 3.5; an upright quarter-wave as a half-wave, its image is in the ground factor.
 */
import type { Dimensions } from './dimensions';
import type { BandFacts, Facts } from './facts';

const HALF_WAVE_DBI = 2.15;
const PER_DOUBLING_DB = 2.3;
const LONGEST_DBI = 6;
const LOOP_DBI = 3.5;

export function mostGainDbi(facts: Facts, dimensions: Dimensions, at: BandFacts): number {
  if (facts.system === 'other') return LONGEST_DBI;
  const halfWaves = (2 * dimensions.radiator.metres) / at.wavelengthM;
  if (facts.system === 'full-wave-loop') return Math.max(LOOP_DBI, longWireDbi(halfWaves / 2));
  return longWireDbi(halfWaves);
}

const longWireDbi = (halfWaves: number): number =>
  Math.min(LONGEST_DBI, HALF_WAVE_DBI + PER_DOUBLING_DB * Math.log2(Math.max(1, halfWaves)));
