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
  'region-2-band-plan': {
    title: 'region 2 band plan',
    citation: 'IARU Region 2 MF/HF band plan (2008): 1800-2000, 3500-4000 kHz',
  },
  'region-3-national-table': {
    title: 'region 3 national table',
    citation: 'Pakistan table of frequency allocations, column of ITU Region 3: 1800-2000, 3500-3900, 10100-10150 kHz',
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
  'handbook-length-rules': {
    title: 'handbook length rules',
    citation:
      'ARRL Handbook and Antenna Book: half-wave 468/f ft, quarter-wave 234/f ft, full-wave loop 1005/f ft, f in MHz; figure of K against conductor diameter',
  },
  'handbook-end-effect': {
    title: 'handbook end-effect rule',
    citation: 'ARRL Antenna Book, long-wire antennas: length of n half-waves = 492 (n − 0.05) / f ft, f in MHz',
  },
  'ground-system-measurements': {
    title: 'radial measurements of 1937',
    citation:
      'G. H. Brown, R. F. Lewis, J. Epstein, Ground Systems as a Factor in Antenna Efficiency, Proc. IRE 25 (1937) 753',
  },
  'non-resonant-sweep': {
    title: 'field solution',
    citation:
      'Own thin-wire field solutions: bare inverted L behind 9:1 with counterpoise wires of 4.2 and 9 m over average ground, length swept about the first half-wave',
  },
  'wave-and-line': { title: 'line theory', citation: 'Pozar, Microwave Engineering, 4th ed., §2.1 and §2.3' },
  'magnetics-database': {
    title: 'magnetics database',
    citation:
      "OpenMagnetics MAS (Apache-2.0): the maker's complex-permeability CSV files and core shapes, re-paired with their mixes (see ferrite-tables)",
  },
  'maker-ferrite-catalogue': {
    title: "maker's catalogue",
    citation: 'Fair-Rite Products Corp. catalogue, 14th to 17th editions, and Amidon trade tables',
  },
  'wound-parts': {
    title: 'worked out from ring and wire',
    citation:
      "Own computation from the makers' permeability curves and dimensions: series permeability model; ring constants of IEC 60205; geometry of the winding; rise after the makers' law for rings",
  },
  'own-field-solutions': {
    title: 'own field solutions',
    citation:
      'Own computation: thin-wire solutions over average ground of coax-fed antennas with chokes; not published',
  },
  'this-antenna-solved': {
    title: 'field solution of this antenna',
    citation: 'Own computation: thin-wire solution of the antenna of this plan, from its answers',
  },
  'line-distance-rule': {
    title: 'antenna power-line rule',
    citation:
      'CPSC instructions printed with antennas (16 CFR 1402.4): keep 2 x (mast + antenna); 6 m more as 29 CFR 1926.1408(a)(2) asks where the voltage is not known',
  },
  'antenna-electrocutions': {
    title: 'consumer safety release',
    citation: 'CPSC release of 1 May 1978 on antenna electrocutions; 16 CFR 1402.2',
  },
  'live-and-bare': {
    title: 'consumer safety advice',
    citation:
      'CPSC advice: treat every overhead wire as live; OSHA letter of 28 April 1992 (covered is not insulated); network operators',
  },
  'line-height-sheet': {
    title: 'line height sheet',
    citation: 'HSE AIS8, figure 1 (clearances and arcing); UK network operator: never raise a pole to judge a line',
  },
  'line-clearance-trees': {
    title: 'US tree clearance rule',
    citation: '29 CFR 1910.269, line-clearance tree trimming: 10 ft, more above 50 kV',
  },
  'work-near-lines': {
    title: 'UK work near lines',
    citation: 'HSE GS6 as applied by a UK network operator: ask within 9 m of pole lines and 15 m of tower lines',
  },
  'airfield-rules': {
    title: 'airspace rules',
    citation: '14 CFR 77.9 (US notice of construction); CAA CAP 1096 (UK cranes, by analogy)',
  },
  'exposure-of-others': {
    title: 'exposure rules',
    citation: '47 CFR 97.13(c), 1.1307(b) and 1.1310; Ofcom EMF licence condition; FCC OET Bulletin 65 Supplement B',
  },
  'exposure-limits': {
    title: 'exposure limits',
    citation: '47 CFR 1.1310; ICNIRP 2020; Health Canada Safety Code 6 (2015)',
  },
  'forestry-climbing': {
    title: 'forestry safety leaflet',
    citation: 'HSE AFAG401 / FISA 401: two trained people, one able to rescue at once; know grid reference and access',
  },
  'work-at-height': {
    title: 'work at height rules',
    citation:
      'UK Work at Height Regulations 2005 as explained by HSE for tree work: climb only where nothing safer will do',
  },
  'lone-work': { title: 'lone work leaflet', citation: 'HSE INDG73 rev 4 (2020), Working alone' },
  'ladder-rules': {
    title: 'ladder rules',
    citation: '29 CFR 1926.1053(b)(5) and (b)(12); HSE ladder guidance; CPSC on metal ladders',
  },
  'navy-radio-course': {
    title: 'naval training course',
    citation: 'US Navy NEETS: switch off and tag before going aloft; RF burns run deep and need medical care',
  },
  'mast-raising-notes': {
    title: 'army mast notes',
    citation:
      'US Army PS Magazine 686 (January 2010) p. 44 and 525 p. 39; Red Lake Falls, Minnesota, town code (three guys)',
  },
  'mast-weather': {
    title: 'weather for masts',
    citation: 'CPSC information in antenna manuals, items 6 and 7; Willmar Municipal Utilities (dry weather only)',
  },
  'antenna-wire-code': {
    title: 'US electrical code',
    citation:
      'NFPA 70, article 810: table 810.52 (wire size), 810.56 (accidental contact), 810.57 and 810.58 (drain and bond)',
  },
  'overhead-clearance': {
    title: 'clearance over walkways',
    citation: 'US clearance of overhead conductors over walkways, 10 ft (3.05 m), by analogy: not an antenna rule',
  },
  'wire-end-voltage': {
    title: 'Ohm’s law',
    citation:
      'V = sqrt(P R); 2450 ohm is the value a 49:1 transformer is made for, real wire ends lie between 2 and 5 kilohm',
  },
  'implants-and-fuel': {
    title: 'implants and fuel',
    citation: 'IEEE C95.1-2019, scope (implants); NAVSEA OP 3565, scope (fuel)',
  },
  'lightning-advice': {
    title: 'weather service advice',
    citation:
      'US National Weather Service: indoors at the first thunder, 30 minutes after the last; NFPA 70 810.57 (static only)',
  },
  'fallen-line': {
    title: 'fallen line advice',
    citation: 'ESFI: keep 35 ft (10.7 m) from a fallen line; CPSC antenna instructions, items 9 and 11',
  },
  'local-law': { title: 'local law', citation: 'National and local codes and licence terms; they come first' },
  'us-exposure-rule': {
    title: 'US exposure rule',
    citation: '47 CFR 1.1310(e)(1), table 1, maximum permissible exposure',
  },
  'icnirp-levels': {
    title: 'international exposure levels',
    citation:
      'ICNIRP, Health Physics 118(5):483-524 (2020), tables 5, 6 and 8; the levels of table 8 as in ICNIRP 2010',
  },
  'eu-public-levels': {
    title: 'European recommendation of 1999',
    citation: 'Council Recommendation 1999/519/EC, annex III, table 2 (reference levels for the general public)',
  },
  'eu-worker-levels': {
    title: 'European directive on workers',
    citation: 'Directive 2013/35/EU, action levels as printed in the Norwegian regulation on action and limit values',
  },
  'canadian-safety-code': {
    title: 'Canadian safety code',
    citation: 'Health Canada, Safety Code 6 (2015), tables 3 to 6, reference levels',
  },
  'hanging-wire': {
    title: 'hanging-wire statics',
    citation:
      'Parabola and catenary of a hanging cable, any mechanics text; wind pressure 0.613 v² Pa at 60 mph; ice 6.4 mm with 190 Pa of wind as the US overhead-line code (NESC rule 250B, medium district), from memory; one tenth of the breaking load at rest: handbook wire table',
  },
  'exposure-near-wire': {
    title: 'near-wire distance',
    citation:
      'Common practice, no source: at least 3 m at 100 W and 10 m at 1 kW from any part unless the near field is computed',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
