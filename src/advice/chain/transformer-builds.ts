/**
 * Transformers by rule of thumb, on 61 mm rings of mix 43.
 *
 * 49:1: 3 turns on the line side and 21 on the wire side, one ring to 30 W average, two to 120 W, three to 250 W, four above, where only a
 * design measured under that duty should be trusted. The other ratios have enough turns that the ring hardly warms. 100 pF across the line
 * side of a high ratio cancels its leakage above 14 MHz. Source: common practice.
 */
import { type Band, bandIds } from '../../catalog/bands';
import { coreOf } from '../../catalog/cores';
import { wires } from '../../catalog/wires';
import { conductorLengthM } from '../../physics/conductor-on-core';
import type { Facts } from '../facts';
import type { BuildFinding } from '../finding';
import { keyedAverageW } from '../heating-power';

/** Turns on the line side and on the antenna side, one part of the other. */
const turnsFor: Readonly<Record<string, readonly [number, number]>> = {
  '0.25': [12, 6],
  '0.5': [10, 7],
  '1.5': [9, 11],
  '2': [7, 10],
  '4': [9, 18],
  '6': [7, 17],
  '9': [8, 24],
  '12': [6, 21],
  '16': [5, 20],
  '49': [3, 21],
  '64': [3, 24],
};
const HIGH_RATIO = 12;
const CAPACITOR_PF = 100;
const CORE = 'ft240-43';
const SMALL_CORE = 'ft114-43';
const SMALL_CORE_W = 10;
/** Most a rule of thumb should be trusted with, average W. */
const MEASURED_DESIGN_W = 400;
const TAIL_M = 0.1;
const WINDING_WIRE = 'ptfe-awg22';

export function ruleOfThumbTransformer(facts: Facts, ratio: number, balancedIn: boolean): BuildFinding {
  const averageW = keyedAverageW(facts);
  const high = ratio >= HIGH_RATIO;
  const [turns, secondaryTurns] = turnsFor[String(ratio)] ?? [9, 18];
  const core = high && facts.settled.powerW <= SMALL_CORE_W ? SMALL_CORE : CORE;
  const count = ringsFor(averageW, high);
  const capacitorPf = high && facts.bands.some(({ band }) => isAbove20m(band)) ? CAPACITOR_PF : null;
  const wire = wires[WINDING_WIRE];
  const wireOuterM = wire.diameterM.value + 2 * (wire.insulation?.thicknessM.value ?? 0);
  const conductorM = conductorLengthM(coreOf(core), count, Math.max(turns, secondaryTurns), wireOuterM, TAIL_M);
  return {
    code: averageW > MEASURED_DESIGN_W ? 'transformer-beyond-rule' : windingOf(ratio, balancedIn),
    data: {
      core,
      count,
      turns,
      secondaryTurns,
      conductor: WINDING_WIRE,
      conductorM,
      capacitorPf: capacitorPf ?? 0,
      averageW,
      mostW: MEASURED_DESIGN_W,
    },
    core,
    count,
    turns,
    secondaryTurns,
    conductor: WINDING_WIRE,
    conductorLengthM: conductorM,
    capacitorPf,
    box: 'vented-box',
  };
}

/** A 4:1 with the shield at the middle of its antenna winding; other balanced ratios take two windings that touch nowhere. */
export function windingOf(ratio: number, balancedIn: boolean): string {
  if (!balancedIn) return 'transformer-autotransformer';
  return ratio === 4 ? 'transformer-centre-tapped' : 'transformer-two-windings';
}

function ringsFor(averageW: number, high: boolean): number {
  if (!high) return averageW <= 120 ? 1 : 2;
  if (averageW <= 30) return 1;
  if (averageW <= 120) return 2;
  return averageW <= 250 ? 3 : 4;
}

const isAbove20m = (band: Band): boolean => bandIds.indexOf(band) > bandIds.indexOf('20m');
