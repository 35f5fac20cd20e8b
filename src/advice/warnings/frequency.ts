/**
 * Frequencies that are not amateur, the power limit on 60 m, and numbers that look like another unit.
 *
 * Doubt about units is raised only where the other reading makes plain sense and the typed one does not, so that few answers are questioned
 * without cause: a focus that lies in an amateur band once divided by 1000; a told wire that is no half-wave of any wanted band, while the same
 * number in feet is one of the lowest band within 3 %, or is 2.5 times the span while the feet fit it; a height above 60 m.
 */

import { METRES_PER_FOOT } from '../../base/convert';
import { allocationAt, bandOf, sixtyMetreEirpW, usSixtyMetreChannels } from '../../catalog/bands';
import type { System } from '../../design/choices';
import { nthHalfWaveM } from '../../physics/lengths';
import { eirpW } from '../../physics/radiated-power';
import { mostGainDbi } from '../antenna-gain';
import type { BandFacts, Facts } from '../facts';
import type { Warning } from '../finding';
import { nearestHalfWave } from '../near-half-wave';
import { type Rule, warn } from './warning';

const looksLikeKhz = (frequencyMHz: number): boolean => bandOf(frequencyMHz / 1000) !== undefined;
const looksLikeHz = (frequencyMHz: number): boolean => bandOf(frequencyMHz / 1e6) !== undefined;

export const outsideBand: Rule = ({ facts }) => facts.bands.flatMap((at) => outside(facts, at));

function outside({ settled }: Facts, { band, focusMHz, edgesMHz }: BandFacts): Warning[] {
  if (looksLikeKhz(focusMHz) || looksLikeHz(focusMHz)) return [];
  const allocation = allocationAt(focusMHz, settled.region, settled.country ?? undefined);
  const data = { band, focusMHz, lowMHz: edgesMHz.lowMHz, highMHz: edgesMHz.highMHz, region: settled.region };
  const middleMHz = (edgesMHz.lowMHz + edgesMHz.highMHz) / 2;
  if (allocation === 'national-permission')
    return [warn('outside-band', data, ['check-licence', ['use-band', { middleMHz }]], 'national-permission')];
  if (allocation === 'amateur' && bandOf(focusMHz) === band) return [];
  return [warn('outside-band', data, [['use-band', { middleMHz }], 'change-region', 'drop-band'])];
}

/** Ground below a low wire adds up to about 4 dB straight up. */
const LOW_WIRE_DB = 3.85;
const US_CHANNEL_EIRP_W = 100 * 1.64;

export const powerLimit60m: Rule = ({ facts, dimensions }) => {
  const at = facts.bands.find(({ band }) => band === '60m');
  if (at === undefined) return [];
  const { powerW, country, radiator } = facts.settled;
  const gainDbi = mostGainDbi(facts, dimensions, at) + (radiator === 'vertical' ? 0 : LOW_WIRE_DB);
  const { centresMHz, widthMHz } = usSixtyMetreChannels.value;
  const onChannel = country === 'US' && centresMHz.some((centre) => Math.abs(at.focusMHz - centre) <= widthMHz / 2);
  const limitW = onChannel ? US_CHANNEL_EIRP_W : sixtyMetreEirpW.value;
  const sentW = eirpW(powerW, gainDbi, 0);
  if (sentW <= limitW) return [];
  const mostW = powerW * (limitW / sentW);
  return [
    warn('power-limit-60m', { powerW, gainDbi, sentW, limitW, mostW }, [
      ['less-power', { mostW }],
      'national-rule',
      'leave-60m',
    ]),
  ];
};

const TALLEST_M = 60;
const FEET_MATCH = 0.03;
const NO_MATCH = 0.08;
const TOO_LONG_FOR_SPAN = 2.5;

export const unitDoubt: Rule = ({ facts }) => [...frequencyDoubts(facts), ...wireDoubt(facts), ...heightDoubts(facts)];

/** Frequencies at which nothing of a wire antenna is worked out, MHz: below and above every band. */
const LOWEST_MHZ = 1;
const HIGHEST_MHZ = 60;

/** Why nothing can be worked out before a frequency is settled; empty when every frequency is one that wire antennas are cut for. */
export function frequencyRefusals(facts: Facts): readonly Warning[] {
  const astray = ({ focusMHz }: BandFacts): boolean => focusMHz < LOWEST_MHZ || focusMHz > HIGHEST_MHZ;
  if (!facts.bands.some(astray)) return [];
  return [...frequencyDoubts(facts), ...facts.bands.filter(astray).flatMap((at) => outside(facts, at))];
}

function frequencyDoubts(facts: Facts): Warning[] {
  return facts.bands.flatMap(({ band, focusMHz, edgesMHz }) => {
    const scale = looksLikeKhz(focusMHz) ? 1000 : looksLikeHz(focusMHz) ? 1e6 : null;
    if (scale === null) return [];
    const readMHz = focusMHz / scale;
    const middleMHz = (edgesMHz.lowMHz + edgesMHz.highMHz) / 2;
    const ways = [
      ['it-is', { readMHz }],
      ['use-middle', { middleMHz }],
    ] as const;
    return [
      warn('unit-doubt', { band, focusMHz, readMHz, unit: scale === 1000 ? 'kHz' : 'Hz' }, ways, 'frequency-unit'),
    ];
  });
}

const quarterSystems: readonly System[] = ['quarter-wave-vertical', 'inverted-l'];

/** Length a told wire would naturally have on a band, in half-waves. */
const natural = (system: System): number =>
  quarterSystems.includes(system) ? 0.5 : system === 'full-wave-loop' ? 2 : 1;

function wireDoubt(facts: Facts): Warning[] {
  const { wireLengthM, lengthChoice, spanM } = facts.settled;
  if (wireLengthM === null || lengthChoice !== 'fixed') return [];
  const feetM = wireLengthM * METRES_PER_FOOT;
  const kw = facts.wire.velocityFactor.value;
  const lowestM = natural(facts.system) * nthHalfWaveM(1, facts.bands[0].focusMHz, kw);
  const makesSense = facts.bands.some(
    ({ focusMHz }) => Math.abs(nearestHalfWave(wireLengthM, focusMHz, kw).offset) <= NO_MATCH,
  );
  const feetMatch = Math.abs(feetM / lowestM - 1) <= FEET_MATCH && !makesSense;
  const feetFit = spanM !== null && wireLengthM > TOO_LONG_FOR_SPAN * spanM && feetM <= spanM * 1.05;
  if (!feetMatch && !feetFit) return [];
  const ways = [
    ['is-feet', { readM: feetM }],
    ['is-metres', { metres: wireLengthM }],
  ] as const;
  return [
    warn('unit-doubt', { digits: wireLengthM, metres: wireLengthM, readM: feetM, fitM: lowestM }, ways, 'wire-unit'),
  ];
}

function heightDoubts(facts: Facts): Warning[] {
  const { heightM, endHeightM, supportHeightM } = facts.settled;
  const tallest = Math.max(heightM, endHeightM, supportHeightM);
  if (tallest <= TALLEST_M) return [];
  const readM = tallest * METRES_PER_FOOT;
  const ways = [
    ['is-feet', { readM }],
    ['is-metres', { metres: tallest }],
  ] as const;
  return [warn('unit-doubt', { digits: tallest, metres: tallest, readM }, ways, 'height-unit')];
}
