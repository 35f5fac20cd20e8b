/**
 * Where the numbers come from. `title` is short and neutral and may stand on a screen; `citation` is the full reference, one tap further
 * and in the tests. Ids are kept in saved plans: never renamed, never reused.
 */
export interface Source {
  readonly title: string;
  readonly citation: string;
}

export const sources = {
  'itu-radio-regulations': {
    title: 'radio regulations',
    citation: 'ITU Radio Regulations, Article 5, editions of 2020 and 2024',
  },
  'region-1-80m-table': {
    title: 'region 1 society table',
    citation: 'IARU Region 1 wiki, table 3500-4000 kHz of the Radio Regulations with notes 5.92, 5.119, 5.122, 5.125',
  },
  'region-1-40m-notice': {
    title: 'region 1 society notice',
    citation: 'IARU Region 1: 7000-7200 kHz primary from 29 March 2009',
  },
  'region-3-40m-paper': {
    title: 'region 3 society paper',
    citation: 'IARU Region 3, document R3-004 (2019-09-03): 7.2-7.3 MHz is not allocated to amateurs in Region 3',
  },
  'wrc-2015-60m': {
    title: 'world radio conference 2015',
    citation: 'WRC-15, 5351.5-5366.5 kHz secondary, 15 W e.i.r.p., up to 25 W in some countries, in force 2017-01-01',
  },
  'wrc-2019-6m': {
    title: 'world radio conference 2019',
    citation: 'IARU, WRC-19 approves Region 1 50 MHz allocation (2019-11-21)',
  },
  'us-60m-order': {
    title: 'US order on 60 m',
    citation:
      'FCC Report and Order of 2025-12-09, ET Docket 23-120: 5351.5-5366.5 kHz at 9.15 W ERP; 5332, 5348, 5373, 5405 kHz at 100 W ERP',
  },
  'us-rules-part-97': { title: 'US amateur rules', citation: '47 CFR 97.301, 97.303 and 97.313' },
  'us-exposure-bulletin': {
    title: 'US exposure bulletin',
    citation: 'FCC OET Bulletin 65, Supplement B (1997), table 2 and worksheet instructions, item 31',
  },
  'handbook-ground-table': {
    title: 'handbook ground table',
    citation:
      'Conductivity and dielectric constants for common types of earth (after Terman and the FCC), as republished from the ARRL Antenna Book',
  },
  'maker-coax-sheets': {
    title: "maker's data sheet",
    citation:
      'Belden data sheets and Master Catalog: 8262 (RG-58C/U), 9258 (RG-8X), 8267 (RG-213/U), 8216 (RG-174/U), 83284 (RG-316), 83242 (RG-142); nominal attenuation at 20 °C',
  },
  'maker-foam-sheets': {
    title: "maker's data sheet",
    citation: 'Times Microwave Systems LMR data sheets: attenuation k1·sqrt(f) + k2·f dB/100 ft, f in MHz, 25 °C',
  },
  'emergency-group-cable-table': {
    title: 'compiled cable table',
    citation: "Santa Clara County ARES/RACES, 'Coaxial Cable', compiled from makers' sheets",
  },
  'coax-specification-table': {
    title: 'coax specification table',
    citation: 'P. Harden, Coaxial Cable Specifications (velocity factor, pF/ft, dB/100 ft at 10 MHz, diameters)',
  },
  'military-coax-limits': {
    title: 'military cable sheets',
    citation:
      'MIL-C-17G slash sheets 28C (RG-58) and 74C (RG-213) as quoted by J. Lux: working voltage, attenuation limits',
  },
  'military-ptfe-coax': {
    title: 'military cable sheets',
    citation:
      'MIL-DTL-17 slash sheets 60 (RG-142), 113 (RG-316), 119 (RG-174), 128 (RG-400), and the Harbour Industries catalogue',
  },
  'austrian-society-cable-page': {
    title: 'national society cable page',
    citation: 'OEVSV wiki, Antennenkabel: diameter, bend radius, attenuation at 145, 432, 1300, 2400 MHz',
  },
  'scout-radio-cable-page': {
    title: 'club cable page',
    citation: 'JOTA wiki, Koaxialkabel: diameter, bend radius, velocity factor, dB/100 m at 145 MHz',
  },
  'dealer-cable-table': {
    title: 'dealer cable table',
    citation:
      'digisolutions.de, Antennenkabel: conductor, capacitance, velocity factor, bend radius, diameter of RG-174, RG-58, RG-213',
  },
  'drop-cable-standard': {
    title: 'drop cable standard',
    citation: "ANSI/SCTE 74 series-6 drop cable and makers' F6 tables, maximum attenuation at 20 °C",
  },
  'foam-cable-summary': {
    title: 'summary of a data sheet',
    citation: "Secondary summary of a maker's sheet for 10.3 mm low-loss foam coax (web encyclopedia)",
  },
  'window-line-measurements': {
    title: 'window line measurements',
    citation:
      "W. Stewart, 'Balanced Transmission Lines in Current Amateur Practice', ARRL Antenna Compendium vol. 6, as reported on TowerTalk 2017-02; measured window lines at k6mhe.com/ladder_line.html",
  },
  'window-line-loss-note': {
    title: 'window line loss note',
    citation: "O. Duffy, 'Loss of Wireman 553 windowed ladder line at MF/HF - does it matter #2'",
  },
  'handbook-line-table': {
    title: 'handbook line table',
    citation: "ARRL Handbook and Antenna Book, table 'Nominal characteristics of commonly used transmission lines'",
  },
  'line-loss-fit': {
    title: 'fit to the loss table',
    citation: 'Least-squares fit (relative error) of k1·sqrt(f) + k2·f to the attenuation points of the same line',
  },
  'engineering-judgement': {
    title: 'cautious engineering value',
    citation: 'Common engineering practice; no published source',
  },
  'house-practice': { title: 'common practice', citation: 'Common practice, no source' },
  'copper-wire-standards': {
    title: 'copper wire standards',
    citation: 'ASTM B1 (hard-drawn), B2, B3 (soft) copper wire; NBS Handbook 100, copper wire tables; IEC 60028',
  },
  'copper-clad-wire-sheet': {
    title: 'copper-clad wire table',
    citation:
      'Solid bare copper-clad steel, ASTM B227 and B910: diameter, breaking load, weight, resistance; Copperweld data sheet 40 % IACS',
  },
  'antenna-wire-list': {
    title: 'antenna wire sizes',
    citation: 'Typical dimensions of insulated antenna and building wire; not one maker’s sheet',
  },
  'insulation-permittivities': {
    title: 'insulation permittivity list',
    citation:
      'Permittivity list after L. B. Cebik (PTFE 2.1, PP 2.2, PS 2.5), quoted in a posting; PVC and PE from handbooks',
  },
  'wire-section-times-strength': {
    title: 'section times strength',
    citation: 'Section times typical strength: hard-drawn copper 420, soft copper 220, copper-clad steel 750 N/mm²',
  },
  'wire-geometry': {
    title: 'worked out from the dimensions',
    citation: 'Section times density of conductor and insulation',
  },
  'magnetics-database': {
    title: 'magnetics database',
    citation:
      "OpenMagnetics MAS (Apache-2.0): the maker's complex-permeability CSV files and core shapes, re-paired with their mixes (see ferrite-tables)",
  },
  'maker-ferrite-catalogue': {
    title: "maker's catalogue",
    citation: 'Fair-Rite Products Corp. catalogue, 14th to 17th editions, and Amidon trade tables',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
