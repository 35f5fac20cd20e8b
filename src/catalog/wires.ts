import { derived, found, practice, recalled, type Sourced } from './sourced';
import { nearestGauge } from './wire-gauge';
import type { WireId } from './wire-ids';

/**
 * Antenna wire. `diameterM` is the conductor (strand bundle for stranded wire), `velocityFactor` the wire factor kw: 1 for bare wire, below 1
 * with insulation. Published shortening of insulated wire runs from 1.5 % (computed from the layer alone) to 5 % (reports): 0.975 is the
 * house figure, to be corrected by the first length measured from a drum.
 */
export type Insulator = 'pvc' | 'pe' | 'ptfe';

/** Relative permittivity and density, kg/m³ (densities from memory). */
export const insulators: Readonly<Record<Insulator, { readonly epsilonR: Sourced; readonly densityKgPerM3: Sourced }>> =
  {
    pvc: { epsilonR: recalled(3.5, 'insulation-permittivities'), densityKgPerM3: recalled(1380, 'antenna-wire-list') }, // 3.0 to 4.0
    pe: { epsilonR: recalled(2.26, 'insulation-permittivities'), densityKgPerM3: recalled(940, 'antenna-wire-list') },
    ptfe: { epsilonR: found(2.1, 'insulation-permittivities'), densityKgPerM3: recalled(2170, 'antenna-wire-list') },
  };

export type WireMetal = 'hard-copper' | 'soft-copper' | 'copper-clad-steel';

/**
 * `conductivitySPerM` is what radio current meets. Copper-clad wire carries copper's at 7 MHz and up when the cladding is thicker than about
 * three skin depths; 10 % of a 1.8 mm wire is (180 µm, skin depth 49 µm at 1.8 MHz), 10 % of a 0.43 mm wire is not below 7 MHz.
 */
export const wireMetals: Readonly<
  Record<WireMetal, { readonly conductivitySPerM: Sourced; readonly densityKgPerM3: Sourced }>
> = {
  'hard-copper': {
    conductivitySPerM: recalled(56.3e6, 'copper-wire-standards'),
    densityKgPerM3: recalled(8890, 'copper-wire-standards'),
  },
  'soft-copper': {
    conductivitySPerM: recalled(58e6, 'copper-wire-standards'),
    densityKgPerM3: recalled(8890, 'copper-wire-standards'),
  },
  'copper-clad-steel': {
    conductivitySPerM: recalled(58e6, 'copper-wire-standards'),
    densityKgPerM3: recalled(8240, 'copper-clad-wire-sheet'),
  },
};

export interface Wire {
  readonly id: WireId;
  readonly metal: WireMetal;
  readonly stranded: boolean;
  readonly diameterM: Sourced;
  readonly sectionM2: Sourced;
  readonly insulation: {
    readonly material: Insulator;
    readonly epsilonR: Sourced;
    readonly thicknessM: Sourced;
  } | null;
  readonly velocityFactor: Sourced;
  readonly conductivitySPerM: Sourced;
  readonly massKgPerM: Sourced;
  readonly breakN: Sourced;
  /** Nearest American gauge by section, for the shopping list. */
  readonly awg: number;
}

interface Entry {
  readonly metal: WireMetal;
  readonly diameterMm: number;
  /** Section, mm², where it is not the full circle (stranded wire). */
  readonly sectionMm2?: number;
  readonly insulation?: Insulator;
  readonly outsideMm?: number;
  readonly velocityFactor: Sourced;
  readonly breakN: number;
}

const bareFactor = practice(1, 'house-practice');
const insulatedFactor = practice(0.975, 'house-practice');
const thinPtfeFactor = practice(0.985, 'house-practice');

const circle = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

/** Mass from section and density of conductor and insulation; 1 mm² of a material of 1000 kg/m³ weighs 1 g to the metre. */
function massKgPerM(entry: Entry, sectionMm2: number): number {
  const metal = sectionMm2 * wireMetals[entry.metal].densityKgPerM3.value;
  const around = entry.insulation === undefined ? 0 : circle(entry.outsideMm ?? 0) - circle(entry.diameterMm);
  const layer = entry.insulation === undefined ? 0 : around * insulators[entry.insulation].densityKgPerM3.value;
  return (metal + layer) * 1e-6;
}

