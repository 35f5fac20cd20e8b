/** A feed line of the catalogue in the form that the line model and its limits take. */
import type { FeedLine } from '../catalog/lines';
import type { LineData, WetFilm } from './line';
import type { LineLimits } from './line-stress';

export const lineDataOf = (line: FeedLine): LineData => ({
  z0Ohm: line.z0Ohm.value,
  velocityFactor: line.velocityFactor.value,
  k1: line.k1.value,
  k2: line.k2.value,
  clad:
    line.kind === 'open' && line.cladLoss !== null
      ? { ...line.cladLoss.value, untilMHz: line.lossHoldsAboveMHz.value }
      : null,
});

/** Clean rain on an open line; undefined where its effect is not known, and for coax, which stays dry. */
export const wetFilmOf = (line: FeedLine): WetFilm | undefined =>
  line.kind === 'open' && line.wet !== null
    ? { velocityFactorRatio: line.wet.velocityFactor.value, lossRatio: line.wet.loss.value }
    : undefined;

const RATED_AT_HZ = 30e6;

export const lineLimitsOf = (line: FeedLine): LineLimits =>
  line.kind === 'coax'
    ? {
        peakVoltageV: line.voltagePeakV?.value ?? null,
        currentA: null,
        powerW: line.power30MHzW.value,
        ratedAtHz: RATED_AT_HZ,
      }
    : { peakVoltageV: line.voltagePeakV.value, currentA: line.currentA.value, powerW: null, ratedAtHz: RATED_AT_HZ };
