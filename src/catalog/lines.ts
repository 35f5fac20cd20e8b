import type { CoaxId, LineId, OpenLineId } from './line-ids';
import { derived, found, practice, recalled, type Sourced } from './sourced';

/**
 * Feed lines at 1.8 to 54 MHz.
 *
 *   matched loss, dB per 100 m = k1 · √f + k2 · f      f in MHz, at 20 °C
 *
 * k1 carries the conductors, k2 the dielectric. For most types both are fitted to the attenuation points of the named sheet; the foam types
 * with a source of their own carry the maker's coefficients. Limits: below `lossHoldsAboveMHz` a copper-clad centre is thinner than its
 * skin depth wants and the loss falls more slowly than √f. Between makers the loss of one trade number spreads by 10 to 15 %.
 */
interface LineFacts {
  readonly z0Ohm: Sourced;
  readonly velocityFactor: Sourced;
  readonly k1: Sourced;
  readonly k2: Sourced;
  readonly conductor: 'copper' | 'copper-clad-steel';
  /** Lowest frequency, MHz, at which k1 and k2 hold. */
  readonly lossHoldsAboveMHz: Sourced;
}

export interface Coax extends LineFacts {
  readonly id: CoaxId;
  readonly kind: 'coax';
  readonly outerDiameterM: Sourced;
  /** Radius of the outside of the braid, on which common-mode current flows. */
  readonly shieldRadiusM: Sourced;
  readonly minBendRadiusM: Sourced;
  /** Greatest voltage between the conductors, peak. Null: not known. */
  readonly voltagePeakV: Sourced | null;
  /** Average power at 30 MHz into a matched load, 40 °C around it. Falls about as 1 / attenuation with frequency and with the SWR. */
  readonly power30MHzW: Sourced;
}

export interface OpenLine extends LineFacts {
  readonly id: OpenLineId;
  readonly kind: 'open';
  readonly voltagePeakV: Sourced;
  readonly currentA: Sourced;
  /** A film of clean water: factors on the velocity factor and on the loss. Null: not known. */
  readonly wet: { readonly velocityFactor: Sourced; readonly loss: Sourced } | null;
  /** Measured loss of the common copper-clad kind where k1 and k2 are too kind to it, dB per 100 m at `atMHz`. */
  readonly cladLoss: Sourced<{ readonly atMHz: number; readonly dbPer100M: number }> | null;
}

export type FeedLine = Coax | OpenLine;

const RMS_TO_PEAK = Math.SQRT2;
const everyHf = practice(1, 'engineering-judgement');
const shield = (millimetres: number): Sourced => recalled(millimetres / 1000, 'engineering-judgement');
const fitted = (k1: number, k2: number) => ({ k1: derived(k1, 'line-loss-fit'), k2: derived(k2, 'line-loss-fit') });
const makers = (k1: number, k2: number) => ({
  k1: recalled(k1, 'maker-foam-sheets'),
  k2: recalled(k2, 'maker-foam-sheets'),
});