function wire(id: WireId, entry: Entry): Wire {
  const sectionMm2 = entry.sectionMm2 ?? circle(entry.diameterMm);
  const { insulation, outsideMm = entry.diameterMm } = entry;
  return {
    id,
    metal: entry.metal,
    stranded: entry.sectionMm2 !== undefined,
    diameterM: recalled(entry.diameterMm / 1000, 'antenna-wire-list'),
    sectionM2: derived(sectionMm2 * 1e-6, 'wire-geometry'),
    insulation:
      insulation === undefined
        ? null
        : {
            material: insulation,
            epsilonR: insulators[insulation].epsilonR,
            thicknessM: recalled((outsideMm - entry.diameterMm) / 2000, 'antenna-wire-list'),
          },
    velocityFactor: entry.velocityFactor,
    conductivitySPerM: wireMetals[entry.metal].conductivitySPerM,
    massKgPerM: derived(massKgPerM(entry, sectionMm2), 'wire-geometry'),
    breakN: recalled(entry.breakN, 'wire-section-times-strength'),
    awg: nearestGauge(sectionMm2 * 1e-6),
  };
}

const hardCopper = (id: WireId, diameterMm: number, breakN: number): Wire =>
  wire(id, { metal: 'hard-copper', diameterMm, velocityFactor: bareFactor, breakN });

export const wires: Readonly<Record<WireId, Wire>> = {
  // The wire standards' minimum breaking loads, scaled by section, lie 8 to 10 % above these: the careful figure is kept.
  'copper-1.0mm-bare': hardCopper('copper-1.0mm-bare', 1, 330),
  'copper-1.6mm-bare': hardCopper('copper-1.6mm-bare', 1.6, 840),
  'copper-2.0mm-bare': hardCopper('copper-2.0mm-bare', 2, 1300),
  'copper-2.5mm-bare': hardCopper('copper-2.5mm-bare', 2.5, 2000),
  'pvc-0.75mm2': wire('pvc-0.75mm2', {
    metal: 'soft-copper',
    diameterMm: 1.1,
    sectionMm2: 0.75,
    insulation: 'pvc',
    outsideMm: 2.3,
    velocityFactor: insulatedFactor,
    breakN: 160,
  }),
  'pvc-1.5mm2': wire('pvc-1.5mm2', {
    metal: 'soft-copper',
    diameterMm: 1.5,
    sectionMm2: 1.5,
    insulation: 'pvc',
    outsideMm: 2.9,
    velocityFactor: insulatedFactor,
    breakN: 320,
  }),
  'pvc-awg14': wire('pvc-awg14', {
    metal: 'soft-copper',
    diameterMm: 1.85,
    sectionMm2: 2.081,
    insulation: 'pvc',
    outsideMm: 3.4,
    velocityFactor: insulatedFactor,
    breakN: 450, // 552 N published for a solid one
  }),
  'pvc-awg18': wire('pvc-awg18', {
    metal: 'soft-copper',
    diameterMm: 1.2,
    sectionMm2: 0.823,
    insulation: 'pvc',
    outsideMm: 2,
    velocityFactor: insulatedFactor,
    breakN: 180,
  }),
  'pe-awg14-copper-clad': wire('pe-awg14-copper-clad', {
    metal: 'copper-clad-steel',
    diameterMm: 1.8,
    insulation: 'pe',
    outsideMm: 3.1,
    velocityFactor: insulatedFactor, // computed 0.985, reports 0.95 to 0.97
    breakN: 1900,
  }),
  'pe-awg26-copper-clad': wire('pe-awg26-copper-clad', {
    metal: 'copper-clad-steel',
    diameterMm: 0.43,
    insulation: 'pe',
    outsideMm: 0.93,
    velocityFactor: insulatedFactor,
    breakN: 110,
  }),
  'ptfe-awg22': wire('ptfe-awg22', {
    metal: 'soft-copper',
    diameterMm: 0.76,
    sectionMm2: 0.3255,
    insulation: 'ptfe',
    outsideMm: 1.26,
    velocityFactor: thinPtfeFactor,
    breakN: 80,
  }),
};
