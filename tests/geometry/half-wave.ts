import type { Layout } from '../../src/geometry/layout';

/** A wire between two supports of one height, fed in its middle, without coax: what the layouts of tests have in common. Invented. */
export const wireBetween = (heightM: number, radiatorM: number): Layout => ({
  radiator: 'straight-wire',
  fedAt: 'centre',
  heightM,
  endHeightM: heightM,
  endSlope: 0.9,
  supportHeightM: heightM,
  radiatorM,
  feedFraction: 0.5,
  riseM: 0,
  furtherPairsM: [],
  links: [],
  loopShape: 'square',
  loopPlane: 'upright',
  wire: { radiusM: 0.001, conductivitySPerM: 5.8e7, insulation: null },
  returnPath: 'none',
  radials: null,
  counterpoisesM: [],
  shieldAtMidGap: false,
  coax: null,
});

/** Coax that leaves at a right angle, runs at 0.1 m and ends 4 m indoors. */
export const squareCoax = (entryDistanceM: number): NonNullable<Layout['coax']> => ({
  lengthM: entryDistanceM + 4,
  shieldRadiusM: 0.0025,
  route: 'square',
  runHeightM: 0.1,
  entryDistanceM,
  houseEarth: 'mains',
});