export const coaxes: Readonly<Record<CoaxId, Coax>> = {
  'rg-58': {
    id: 'rg-58',
    kind: 'coax',
    z0Ohm: recalled(50, 'maker-coax-sheets'), // some RG-58/U are 53.5 Ω
    velocityFactor: found(0.66, 'coax-specification-table'),
    ...fitted(1.36, 0.0252),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.00495, 'dealer-cable-table'),
    shieldRadiusM: shield(1.8),
    minBendRadiusM: found(0.025, 'austrian-society-cable-page'), // once; ten diameters is the usual caution
    voltagePeakV: found(1400 * RMS_TO_PEAK, 'military-coax-limits'), // older sheets 1900 V rms
    power30MHzW: recalled(450, 'maker-coax-sheets'), // ± 30 %
  },
  'rg-8x': {
    id: 'rg-8x',
    kind: 'coax',
    z0Ohm: recalled(50, 'maker-coax-sheets'),
    velocityFactor: recalled(0.82, 'maker-coax-sheets'), // 0.78 to 0.84 by maker
    ...fitted(0.9127, 0.00897),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.0061, 'emergency-group-cable-table'),
    shieldRadiusM: shield(2.4),
    minBendRadiusM: recalled(0.061, 'maker-coax-sheets'),
    voltagePeakV: recalled(600 * RMS_TO_PEAK, 'maker-coax-sheets'), // low confidence; the jacket is rated 300 V
    power30MHzW: recalled(700, 'maker-coax-sheets'), // ± 35 %
  },
  'rg-213': {
    id: 'rg-213',
    kind: 'coax',
    z0Ohm: found(50, 'military-coax-limits'),
    velocityFactor: found(0.66, 'dealer-cable-table'),
    ...fitted(0.5951, 0.00312), // three other tables lie 9 to 15 % above this curve
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.0103, 'dealer-cable-table'),
    shieldRadiusM: shield(4),
    minBendRadiusM: found(0.05, 'austrian-society-cable-page'), // once; about 114 mm when bent again and again
    voltagePeakV: found(3700 * RMS_TO_PEAK, 'military-coax-limits'),
    power30MHzW: recalled(1800, 'maker-coax-sheets'), // ± 25 %
  },
  'rg-174': {
    id: 'rg-174',
    kind: 'coax',
    z0Ohm: recalled(50, 'maker-coax-sheets'),
    velocityFactor: found(0.66, 'coax-specification-table'),
    ...fitted(2.933, 0), // the maker's 1 MHz value is about twice this fit
    conductor: 'copper-clad-steel',
    lossHoldsAboveMHz: recalled(10, 'maker-coax-sheets'),
    outerDiameterM: found(0.0026, 'dealer-cable-table'),
    shieldRadiusM: shield(1),
    minBendRadiusM: found(0.015, 'dealer-cable-table'),
    voltagePeakV: recalled(1100 * RMS_TO_PEAK, 'military-ptfe-coax'),
    power30MHzW: recalled(110, 'maker-coax-sheets'), // ± 35 %
  },
  'rg-316': {
    id: 'rg-316',
    kind: 'coax',
    z0Ohm: recalled(50, 'military-ptfe-coax'),
    velocityFactor: recalled(0.695, 'military-ptfe-coax'),
    ...fitted(2.635, 0.0112),
    conductor: 'copper-clad-steel',
    lossHoldsAboveMHz: recalled(5, 'military-ptfe-coax'),
    outerDiameterM: recalled(0.00249, 'military-ptfe-coax'),
    shieldRadiusM: shield(1),
    minBendRadiusM: recalled(0.013, 'military-ptfe-coax'),
    voltagePeakV: recalled(1200 * RMS_TO_PEAK, 'military-ptfe-coax'), // 900 V rms in newer sheets
    power30MHzW: recalled(800, 'military-ptfe-coax'), // ± 35 %, rated at high temperature
  },
  'rg-142': {
    id: 'rg-142',
    kind: 'coax',
    z0Ohm: recalled(50, 'military-ptfe-coax'),
    velocityFactor: recalled(0.695, 'military-ptfe-coax'),
    ...fitted(1.149, 0.00897),
    conductor: 'copper-clad-steel',
    lossHoldsAboveMHz: recalled(3, 'military-ptfe-coax'),
    outerDiameterM: recalled(0.00495, 'military-ptfe-coax'),
    shieldRadiusM: shield(2.1),
    minBendRadiusM: recalled(0.025, 'military-ptfe-coax'),
    voltagePeakV: recalled(1900 * RMS_TO_PEAK, 'military-ptfe-coax'), // 1400 V rms in newer sheets
    power30MHzW: recalled(3000, 'military-ptfe-coax'), // ± 30 %
  },
  'rg-400': {
    id: 'rg-400',
    kind: 'coax',
    z0Ohm: recalled(50, 'military-ptfe-coax'),
    velocityFactor: recalled(0.695, 'military-ptfe-coax'),
    ...fitted(1.29, 0.0104),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: recalled(0.00495, 'military-ptfe-coax'),
    shieldRadiusM: shield(2.1),
    minBendRadiusM: recalled(0.025, 'military-ptfe-coax'),
    voltagePeakV: recalled(1900 * RMS_TO_PEAK, 'military-ptfe-coax'), // 1400 V rms in newer sheets
    power30MHzW: recalled(2800, 'military-ptfe-coax'), // ± 30 %
  },
  'rg-6': {
    id: 'rg-6',
    kind: 'coax',
    z0Ohm: recalled(75, 'drop-cable-standard'),
    velocityFactor: recalled(0.85, 'drop-cable-standard'), // 0.82 for broadcast types
    ...fitted(0.6867, 0), // fitted to maximum values, not nominal ones
    conductor: 'copper-clad-steel',
    lossHoldsAboveMHz: recalled(5, 'drop-cable-standard'),
    outerDiameterM: recalled(0.0069, 'drop-cable-standard'),
    shieldRadiusM: shield(2.6),
    minBendRadiusM: recalled(0.076, 'drop-cable-standard'),
    voltagePeakV: null,
    power30MHzW: recalled(1000, 'drop-cable-standard'), // ± 40 %, rarely specified
  },
  'foam-6.1mm': {
    id: 'foam-6.1mm',
    kind: 'coax',
    z0Ohm: recalled(50, 'maker-foam-sheets'),
    velocityFactor: recalled(0.84, 'maker-foam-sheets'),
    ...makers(0.7942, 0.00108),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.0061, 'emergency-group-cable-table'),
    shieldRadiusM: shield(2.3),
    minBendRadiusM: recalled(0.0191, 'maker-foam-sheets'), // once; 63.5 mm repeated
    voltagePeakV: recalled(1500, 'maker-foam-sheets'), // direct voltage withstood
    power30MHzW: recalled(1490, 'maker-foam-sheets'),
  },
  'foam-10.3mm': {
    id: 'foam-10.3mm',
    kind: 'coax',
    z0Ohm: found(50, 'foam-cable-summary'),
    velocityFactor: recalled(0.85, 'maker-foam-sheets'), // 0.84 in the summary
    ...makers(0.4012, 0.000853),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.01029, 'emergency-group-cable-table'),
    shieldRadiusM: shield(4.05),
    minBendRadiusM: found(0.0254, 'foam-cable-summary'), // once; 101.6 mm repeated
    voltagePeakV: recalled(2500, 'maker-foam-sheets'), // direct voltage withstood
    power30MHzW: recalled(3330, 'maker-foam-sheets'),
  },
  'foam-15mm': {
    id: 'foam-15mm',
    kind: 'coax',
    z0Ohm: recalled(50, 'maker-foam-sheets'),
    velocityFactor: recalled(0.87, 'maker-foam-sheets'),
    ...makers(0.2479, 0.000853),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.015, 'emergency-group-cable-table'),
    shieldRadiusM: shield(6.3),
    minBendRadiusM: recalled(0.0381, 'maker-foam-sheets'), // once; 152 mm repeated
    voltagePeakV: recalled(4000, 'maker-foam-sheets'), // direct voltage withstood
    power30MHzW: recalled(5510, 'maker-foam-sheets'),
  },
  'foam-10.2mm-flexible': {
    id: 'foam-10.2mm-flexible',
    kind: 'coax',
    z0Ohm: recalled(50, 'austrian-society-cable-page'),
    velocityFactor: found(0.86, 'scout-radio-cable-page'), // newer types 0.85
    ...fitted(0.3807, 0.00197), // fitted at 145 MHz and up; remembered 10 to 100 MHz values agree within 3 %
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    outerDiameterM: found(0.0102, 'austrian-society-cable-page'),
    shieldRadiusM: shield(4),
    minBendRadiusM: found(0.044, 'austrian-society-cable-page'),
    voltagePeakV: null,
    power30MHzW: recalled(1500, 'austrian-society-cable-page'), // ± 40 %, low confidence
  },
};

