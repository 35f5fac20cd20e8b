/**
 * What drives the antenna-end choke before the antenna itself is solved: from our own field solutions at 100 W accepted, worst of coax runs and
 * house ends, over average ground, wires of 20 and 41 m, choke 5 kΩ resistive (± 25 % in heat).
 *
 *   volts across 5 kΩ, rms       lowest   its 2nd   4th   5th    6th, 7th   8th half-wave
 *   off-centre, choke at 1 m      352      269     212   197      168        212
 *   off-centre, fed below 1/4     463      274     274   274      274        274
 *   end-fed, choke at 0.05 λ      194      186     188   188      194        300       off its multiples 303
 *   non-resonant, two wires       345 on the lowest band, 87 above, 224 near the second quarter-wave; one short wire 612 on the lowest
 *   centre-fed and loops           46      vertical  56 (1 kΩ)
 *   end-fed choke at the box without counterpoise: 660 V, 60 to 90 % of the power
 *
 * The impedance behind it is a fit to the same solutions with 1, 2, 5 and 10 kΩ: 850 Ω off-centre, 300 Ω end-fed, 1 kΩ elsewhere.
 */
import { complex } from '../base/complex';
import type { CommonModeSource } from '../physics/choke';
import { sourceBehind } from '../physics/choke';
import { isEndFed, isUpright } from './chain/choke-minimum';
import type { Dimensions } from './dimensions';
import type { BandFacts, Facts } from './facts';
import { halfWaves } from './feed-impedance';
import { entryMa, type FigureBand, figureBand, scaledMa } from './field-figures';

const SOLVED_AT_W = 100;
const SOLVED_OHM = 5000;
const OFF_CENTRE_V: readonly number[] = [352, 269, 269, 212, 197, 168, 168, 212];
const NEAR_END_V: readonly number[] = [463, 274];
const END_FED_V: readonly number[] = [194, 186, 188, 188, 188, 194, 194, 300];
const OFF_MULTIPLE_V = 303;
const BOX_ALONE_V = 660;
const TWO_WIRES_LOWEST_V = 345;
const ONE_WIRE_LOWEST_V = 612;
const TWO_WIRES_V = 87;
const SECOND_QUARTER_V = 224;
const CENTRE_V = 46;
const UPRIGHT_V = 56;

const pick = (table: readonly number[], n: number): number => table[Math.min(n, table.length) - 1] ?? 0;

/** A wire this far from a whole number of half-waves is off its multiples. */
const OFF_MULTIPLE = 0.2;

/** Volts rms across 5 kΩ at the plan's antenna-end choke, per 100 W at the antenna. */
export function chokeVolts(facts: Facts, dimensions: Dimensions, at: BandFacts): number {
  const size = halfWaves(facts, at, dimensions.radiator.metres, 2);
  const n = Math.max(1, Math.round(size));
  if (facts.system === 'off-centre-fed') {
    return pick(facts.settled.feedFraction < 0.25 ? NEAR_END_V : OFF_CENTRE_V, n);
  }
  if (isEndFed(facts.system)) return endFedVolts(facts, dimensions, at, size, n);
  return isUpright(facts.system) ? UPRIGHT_V : CENTRE_V;
}

function endFedVolts(facts: Facts, dimensions: Dimensions, at: BandFacts, size: number, n: number): number {
  const wires = dimensions.pieces.filter(({ piece }) => piece === 'counterpoise');
  const atBox = dimensions.chokeAt !== null && dimensions.chokeAt.metres < 0.02 * facts.bands[0].wavelengthM;
  if (atBox && wires.length === 0) return BOX_ALONE_V;
  if (facts.system === 'end-fed-half-wave')
    return Math.abs(size - n) > OFF_MULTIPLE ? OFF_MULTIPLE_V : pick(END_FED_V, n);
  const isLowest = at.band === facts.bands[0].band;
  const longest = Math.max(0, ...wires.map(({ length }) => length.metres));
  if (isLowest) return longest < 0.08 * at.wavelengthM ? ONE_WIRE_LOWEST_V : TWO_WIRES_LOWEST_V;
  return size > 1.3 && size < 1.7 ? SECOND_QUARTER_V : TWO_WIRES_V;
}

const behind = (facts: Facts): number =>
  facts.system === 'off-centre-fed' ? 850 : isEndFed(facts.system) ? 300 : 1000;

/** Ohms behind the entry choke, as above for feed points that stand at no high voltage. */
const ENTRY_BEHIND_OHM = 1000;

/**
 * What drives the entry choke before the antenna is solved: the worst current of our own field solutions through 5 kΩ there, with the antenna-end
 * choke in place. Known to 3 dB, so heat within a factor of two. Null where no such antenna was solved.
 */
export function entryChokeSource(facts: Facts, { band }: BandFacts, powerW: number): CommonModeSource | null {
  const ma = bothChokesMa(facts)?.[figureBand(band)];
  if (ma === undefined) return null;
  const volts = (scaledMa(ma, powerW) / 1000) * SOLVED_OHM;
  return sourceBehind(volts, complex(SOLVED_OHM), complex(ENTRY_BEHIND_OHM));
}

function bothChokesMa({ system, balanced, settled }: Facts): Readonly<Record<FigureBand, number>> | null {
  if (system === 'open-wire-doublet' || (system === 'other' && !balanced)) return null;
  if (system === 'off-centre-fed') return entryMa.offCentre.both;
  if (isEndFed(system)) return system === 'end-fed-half-wave' ? entryMa.endFed.both : entryMa.nonResonant.both;
  if (isUpright(system)) return entryMa.upright.both;
  return settled.feedLineRoute === 'along' ? entryMa.dipoleAlong.both : entryMa.dipoleSquare.both;
}

/** The source at `powerW`, behind whatever choke stands there. `solved`: at 100 W, when a field solution knows it. */
export function chokeSource(
  facts: Facts,
  dimensions: Dimensions,
  at: BandFacts,
  powerW: number,
  solved: CommonModeSource | undefined,
): CommonModeSource {
  const scale = Math.sqrt(powerW / SOLVED_AT_W);
  if (solved !== undefined) return { openV: solved.openV * scale, impedance: solved.impedance };
  const volts = chokeVolts(facts, dimensions, at) * scale;
  return sourceBehind(volts, complex(SOLVED_OHM), complex(behind(facts)));
}
