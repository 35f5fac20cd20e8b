/**
 * From turns on a stack of rings to the electrical model: how much wire, how it is laid, leakage, strays, copper.
 *
 * Wires wound as one (two for 4:1, three for 9:1) where the turns ratio is 2 or 3 and the windings join; else two windings, the low side spread
 * over 20° of the ring per turn. One layer. Wound wire is taken to have 1.5 times the resistance of straight wire (order of size, no source).
 */
import type { Core, RingSize } from '../catalog/cores';
import type { WireId } from '../catalog/wire-ids';
import { wires } from '../catalog/wires';
import { conductorLengthM, turnLengthM, turnsThatFit } from './conductor-on-core';
import { autoPart, LEAD_H, multifilarLeakageH, spacedLeakageH } from './leakage';
import type { TransformerModel } from './transformer';
import type { TransformerBuild, TransformerNeed, WindingKind } from './transformer-need';
import { windingCapacitanceF } from './winding-capacitance';
import { type WindingMaterial, wireToWind } from './wound-conductor';

/** Fluoropolymer insulation stands the heat and the volts. */
export const WINDING_WIRE: WireId = 'ptfe-awg22';
export const WIRE: WindingMaterial = wireToWind(WINDING_WIRE);
/** Wire left at each end of a winding, m. */
export const TRANSFORMER_TAIL_M = 0.1;
const SECTOR_DEG_PER_TURN = 20;
const PROXIMITY_FACTOR = 1.5;

export interface Windings {
  readonly strands: number;
  readonly primaryLengthM: number;
  readonly secondaryLengthM: number;
  readonly conductorLengthM: number;
}

/** Turns that pass the hole: an autotransformer's high side contains its low side. */
const turnsInHole = (winding: WindingKind, primaryTurns: number, secondaryTurns: number): number =>
  winding === 'auto' ? secondaryTurns : primaryTurns + secondaryTurns;

export const fitsInHole = (
  winding: WindingKind,
  core: RingSize,
  primaryTurns: number,
  secondaryTurns: number,
): boolean => turnsInHole(winding, primaryTurns, secondaryTurns) <= turnsThatFit(core, WIRE.outerM);

export function windingsOf(need: TransformerNeed, core: Core, build: TransformerBuild): Windings {
  const { primaryTurns, secondaryTurns, count } = build;
  const turnsRatio = secondaryTurns / primaryTurns;
  const strands = need.winding === 'auto' && (turnsRatio === 2 || turnsRatio === 3) ? turnsRatio : 1;
  const turnM = turnLengthM(core, count, WIRE.outerM);
  const pieces = strands > 1 ? strands : 2;
  const woundTurns = turnsInHole(need.winding, primaryTurns, secondaryTurns);
  return {
    strands,
    primaryLengthM: primaryTurns * turnM,
    secondaryLengthM: secondaryTurns * turnM,
    conductorLengthM: conductorLengthM(core, count, woundTurns, WIRE.outerM, pieces * TRANSFORMER_TAIL_M),
  };
}

export function modelOf(
  need: TransformerNeed,
  core: Core,
  build: TransformerBuild,
  windings: Windings,
): TransformerModel {
  const { primaryTurns, secondaryTurns, count } = build;
  const n = secondaryTurns / primaryTurns;
  const auto = need.winding === 'auto';
  const part = auto ? autoPart(n) : 1;
  const separate = spacedLeakageH(core, count, primaryTurns, Math.min(360, primaryTurns * SECTOR_DEG_PER_TURN));
  const sideBySide = multifilarLeakageH(WIRE, windings.primaryLengthM);
  const continuing = auto ? windings.secondaryLengthM - windings.primaryLengthM : windings.secondaryLengthM;
  return {
    ring: core,
    count,
    primaryTurns,
    secondaryTurns,
    leakageH: LEAD_H + part * (windings.strands > 1 ? sideBySide : separate),
    strayF: windingCapacitanceF(WIRE, secondaryTurns, windings.secondaryLengthM / secondaryTurns),
    compensationF: 0,
    wire: { diameterM: WIRE.metalM, conductivitySPerM: wires[WINDING_WIRE].conductivitySPerM.value },
    copperLengthM: PROXIMITY_FACTOR * (part * windings.primaryLengthM + continuing / n ** 2),
  };
}
