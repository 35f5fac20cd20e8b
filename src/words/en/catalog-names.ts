/** Names of the things the catalogue and the rules know by id. Trade sizes and mixes, no brands; core codes only in brackets. */
import { nameIn } from './names';

export const lineNames = {
  'rg-58': '5 mm coax (RG-58 size)',
  'rg-8x': '6 mm foam coax (RG-8X size)',
  'rg-213': '10 mm coax (RG-213 size)',
  'rg-174': '2.8 mm coax (RG-174 size)',
  'rg-316': '2.5 mm PTFE coax (RG-316 size)',
  'rg-142': '5 mm PTFE coax (RG-142 size)',
  'rg-400': '5 mm PTFE coax (RG-400 size)',
  'rg-6': '7 mm 75 Ω coax (RG-6 size)',
  'foam-6.1mm': '6.1 mm low-loss coax',
  'foam-10.3mm': '10.3 mm low-loss coax',
  'foam-15mm': '15 mm low-loss coax',
  'foam-10.2mm-flexible': '10.2 mm flexible low-loss coax',
  'window-line': 'window line',
  'twin-lead': '300 Ω twin lead',
  'open-wire': 'open-wire line',
  none: 'no feed line',
} as const;

export const wireNames = {
  'copper-1.0mm-bare': 'bare copper wire, 1.0 mm',
  'copper-1.6mm-bare': 'bare copper wire, 1.6 mm',
  'copper-2.0mm-bare': 'bare copper wire, 2.0 mm',
  'copper-2.5mm-bare': 'bare copper wire, 2.5 mm',
  'pvc-0.75mm2': 'PVC wire, 0.75 mm²',
  'pvc-1.5mm2': 'PVC wire, 1.5 mm²',
  'pvc-awg14': 'PVC wire, 14 AWG',
  'pvc-awg18': 'PVC wire, 18 AWG',
  'pe-awg14-copper-clad': 'copper-clad steel wire in PE, 14 AWG',
  'pe-awg26-copper-clad': 'thin copper-clad steel wire in PE, 26 AWG',
  'ptfe-awg22': 'PTFE wire, 22 AWG',
} as const;

export const groundNames = {
  sea: 'sea water',
  'fresh-water': 'fresh water',
  'very-good': 'very good ground (rich, moist soil)',
  good: 'good ground',
  average: 'average ground',
  poor: 'poor ground (rock, hills)',
  'very-poor': 'very poor ground (town, industry)',
  'dry-sand': 'dry sand',
} as const;

export const modeNames = { voice: 'voice', cw: 'Morse', data: 'digital', fm: 'FM', am: 'AM' } as const;

export const ruleSetNames = {
  'us-fcc': 'United States limits',
  'icnirp-2020': 'international limits of 2020',
  'eu-1999-519': 'European Union limits',
  'ca-safety-code-6': 'Canadian limits',
  'au-rps-s1': 'Australian limits',
} as const;

const ringDiameterMm = { ft50: 13, ft82: 21, ft114: 29, ft140: 36, ft240: 61, ft290: 74, ft400: 102 } as const;

/** Outside diameter of a ring size, mm, as it is asked for. */
export const coreDiameterMm = (size: string): number => (ringDiameterMm as Readonly<Record<string, number>>)[size] ?? 0;

/** `ft240-43` as "61 mm ring, mix 43 (FT240-43)". An id of another form stays as it is. */
export function coreName(id: string): string {
  const [size = '', mix = ''] = id.split('-');
  return size in ringDiameterMm
    ? `${ringDiameterMm[size as keyof typeof ringDiameterMm]} mm ring, mix ${mix} (${id.toUpperCase()})`
    : id;
}

export const lineName = (id: string): string => nameIn(lineNames, id);
export const wireName = (id: string): string => nameIn(wireNames, id);
/** Of coax or wire, whichever the id names. */
export const conductorName = (id: string): string => (id in wireNames ? wireName(id) : lineName(id));
export const modeName = (id: string): string => nameIn(modeNames, id);
export const ruleSetName = (id: string): string => nameIn(ruleSetNames, id);
