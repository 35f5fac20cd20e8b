import type { SourceId } from './sources';

/**
 * How a number came into the catalogue: read in the source (`found`), recalled from it (`memory`), worked out from other entries
 * (`derived`), or used everywhere without one source (`common practice`).
 */
export const provenances = ['found', 'memory', 'derived', 'common practice'] as const;
export type Provenance = (typeof provenances)[number];

/** A number and where it is from. Doubts and conditions stand as comments beside the entry, so that phones need not carry them. */
export interface Sourced<T = number> {
  readonly value: T;
  readonly source: SourceId;
  readonly provenance: Provenance;
}

const as =
  (provenance: Provenance) =>
  <T>(value: T, source: SourceId): Sourced<T> => ({ value, source, provenance });

export const found = as('found');
export const recalled = as('memory');
export const derived = as('derived');
export const practice = as('common practice');
