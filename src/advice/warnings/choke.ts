/** Chokes: what the planned one must stand, and what those on hand can do there. */
import { magnitude } from '../../base/complex';
import { beadForCable } from '../../catalog/beads';
import { coreOf } from '../../catalog/cores';
import { isCoax } from '../../catalog/line-ids';
import type { PartOnHand } from '../../design/answers';
import { closeWound } from '../../physics/air-coil';
import { evaluateBeads, evaluateChoke, evaluateCoil } from '../../physics/choke-evaluate';
import type { ChokeNeed, ChokeResult } from '../../physics/choke-need';
import { RISE_LIMIT_K } from '../../physics/core-heat';
import { coaxToWind } from '../../physics/wound-conductor';
import { antennaChokeOhm, reactiveMinimumOhm } from '../chain/choke-minimum';
import { COUNTERPOISE_WAVES } from '../choke-distance';
import { chokeSource } from '../choke-source';
import { fieldOf } from '../field-facts';
import type { Link, Warning } from '../finding';
import { type Judged, type Rule, type Way, warn } from './warning';

/** Shield voltage that asks for a choke made for it, V rms. A well-made ring choke stands it; a small one heats. House position. */
const HIGH_VOLTAGE_V = 250;
/** More ohms than these gain little. Source: own field solutions with 5 and 10 kΩ. */
const AMPLE_OHM = 10_000;

/** So little warms no ring of the list; a 36 mm ring gives off 3 W at 40 °C above the air. Common practice. */
const COLD_W = 1;

/** The choke nearest to the antenna, where there is coax. */
const antennaChoke = ({ facts, chain }: Judged): Link | undefined =>
  facts.lineKind === 'coax' ? chain.find(({ device }) => device === 'choke') : undefined;

const worst = <T>(list: readonly T[], of: (item: T) => number): T | undefined =>
  list.reduce<T | undefined>((most, item) => (most === undefined || of(item) > of(most) ? item : most), undefined);

/** The planned choke nearest to the antenna, by what it has and what drives it there. */
export const chokeAtVoltageMaximum: Rule = (judged) => {
  const choke = antennaChoke(judged);
  const most = worst(choke?.figures?.bands ?? [], ({ voltageV }) => voltageV ?? 0);
  if (choke === undefined || most?.voltageV == null || most.voltageV < HIGH_VOLTAGE_V) return [];
  const { settled, system, bands } = judged.facts;
  const data = {
    band: most.band,
    voltageV: most.voltageV,
    heatW: most.heatW ?? 0,
    ohm: choke.minimumOhm ?? 0,
    hasOhm: most.ohm?.nominal ?? 0,
    powerW: settled.powerW,
    distanceM: choke.distanceM ?? 0,
  };
  const further: readonly Way[] =
    system === 'end-fed-half-wave' ? [['choke-further', { distanceM: 0.1 * bands[0].wavelengthM }]] : [];
  const more: readonly Way[] =
    data.heatW < COLD_W ? ['apart'] : data.hasOhm < AMPLE_OHM ? ['more-ohms'] : ['air-and-core'];
  return [warn('choke-at-voltage-maximum', data, [...more, ...further, 'less-power'])];
};

/** A planned choke that no build of the catalogue brings to the ohms it needs. */
export const plannedChokeShort: Rule = ({ chain }) =>
  chain.flatMap(({ device, at, figures }): Warning[] => {
    const short = figures?.shortfalls.find(({ code }) => code === 'short-ohms' || code === 'short-reactive');
    if (device !== 'choke' || short === undefined) return [];
    const data = { ...short.data, at, isReactive: short.code === 'short-reactive' };
    return [warn('choke-too-small', data, ['two-in-series', 'fewer-bands'], 'planned-choke-too-small')];
  });

function needOf({ facts, dimensions, field }: Judged): ChokeNeed {
  return {
    minimumOhm: antennaChokeOhm(facts),
    reactiveMinimumOhm: reactiveMinimumOhm(facts),
    points: facts.bands.map((at) => ({
      hz: at.focusMHz * 1e6,
      source: chokeSource(facts, dimensions, at, facts.settled.powerW, fieldOf(field, at.band).chokeSources?.antenna),
    })),
    powerW: facts.settled.powerW,
    averageFactor: facts.averageW / facts.settled.powerW,
    housing: 'free-air',
    conductors: [],
    onHand: [],
  };
}

