/**
 * What a field solution tells of one antenna. All of it optional: what is given replaces the value of the rules, the rest stays.
 * Currents and choke duty are per 100 W accepted at the feed gap, rms.
 */
import type { Band } from '../catalog/bands';
import type { Ohms } from '../design/answers';

export interface BandField {
  readonly feedPoint?: Ohms;
  /** On the outside of the coax at the building entry, mA. */
  readonly entryCurrentMa?: number;
  /** The same relative to the feed current, dB. */
  readonly shieldCurrentDb?: number;
  /** Radiated part of the power accepted. */
  readonly efficiency?: number;
  readonly gainDbi?: number;
  /** Across and in the antenna-end choke as planned. */
  readonly chokeV?: number;
  readonly chokeW?: number;
  /** Least distance from any part of the antenna at which the limits of the rule set are met, m. */
  readonly knowingM?: number;
  readonly publicM?: number;
}

export interface FieldFacts {
  readonly bands: Readonly<Partial<Record<Band, BandField>>>;
}

export const noField: BandField = {};
export const fieldOf = (field: FieldFacts | undefined, band: Band): BandField => field?.bands[band] ?? noField;
