import { InputError } from '../base/input-error';
import type { Mix } from './core-ids';
import { permeabilityTables } from './ferrite-tables';
import { found, recalled, type Sourced } from './sourced';

/** What the mixes are made of and where they stop. Permeability against frequency stands in ferrite-tables. */
export interface Ferrite {
  readonly mix: Mix;
  /** MnZn conducts and resonates in large rings above 1 to 5 MHz: there a ring can depart from its curve by more than the tolerance. */
  readonly composition: Sourced<'MnZn' | 'NiZn'>;
  readonly muInitial: Sourced;
  /** Lower bound. Above it the ring stops being magnetic until it has cooled. */
  readonly curieC: Sourced;
  /** Flux density at the maker's test field, 100 °C, T. Heat sets the limit long before it at high frequency. */
  readonly saturation100CT: Sourced;
  readonly resistivityOhmM: Sourced;
}

export const ferrites: Readonly<Record<Mix, Ferrite>> = {
  '31': {
    mix: '31',
    composition: found('MnZn', 'magnetics-database'),
    muInitial: found(1500, 'magnetics-database'),
    curieC: found(130, 'magnetics-database'),
    saturation100CT: found(0.21, 'magnetics-database'),
    resistivityOhmM: recalled(30, 'maker-ferrite-catalogue'),
  },
  '43': {
    mix: '43',
    composition: found('NiZn', 'magnetics-database'),
    muInitial: found(800, 'magnetics-database'), // 850 in older catalogues
    curieC: found(130, 'magnetics-database'),
    saturation100CT: found(0.25, 'magnetics-database'),
    resistivityOhmM: recalled(1e3, 'maker-ferrite-catalogue'),
  },
  '52': {
    mix: '52',
    composition: found('NiZn', 'magnetics-database'),
    muInitial: found(250, 'magnetics-database'),
    curieC: found(250, 'magnetics-database'),
    saturation100CT: found(0.35, 'magnetics-database'),
    resistivityOhmM: recalled(1e7, 'maker-ferrite-catalogue'),
  },
  '61': {
    mix: '61',
    composition: found('NiZn', 'magnetics-database'),
    muInitial: recalled(125, 'maker-ferrite-catalogue'),
    curieC: found(300, 'magnetics-database'),
    saturation100CT: found(0.216, 'magnetics-database'),
    resistivityOhmM: recalled(1e6, 'maker-ferrite-catalogue'),
  },
  '77': {
    mix: '77',
    composition: found('MnZn', 'magnetics-database'),
    muInitial: recalled(2000, 'maker-ferrite-catalogue'),
    curieC: found(200, 'magnetics-database'),
    saturation100CT: found(0.407, 'magnetics-database'),
    resistivityOhmM: recalled(1, 'maker-ferrite-catalogue'),
  },
};

export interface Permeability {
  readonly muReal: number;
  readonly muImag: number;
}

/** Range of muAt, Hz. */
export const permeabilityRangeHz = { low: 1e6, high: 60e6 } as const;

/** µ′ and µ″ at a frequency: linear in µ over the logarithm of frequency between the maker's points. Refused outside 1 to 60 MHz. */
export function muAt(mix: Mix, frequencyHz: number): Permeability {
  const { low, high } = permeabilityRangeHz;
  if (!(frequencyHz >= low && frequencyHz <= high))
    throw new InputError('permeability-range', { frequencyHz, low, high });
  const { frequencyMHz, muReal, muImag } = permeabilityTables[mix].value;
  const f = frequencyHz / 1e6;
  const above = Math.max(
    1,
    frequencyMHz.findIndex((point) => point >= f),
  );
  const at = (column: readonly number[], index: number): number => column[index] ?? Number.NaN;
  const [from, to] = [at(frequencyMHz, above - 1), at(frequencyMHz, above)];
  const part = Math.log(f / from) / Math.log(to / from);
  const between = (column: readonly number[]): number =>
    at(column, above - 1) + part * (at(column, above) - at(column, above - 1));
  return { muReal: between(muReal), muImag: between(muImag) };
}