/** What a part on hand does as the antenna-end choke; null when it is no choke, or wound of something that is no coax. */
function resultOf(part: PartOnHand, need: ChokeNeed): ChokeResult | null {
  if (part.part !== 'choke' && part.part !== 'beads' && part.part !== 'coil') return null;
  if (!isCoax(part.line)) return null;
  const cable = coaxToWind(part.line);
  if (part.part === 'choke') {
    return evaluateChoke(need, {
      core: coreOf(part.core).id,
      count: part.count,
      turns: [part.turns],
      conductor: cable,
    });
  }
  if (part.part === 'coil') return evaluateCoil(need, closeWound(part.turns, part.diameterM, cable.outerM), cable);
  const bead = beadForCable(cable.outerM);
  const [mix] = bead?.mixes ?? [];
  return bead === undefined || mix === undefined ? null : evaluateBeads(need, bead, mix, part.count, cable);
}

/** Chokes on hand, judged at the antenna end; a reactive one by its own rule. */
export const chokesOnHand: Rule = (judged) => {
  const { facts } = judged;
  if (facts.lineKind !== 'coax') return [];
  const need = needOf(judged);
  return facts.settled.onHand.flatMap((part, index) => {
    const result = resultOf(part, need);
    return result === null ? [] : judgeResult(judged, part, index, result);
  });
};

function judgeResult({ facts }: Judged, part: PartOnHand, index: number, result: ChokeResult): Warning[] {
  const found: Warning[] = [];
  const named = { part: index, partKind: part.part };
  const ratios = facts.bands.flatMap((at, i) => {
    const point = result.points[i];
    return point === undefined ? [] : [{ at, point, ohm: magnitude(point.impedance.nominal) }];
  });
  const weakest = worst(
    ratios.filter(({ point }) => !point.isReactive),
    ({ ohm, point }) => point.neededOhm / ohm,
  );
  const reactive = worst(
    ratios.filter(({ point }) => point.isReactive),
    ({ ohm, point }) => point.neededOhm / ohm,
  );
  if (weakest !== undefined && weakest.ohm < weakest.point.neededOhm) {
    const data = { ...named, band: weakest.at.band, ohm: weakest.ohm, neededOhm: weakest.point.neededOhm };
    found.push(warn('choke-too-small', data, ['more-turns-or-cores', 'at-radio', 'use-planned']));
  }
  if (reactive !== undefined && reactive.ohm < reactive.point.neededOhm) {
    const data = { ...named, band: reactive.at.band, ohm: reactive.ohm, neededOhm: reactive.point.neededOhm };
    found.push(warn('reactive-choke', data, ['lossy-core', 'use-planned']));
  }
  if (result.riseK !== null && result.riseK > RISE_LIMIT_K) {
    const mostW = result.safePowerW ?? 0;
    const data = { ...named, riseK: result.riseK, limitK: RISE_LIMIT_K, mostW, powerW: facts.settled.powerW };
    found.push(
      warn('choke-too-small', data, [['less-power', { mostW }], 'more-turns-or-cores', 'use-planned'], 'choke-too-hot'),
    );
  }
  return found;
}

export const lineUnderWire: Rule = ({ facts }) =>
  facts.lineKind === 'coax' && facts.settled.feedLineRoute === 'along'
    ? [warn('line-under-wire', { powerW: facts.settled.powerW }, ['re-route', 'choke-at-entry'])]
    : [];

export const lineShorterThanCounterpoise: Rule = ({ facts }) => {
  const { returnPath, feedLineLengthM } = facts.settled;
  if (facts.system !== 'end-fed-half-wave' && facts.system !== 'non-resonant-end-fed') return [];
  if (facts.lineKind !== 'coax' || returnPath !== 'coax-shield') return [];
  const [lowest] = facts.bands;
  const neededM = COUNTERPOISE_WAVES * lowest.wavelengthM;
  if (feedLineLengthM >= neededM) return [];
  const ways = [
    ['counterpoise-wire', { lengthM: neededM }],
    ['longer-line', { lengthM: neededM }],
  ] as const;
  return [warn('line-shorter-than-counterpoise', { lineM: feedLineLengthM, neededM, band: lowest.band }, ways)];
};
