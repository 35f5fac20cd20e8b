/**
 * Lengths and distances of one antenna, from closed forms; a field solution may replace any of them. What a length is made of stands in
 * radiator-length, pieces, return-wires, choke-distance and site-run.
 */
import type { Dimension } from '../base/working';
import type { Band } from '../catalog/band-ids';
import { chokeAtOf, entryChokeAtOf } from './choke-distance';
import { dimension, metresOf } from './dimension';
import { clearLineOf } from './doublet';
import type { Facts } from './facts';
import type { ChosenChoke, FieldFacts } from './field-facts';
import { harmonicsOf } from './harmonics';
import { freeRidesOf, piecesOf } from './pieces';
import { radiatorLengthOf } from './radiator-length';
import { riseOf, runOf } from './site-run';
import { knowing } from './solved-facts';

export type PieceId =
  | 'wire' // one whole wire (end-fed, loop, non-resonant, inverted-L)
  | 'leg' // one of two equal legs
  | 'leg-piece' // what a band adds to each leg of a linked wire
  | 'short-leg'
  | 'long-leg'
  | 'vertical'
  | 'radial'
  | 'counterpoise'
  | 'folded-conductor'
  | 'matching-section'; // quarter-wave of 75 Ω line

export interface Piece {
  readonly piece: PieceId;
  /** The band a piece belongs to, for parallel dipoles and wires with links. */
  readonly band: Band | null;
  readonly count: number;
  readonly length: Dimension;
}

/** A stretch of lengths that stay clear of every half-wave multiple, for non-resonant wires. */
export interface LengthWindow {
  readonly fromM: number;
  readonly toM: number;
  readonly bestM: number;
  readonly tunerRangeBands: readonly Band[];
}

/** A wanted band that the wire serves as a half-wave multiple, and where it really resonates. */
export interface Harmonic {
  readonly band: Band;
  readonly n: number;
  readonly resonanceMHz: number;
  /** (resonance − focus) / focus. */
  readonly offset: number;
}

/** A band that a longer pair of legs serves on its third resonance, so that it needs no legs of its own. */
export interface FreeRide {
  readonly band: Band;
  readonly on: Band;
  readonly resonanceMHz: number;
}

export interface Dimensions {
  /** Conductor length of the longest radiator, m: both legs, once round a loop, one wire of a folded dipole. */
  readonly radiator: Dimension;
  /** Straight run it asks of the site, m: 0 for an upright wire. */
  readonly runM: number;
  /** Height the radiator itself takes up, from its lowest to its highest point, m. */
  readonly riseM: number;
  readonly pieces: readonly Piece[];
  readonly windows: readonly LengthWindow[];
  /** Band that suffers when no window exists. */
  readonly sufferingBand: Band | null;
  /** Shorter arm as part of the whole; 0.5 wherever the wire is not fed off its centre. */
  readonly feedFraction: number;
  /** Wanted bands on half-wave multiples of an end-fed or off-centre-fed wire, lowest first; empty for other systems. */
  readonly harmonics: readonly Harmonic[];
  /** Parallel dipoles only. */
  readonly freeRides: readonly FreeRide[];
  /** Antenna-end choke along the coax from the feed point; null where none belongs. */
  readonly chokeAt: Dimension | null;
  /** Choke before the building entry or the operating place, along the coax from the feed point. */
  readonly entryChokeAt: Dimension | null;
  /**
   * Open-wire line only: the length, as told or a little longer, that keeps one leg plus line away from half-wave multiples. Null when the
   * told length already does, or no length near it does better.
   */
  readonly clearLine: Dimension | null;
  /** Places and ohms that a field solution chose in place of the usual ones; empty while the usual ones hold. */
  readonly chosenChokes: readonly ChosenChoke[];
}

/** Lengths and choke places that a field solution knows better than the rules. */
export type SolvedDimensions = Pick<FieldFacts, 'lengths' | 'chokes'>;

export function dimensionsOf(asked: Facts, { lengths, chokes }: SolvedDimensions = {}): Dimensions {
  const facts = knowing(asked, lengths);
  const { radiator, windows, sufferingBand } = radiatorLengthOf(facts, lengths);
  const chosenChokes = chokes === undefined || chokes.chosen === chokes.house ? [] : chokes.chosen.chokes;
  const chokeAt = chosenChokeAt(chosenChokes) ?? chokeAtOf(facts);
  return {
    radiator,
    runM: runOf(facts, radiator.metres),
    riseM: riseOf(facts, radiator.metres),
    pieces: piecesOf(facts, radiator, lengths),
    windows,
    sufferingBand,
    feedFraction: facts.settled.fedAt === 'off-centre' ? facts.settled.feedFraction : 0.5,
    harmonics: harmonicsOf(facts, radiator.metres, lengths?.dipsMHz),
    freeRides: freeRidesOf(facts, lengths),
    chokeAt,
    entryChokeAt: entryChokeAtOf(facts, chokeAt),
    clearLine: clearLineOf(facts, radiator.metres),
    chosenChokes,
  };
}

function chosenChokeAt(chosen: readonly ChosenChoke[]): Dimension | null {
  const metres = chosen.find(({ role }) => role === 'antenna')?.distanceM;
  if (metres === undefined) return null;
  return dimension(metres, 'chosen', { chosen: metresOf(metres, 'solved') }, 'this-antenna-solved');
}
