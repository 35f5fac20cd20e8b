/** The choices an operator is asked to make. Ids are kept in saved plans: never renamed, never given another meaning. */
export const radiatorIds = [
  'straight-wire',
  'inverted-v',
  'sloper',
  'vertical',
  'inverted-l',
  'loop',
  'parallel-wires',
  'linked-wire',
  'folded-wire',
  'other',
] as const;
export type Radiator = (typeof radiatorIds)[number];

export const feedPositionIds = ['centre', 'off-centre', 'end', 'base', 'corner', 'side-middle'] as const;
export type FeedPosition = (typeof feedPositionIds)[number];

export const lengthChoiceIds = ['resonant', 'non-resonant', 'fixed'] as const;
export type LengthChoice = (typeof lengthChoiceIds)[number];

export const returnPathIds = [
  'counterpoise-wire',
  'coax-shield',
  'ground-radials',
  'elevated-radials',
  'ground-rod',
  'none',
] as const;
export type ReturnPath = (typeof returnPathIds)[number];

export const shackEndIds = [
  'radio',
  'radio-tuner',
  'wide-tuner',
  'wide-tuner-4to1',
  'balanced-tuner',
  'feed-point-tuner',
] as const;
export type ShackEnd = (typeof shackEndIds)[number];

export const houseEarthIds = ['open', 'mains', 'earth', 'both'] as const;
export type HouseEarth = (typeof houseEarthIds)[number];

export const ruleSetIds = ['us-fcc', 'icnirp-2020', 'eu-1999-519', 'ca-safety-code-6', 'au-rps-s1'] as const;
export type RuleSet = (typeof ruleSetIds)[number];

/** The antenna systems that answers can name. */
export const systemIds = [
  'centre-fed-half-wave',
  'inverted-v',
  'sloper',
  'open-wire-doublet',
  'off-centre-fed',
  'end-fed-half-wave',
  'non-resonant-end-fed',
  'quarter-wave-vertical',
  'non-resonant-vertical',
  'inverted-l',
  'full-wave-loop',
  'parallel-dipoles',
  'linked-dipole',
  'folded-dipole',
  'other',
] as const;
export type System = (typeof systemIds)[number];
