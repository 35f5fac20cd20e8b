/** Lengths and distances of one antenna, from closed forms; a field solution may replace any of them. The author fills this file. */
import type { Dimension } from '../base/working';
import type { Band } from '../catalog/bands';

export type PieceId =
  | 'wire' // one whole wire (end-fed, loop, non-resonant, inverted-L)
  | 'leg' // one of two equal legs
  | 'short-leg'
  | 'long-leg'
  | 'vertical'
  | 'radial'
  | 'counterpoise'
  | 'folded-conductor'
  | 'matching-section'; // quarter-wave of 75 Ω line

export interface Piece {
  readonly piece: PieceId;
  /** The band a piece belongs to, for parallel dipoles. */
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

export interface Dimensions {
  /** Conductor length of the longest radiator, m: both legs, once round a loop, one wire of a folded dipole. */
  readonly radiator: Dimension;
  /** Straight run it asks of the site, m. */
  readonly runM: number;
  readonly pieces: readonly Piece[];
  readonly windows: readonly LengthWindow[];
  /** Band that suffers when no window exists. */
  readonly sufferingBand: Band | null;
  /** Antenna-end choke along the coax from the feed point; null where none belongs. */
  readonly chokeAt: Dimension | null;
  /** Choke before the building entry or the operating place, along the coax from the feed point. */
  readonly entryChokeAt: Dimension | null;
}
