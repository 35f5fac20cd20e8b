/**
 * Disputed practice that touches this antenna (D1 to D7): what the numbers say for it. words/en/disputes.ts holds both positions and, last,
 * the house position. Figures: those of this very antenna where it was solved (`solvedHere`), else field-figures.ts; scaled to the power.
 */
import type { SourceId } from '../catalog/sources';
import { isEndFed, reactiveMinimumOhm } from './chain/choke-minimum';
import type { Facts } from './facts';
import type { FieldFacts } from './field-facts';
import { entryMa, figureBand, heatShare, roughly, scaledMa } from './field-figures';
import type { Data, Dispute } from './finding';
import { hangsAs } from './hanging';
import { keyedAverageW } from './heating-power';

export const disputeIds = ['D1', 'D2', 'D3', 'D4', 'D5', 'D6', 'D7'] as const;
export type DisputeId = (typeof disputeIds)[number];

const dispute = (id: DisputeId, data: Data, source: SourceId = 'own-field-solutions'): Dispute => ({
  id,
  code: id,
  data,
  source,
});

export const disputesOf = (facts: Facts, field?: FieldFacts): readonly Dispute[] =>
  usualDisputes(facts).map((usual) => {
    const solved = field?.disputes?.[usual.id];
    if (solved === undefined) return usual;
    return { ...usual, data: { ...usual.data, ...stated(solved, facts) }, source: 'this-antenna-solved' };
  });

/** Solved figures are per 100 W: currents at the operator's peak, heat at the average while keyed. */
const stated = (solved: Data, facts: Facts): Data =>
  Object.fromEntries(
    Object.entries(solved).map(([key, value]) => {
      if (typeof value !== 'number') return [key, value];
      if (key.endsWith('Ma')) return [key, roughly(scaledMa(value, facts.settled.powerW))];
      return [key, key.endsWith('HeatW') ? roughly((value / 100) * keyedAverageW(facts)) : value];
    }),
  );

function usualDisputes(facts: Facts): readonly Dispute[] {
  const { system, lineKind, settled } = facts;
  const coax = lineKind === 'coax';
  const endFedOnCoax = isEndFed(system) && coax;
  const chokes = coax || (lineKind === 'open-wire' && settled.shackEnd !== 'balanced-tuner');
  return [
    ...(system === 'off-centre-fed' && coax ? [offCentreType(facts)] : []),
    ...(endFedOnCoax ? [endFedChoke(facts)] : []),
    ...(system === 'end-fed-half-wave' && coax ? [noCounterpoise(facts)] : []),
    ...(lineKind === 'open-wire' || system === 'open-wire-doublet' ? [fourToOne()] : []),
    ...(chokes ? [resistiveOrReactive(facts)] : []),
    ...(hangsAs(settled) === 'inverted-v' ? [drooping(facts)] : []),
    ...(coax && settled.station === 'home' ? [earthOrder()] : []),
  ];
}

const watts = (share: number, facts: Facts): number => roughly(share * keyedAverageW(facts));

function offCentreType(facts: Facts): Dispute {
  const band = figureBand(facts.bands[0].band);
  const ma = (per100W: number): number => roughly(scaledMa(per100W, facts.settled.powerW));
  const { offCentre } = entryMa;
  return dispute('D1', {
    band,
    powerW: facts.settled.powerW,
    currentAloneMa: ma(offCentre.currentAlone[band]),
    voltageChokeMa: ma(offCentre.feed[band]),
    currentEntryMa: ma(offCentre.currentAndEntry[band]),
    voltageEntryMa: ma(offCentre.both[band]),
    transformerHeatW: watts(heatShare.offCentreCurrentType[band], facts),
    chokeHeatW: watts(heatShare.offCentreChoke[band], facts),
  });
}

function endFedChoke(facts: Facts): Dispute {
  const [{ band: lowest, wavelengthM }] = facts.bands;
  const band = figureBand(lowest);
  const ma = (per100W: number): number => roughly(scaledMa(per100W, facts.settled.powerW));
  const { endFed, nonResonant } = entryMa;
  return dispute('D2', {
    band,
    powerW: facts.settled.powerW,
    distanceM: 0.05 * wavelengthM,
    wiresMa: ma(nonResonant.none[band]),
    wiresBoxMa: ma(nonResonant.feed[band]),
    wiresBothMa: ma(nonResonant.both[band]),
    boxMa: ma(endFed.wireAndBox[band]),
    twentiethMa: ma(endFed.feed[band]),
    houseMa: ma(endFed.entry[band]),
    bothMa: ma(endFed.both[band]),
    boxShare: heatShare.boxWithoutCounterpoise[band],
    nonResonant: facts.system === 'non-resonant-end-fed',
  });
}

function noCounterpoise(facts: Facts): Dispute {
  const band = figureBand(facts.bands[0].band);
  return dispute('D3', {
    band,
    powerW: facts.settled.powerW,
    endCurrentMa: roughly(scaledMa(END_CURRENT_MA, facts.settled.powerW)),
    houseMa: roughly(scaledMa(entryMa.endFed.none[band], facts.settled.powerW)),
    bothMa: roughly(scaledMa(entryMa.endFed.both[band], facts.settled.powerW)),
  });
}

/** √(100 W / 2450 Ω): the current at the end of a half-wave, and so on its counterpoise; 160 to 370 mA in the field solutions. */
const END_CURRENT_MA = 200;

const fourToOne = (): Dispute => dispute('D4', { cases: 45, gainDb: 0.1, costDb: 2.2 });

const resistiveOrReactive = (facts: Facts): Dispute =>
  dispute('D5', {
    ohm: reactiveMinimumOhm(facts),
    endFed: isEndFed(facts.system),
    powerW: facts.settled.powerW,
  });

/** Rise of the resonance of an inverted V at 9 m on 40 m with 120° and 90° between the legs, per cent, beside a flat dipole. */
const drooping = (facts: Facts): Dispute =>
  dispute('D6', { blunt: 0.5, right: 1.4, endHeightM: 0.06 * facts.bands[0].wavelengthM });

/** Median indoor current over systems and bands, mA per 100 W, lowest and highest. */
const earthOrder = (): Dispute =>
  dispute('D7', { earthFirstFrom: 1, earthFirstTo: 14, chokeFirstFrom: 2, chokeFirstTo: 22, earthOnlyTo: 99 });