export const openLines: Readonly<Record<OpenLineId, OpenLine>> = {
  'window-line': {
    id: 'window-line',
    kind: 'open',
    z0Ohm: found(395, 'window-line-measurements'), // measured 360 to 410; sold as 450
    velocityFactor: found(0.91, 'window-line-measurements'), // 0.90 to 0.93
    ...fitted(0.0652, 0.0035),
    conductor: 'copper-clad-steel',
    lossHoldsAboveMHz: practice(10, 'window-line-loss-note'),
    voltagePeakV: recalled(2500, 'engineering-judgement'),
    currentA: recalled(5, 'engineering-judgement'),
    wet: { velocityFactor: recalled(0.985, 'engineering-judgement'), loss: recalled(3, 'engineering-judgement') },
    cladLoss: found({ atMHz: 3.6, dbPer100M: 0.75 }, 'window-line-loss-note'), // 19-strand copper-clad, 1 mm
  },
  'twin-lead': {
    id: 'twin-lead',
    kind: 'open',
    z0Ohm: recalled(300, 'handbook-line-table'),
    velocityFactor: recalled(0.8, 'handbook-line-table'), // 0.80 to 0.85
    ...fitted(0.289, 0.016),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    voltagePeakV: recalled(1000, 'engineering-judgement'),
    currentA: recalled(2.5, 'engineering-judgement'),
    wet: null,
    cladLoss: null,
  },
  'open-wire': {
    id: 'open-wire',
    kind: 'open',
    z0Ohm: recalled(600, 'handbook-line-table'),
    velocityFactor: recalled(0.97, 'handbook-line-table'), // 0.95 to 0.99
    ...fitted(0.0638, 0.00013),
    conductor: 'copper',
    lossHoldsAboveMHz: everyHf,
    voltagePeakV: recalled(5000, 'engineering-judgement'),
    currentA: recalled(10, 'engineering-judgement'),
    wet: null,
    cladLoss: null,
  },
};

export const lines: Readonly<Record<LineId, FeedLine>> = { ...coaxes, ...openLines };
