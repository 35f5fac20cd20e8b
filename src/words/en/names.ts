/** Names of bands and antennas. All else that goes by id has its name in catalog-names.ts: a first screen need not carry it. */
export const bandNames = {
  '160m': '160 m',
  '80m': '80 m',
  '60m': '60 m',
  '40m': '40 m',
  '30m': '30 m',
  '20m': '20 m',
  '17m': '17 m',
  '15m': '15 m',
  '12m': '12 m',
  '10m': '10 m',
  '6m': '6 m',
} as const;

export const systemNames = {
  'centre-fed-half-wave': 'centre-fed half-wave',
  'inverted-v': 'inverted V',
  sloper: 'sloper',
  'open-wire-doublet': 'doublet on open-wire line',
  'off-centre-fed': 'off-centre-fed wire',
  'end-fed-half-wave': 'end-fed half-wave',
  'non-resonant-end-fed': 'non-resonant end-fed wire',
  'quarter-wave-vertical': 'quarter-wave vertical',
  'non-resonant-vertical': 'non-resonant vertical',
  'inverted-l': 'inverted-L',
  'full-wave-loop': 'full-wave loop',
  'parallel-dipoles': 'parallel dipoles on one feed point',
  'linked-dipole': 'linked dipole',
  'folded-dipole': 'folded dipole',
  other: 'antenna of your own',
} as const;

export const nameIn = (names: Readonly<Record<string, string>>, id: string): string => names[id] ?? id;
export const bandName = (id: string): string => nameIn(bandNames, id);
export const systemName = (id: string): string => nameIn(systemNames, id);
