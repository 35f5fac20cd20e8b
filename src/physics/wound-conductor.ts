/**
 * Coax, wire or a pair of wires as something to wind on a core: its diameters, what lies around the metal, its weight.
 *
 * Jackets from memory of makers' sheets: polyvinyl chloride 3.5, polyethylene 2.3, fluoropolymer 2.1. Coax densities are weight over section
 * (38 kg/km for 4.95 mm polyethylene coax, 16 kg/km for 2.5 mm fluoropolymer coax), ±15 %.
 */
import { InputError } from '../base/input-error';
import { type CoaxId, type FeedLineId, isCoax, isOpenWireLine } from '../catalog/line-ids';
import { coaxes } from '../catalog/lines';
import type { WireId } from '../catalog/wire-ids';
import { wires } from '../catalog/wires';
import { lineDataOf, lineLimitsOf } from './catalogue-line';
import type { WoundConductor } from './conductor-on-core';
import { attenuationDbPer100M, DB_PER_NEPER } from './line';
import { wireResistanceOhmPerM } from './skin-effect';
import { twoWireZ0Ohm } from './two-wire-line';

export interface WindingMaterial extends WoundConductor {
  readonly id: CoaxId | WireId;
  readonly kind: 'coax' | 'wire' | 'pair';
  readonly massKgPerM: number;
  /** Smallest centre-line radius, m, by the maker and when wound on a core; null when the conductor bends as it likes. */
  readonly minBendRadiusM: number | null;
  readonly leastWoundRadiusM: number | null;
}

/**
 * Winding is bending once and leaving it: solid cables take 0.3 of the maker's radius, which is what 5 mm coax on a 61 mm ring comes to (common
 * practice, no source). Foam gives way under the inner conductor, so foam cables keep the maker's radius.
 */
const SOLID_BEND_PART = 0.3;
const FOAM_COAX: ReadonlySet<CoaxId> = new Set([
  'rg-8x',
  'rg-6',
  'foam-6.1mm',
  'foam-10.3mm',
  'foam-15mm',
  'foam-10.2mm-flexible',
]);
const PTFE_COAX: ReadonlySet<CoaxId> = new Set(['rg-316', 'rg-142', 'rg-400']);
const PE_JACKET_COAX: ReadonlySet<CoaxId> = new Set(['foam-6.1mm', 'foam-10.3mm', 'foam-15mm', 'foam-10.2mm-flexible']);

export function coaxToWind(id: CoaxId): WindingMaterial {
  const { outerDiameterM, shieldRadiusM, minBendRadiusM } = coaxes[id];
  const ptfe = PTFE_COAX.has(id);
  const jacket = PE_JACKET_COAX.has(id) ? 2.3 : 3.5;
  return {
    id,
    kind: 'coax',
    outerM: outerDiameterM.value,
    metalM: 2 * shieldRadiusM.value,
    epsilonR: ptfe ? 2.1 : jacket,
    massKgPerM: (ptfe ? 3300 : 1950) * (Math.PI / 4) * outerDiameterM.value ** 2,
    minBendRadiusM: minBendRadiusM.value,
    leastWoundRadiusM: minBendRadiusM.value * (FOAM_COAX.has(id) ? 1 : SOLID_BEND_PART),
  };
}

/** One insulated wire. Bare wire would short its own turns, so it is refused. */
export function wireToWind(id: WireId): WindingMaterial {
  const { insulation, diameterM, massKgPerM } = wires[id];
  if (insulation === null) throw new InputError('bare-wire-cannot-be-wound', { wire: id });
  return {
    id,
    kind: 'wire',
    outerM: diameterM.value + 2 * insulation.thicknessM.value,
    metalM: diameterM.value,
    epsilonR: insulation.epsilonR.value,
    massKgPerM: massKgPerM.value,
    minBendRadiusM: null,
    leastWoundRadiusM: null,
  };
}

/** Two equal insulated wires side by side, wound as one flat ribbon: its width counts in the hole. */
export function pairToWind(id: WireId): WindingMaterial {
  const one = wireToWind(id);
  return {
    ...one,
    kind: 'pair',
    outerM: 2 * one.outerM,
    metalM: one.outerM + one.metalM,
    massKgPerM: 2 * one.massKgPerM,
  };
}

/**
 * Matched loss of what passes through the winding, dB per m: coax by its own attenuation, a pair by the skin resistance of its wires on its own Z0.
 * Source of the second: Pozar, Microwave Engineering, 4th ed., §2.7. One wire alone carries nothing through: zero.
 */
export function throughLossDbPerM(material: WindingMaterial, hz: number): number {
  if (isCoax(material.id)) return attenuationDbPer100M(lineDataOf(coaxes[material.id]), hz) / 100;
  if (material.kind === 'wire') return 0;
  const { diameterM, conductivitySPerM } = wires[material.id];
  const one = wireToWind(material.id);
  const ohmPerM = 2 * wireResistanceOhmPerM(hz, diameterM.value, conductivitySPerM.value);
  return (DB_PER_NEPER * ohmPerM) / (2 * twoWireZ0Ohm(one.outerM, one.metalM, one.epsilonR));
}

/** Part used of the cable's power rating by `averageW` on a matched line; 0 for wire, whose loss counts as heat elsewhere. */
export function throughPowerUse({ id }: WindingMaterial, hz: number, averageW: number): number {
  if (!isCoax(id)) return 0;
  const { powerW, ratedAtHz } = lineLimitsOf(coaxes[id]);
  const line = lineDataOf(coaxes[id]);
  return powerW === null
    ? 0
    : (averageW * attenuationDbPer100M(line, hz)) / attenuationDbPer100M(line, ratedAtHz) / powerW;
}

/**
 * What to offer a choke's winding: the feed line itself, then the fluoropolymer coaxes that bend and stand heat; for open lines a wire pair, the
 * thicker one first. A metre of 50 Ω coax in a 75 Ω line changes its SWR by less than the line's own tolerance below 15 MHz, a little above.
 */
export function chokeConductors(feedLine: FeedLineId): WindingMaterial[] {
  if (isOpenWireLine(feedLine)) return [pairToWind('pvc-awg14'), pairToWind('ptfe-awg22')];
  const fine: readonly CoaxId[] = ['rg-400', 'rg-316'];
  const own = feedLine === 'none' ? [] : [feedLine];
  return [...own, ...fine.filter((id) => id !== feedLine)].map(coaxToWind);
}
