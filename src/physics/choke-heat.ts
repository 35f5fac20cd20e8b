/**
 * Temperature of a wound choke: core heat from common-mode current on the bare surface of the ring, and, on top of it, the heat that the power on
 * its way through leaves in the cable, on half of the cable's surface (the other half lies on the core or on its neighbour).
 *
 *   ΔT = ΔT(|I|² R / ring surface) + ΔT(lost part of P / half the cable's surface)      both by the law of core-heat.ts
 *
 * Adding the two errs on the careful side by about a quarter. Both grow as P^0.833, so the power at the rise limit follows at once.
 * Limits: as in core-heat.ts; SWR on the cable inside the choke would heat it more. The split of the surface is our judgement, no source.
 */
import type { ChokeNeed, HottestPlace } from './choke-need';
import { RISE_EXPONENT, RISE_LIMIT_K, temperatureRiseK } from './core-heat';
import { throughLossDbPerM, throughPowerUse, type WindingMaterial } from './wound-conductor';

type Thermal = { readonly riseK: number; readonly continuousW: number; readonly hottest: HottestPlace };

/** Heat that the power through the cable leaves in a metre of it, W, and the half of that metre's surface that lies free. */
function cableHeat(need: ChokeNeed, material: WindingMaterial, hz: number) {
  const lost = 1 - 10 ** (-throughLossDbPerM(material, hz) / 10);
  return {
    cableHeatW: need.powerW * need.averageFactor * lost,
    cableSurfaceM2: (Math.PI * material.outerM) / 2,
  };
}

/** Rise that the power through the cable makes by itself, K. */
export function cableRiseK(need: ChokeNeed, material: WindingMaterial, hz: number): number {
  const { cableHeatW, cableSurfaceM2 } = cableHeat(need, material, hz);
  return temperatureRiseK(cableHeatW, cableSurfaceM2, need.housing);
}

/** Part used of what the cable stands by itself: its maker's rating, and the rise limit. */
export const cablePowerUse = (need: ChokeNeed, material: WindingMaterial): number =>
  Math.max(
    ...need.points.map(({ hz }) =>
      Math.max(
        throughPowerUse(material, hz, need.powerW * need.averageFactor),
        cableRiseK(need, material, hz) / RISE_LIMIT_K,
      ),
    ),
  );

/** Rise at each point for the hottest core's average heat there, W; the worst of them, and the steady power that brings it to the limit. */
export function chokeThermal(
  need: ChokeNeed,
  material: WindingMaterial,
  coreSurfaceM2: number,
  coreHeatW: readonly number[],
): Thermal {
  const risesK = need.points.map(
    ({ hz }, i) => temperatureRiseK(coreHeatW[i] ?? 0, coreSurfaceM2, need.housing) + cableRiseK(need, material, hz),
  );
  const riseK = Math.max(...risesK);
  const point = risesK.indexOf(riseK);
  const cable = cableHeat(need, material, need.points[point]?.hz ?? Number.NaN);
  return {
    riseK,
    continuousW: need.powerW * need.averageFactor * (RISE_LIMIT_K / riseK) ** (1 / RISE_EXPONENT),
    hottest: { point, coreHeatW: coreHeatW[point] ?? 0, coreSurfaceM2, ...cable },
  };
}
