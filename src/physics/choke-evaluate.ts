/**
 * One choke on one need: impedance with its band of uncertainty, duty, heat, band by band, and which limit it misses.
 *
 * Limits used: 40 K of rise (makers' usual figure for free air), the cable's power rating, and the bend that wound-conductor.ts allows the cable.
 */
import { magnitude } from '../base/complex';
import type { Bead } from '../catalog/beads';
import type { Mix } from '../catalog/core-ids';
import { coreOf, type RingSize } from '../catalog/cores';
import { muAt } from '../catalog/ferrites';
import { type AirCoil, coilBand, coilCableM } from './air-coil';
import { bandsInSeries, beadsBand, chokeBand, chokeDuty, type ImpedanceBand, isMostlyReactive } from './choke';
import { cablePowerUse, chokeThermal } from './choke-heat';
import type { ChokeBuild, ChokeDesign, ChokeNeed, ChokePoint, ChokeResult, ChokeShortfall } from './choke-need';
import { bendRadiusM, conductorLengthM, turnsThatFit } from './conductor-on-core';
import { RISE_LIMIT_K } from './core-heat';
import { permeabilityTolerance } from './core-tolerance';
import { powerByMode } from './mode-power';
import { stackMassKg, stackSurfaceM2 } from './toroid';
import { throughLossDbPerM, type WindingMaterial } from './wound-conductor';

/** Cable left at each end of a winding. */
export const TAIL_M = 0.15;

interface Body {
  /** Impedance band of the whole, and R of its hottest core at each point. */
  readonly bands: readonly ImpedanceBand[];
  readonly hottestROhm: readonly number[];
  readonly surfaceM2: number | null;
  readonly massKg: number;
  readonly conductor: WindingMaterial;
  readonly conductorLengthM: number;
  readonly limits: Readonly<Partial<Record<ChokeShortfall, number>>>;
}

/** Wound cores, one or two windings in series. */
export function evaluateChoke(need: ChokeNeed, build: ChokeBuild): ChokeDesign {
  const core = coreOf(build.core);
  const { conductor, count, turns } = build;
  const tolerance = permeabilityTolerance(core);
  const parts = need.points.map(({ hz }) =>
    turns.map((n) => chokeBand({ ring: core, count, turns: n, conductor }, muAt(core.mix, hz), hz, tolerance)),
  );
  const fit = turnsThatFit(core, conductor.outerM);
  const radiusM = bendRadiusM(core, count, conductor.outerM);
  const bendPart = conductor.minBendRadiusM === null ? null : radiusM / conductor.minBendRadiusM;
  const lengthM = turns.reduce((sum, n) => sum + conductorLengthM(core, count, n, conductor.outerM, TAIL_M), 0);
  const result = judge(need, {
    bands: parts.map(bandsInSeries),
    hottestROhm: parts.map((bands) => Math.max(...bands.map((band) => band.nominal.re))),
    surfaceM2: stackSurfaceM2(core, count),
    massKg: stackMassKg(core, count * turns.length) + lengthM * conductor.massKgPerM,
    conductor,
    conductorLengthM: lengthM,
    limits: {
      bend: bendUse(core, count, conductor),
      'does-not-fit': Math.max(...turns) <= fit ? 0 : Number.POSITIVE_INFINITY,
    },
  });
  return { ...build, ...result, coreCount: count * turns.length, bendRadiusM: radiusM, bendPart, turnsThatFit: fit };
}

/** Beads threaded on the cable. Every bead carries its own share of the heat. */
export function evaluateBeads(
  need: ChokeNeed,
  bead: Bead,
  mix: Mix,
  count: number,
  cable: WindingMaterial,
): ChokeResult {
  const size = bead.size.value;
  const tolerance = permeabilityTolerance({ mix, outsideDiameterM: size.outsideDiameterM });
  const bands = need.points.map(({ hz }) => beadsBand(size, count, muAt(mix, hz), hz, tolerance));
  const lengthM = count * size.heightM + 2 * TAIL_M;
  return judge(need, {
    bands,
    hottestROhm: bands.map((band) => band.nominal.re / count),
    surfaceM2: stackSurfaceM2(size, 1),
    massKg: stackMassKg(size, count) + lengthM * cable.massKgPerM,
    conductor: cable,
    conductorLengthM: lengthM,
    limits: { 'does-not-fit': cable.outerM <= size.insideDiameterM ? 0 : Number.POSITIVE_INFINITY },
  });
}

/** A single-layer coil of coax without a core. */
export function evaluateCoil(need: ChokeNeed, coil: AirCoil, cable: WindingMaterial): ChokeResult {
  const lengthM = coilCableM(coil) + 2 * TAIL_M;
  return judge(need, {
    bands: need.points.map(({ hz }) => coilBand(coil, hz)),
    hottestROhm: need.points.map(() => 0),
    surfaceM2: null,
    massKg: lengthM * cable.massKgPerM,
    conductor: cable,
    conductorLengthM: lengthM,
    limits: { bend: (cable.leastWoundRadiusM ?? 0) / (coil.diameterM / 2) },
  });
}

/** |Z| that a band asks for: more from a choke that is mostly reactance. */
export const neededOhm = (need: ChokeNeed, rOhm: number, xOhm: number): number =>
  isMostlyReactive(rOhm, xOhm) ? Math.max(need.minimumOhm, need.reactiveMinimumOhm) : need.minimumOhm;

/** Part used of the tightest bend allowed; 0 for wire. */
export const bendUse = (core: RingSize, count: number, { outerM, leastWoundRadiusM }: WindingMaterial): number =>
  leastWoundRadiusM === null ? 0 : leastWoundRadiusM / bendRadiusM(core, count, outerM);

function judge(need: ChokeNeed, body: Body): ChokeResult {
  const points = need.points.map(({ hz, source }, i): ChokePoint => {
    const impedance = body.bands[i] as ImpedanceBand;
    const duty = source === null ? null : chokeDuty(impedance.nominal, source);
    return {
      hz,
      impedance,
      isReactive: isMostlyReactive(impedance.nominal.re, impedance.nominal.im),
      neededOhm: neededOhm(need, impedance.nominal.re, impedance.nominal.im),
      lossDb: throughLossDbPerM(body.conductor, hz) * body.conductorLengthM,
      voltageV: duty?.voltageV ?? null,
      currentA: duty?.currentA ?? null,
      heatW: duty === null ? null : duty.heatW * need.averageFactor,
    };
  });
  const misses = (of: ChokePoint[]): number =>
    Math.max(0, ...of.map((point) => point.neededOhm / magnitude(point.impedance.nominal)));
  const thermal = thermalOf(need, body, points);
  const uses: Readonly<Partial<Record<ChokeShortfall, number>>> = {
    ...body.limits,
    impedance: misses(points.filter((point) => !point.isReactive)),
    reactive: misses(points.filter((point) => point.isReactive)),
    heat: thermal.riseK === null ? 0 : thermal.riseK / RISE_LIMIT_K,
    'cable-power': cablePowerUse(need, body.conductor),
  };
  return {
    points,
    leastOhm: Math.min(...points.map((point) => magnitude(point.impedance.nominal))),
    leastCertainOhm: Math.min(...points.map((point) => point.impedance.ohm[0])),
    ...thermal,
    massKg: body.massKg,
    conductorLengthM: body.conductorLengthM,
    shortfalls: (Object.keys(uses) as ChokeShortfall[]).filter((key) => (uses[key] ?? 0) > 1),
    excess: Math.max(...Object.values(uses)),
  };
}

type Thermal = Pick<ChokeResult, 'riseK' | 'continuousW' | 'safePowerW' | 'safePowerByMode' | 'hottest'>;

/** Heat of the hottest core over the bands that have a source, and of the cable around it. */
function thermalOf(
  need: ChokeNeed,
  { surfaceM2, hottestROhm, conductor }: Body,
  points: readonly ChokePoint[],
): Thermal {
  const amps = points.map((point) => point.currentA);
  if (surfaceM2 === null || amps.every((a) => a === null)) {
    return { riseK: null, continuousW: null, safePowerW: null, safePowerByMode: null, hottest: null };
  }
  const coreHeatW = amps.map((a, i) => (a ?? 0) ** 2 * (hottestROhm[i] ?? 0) * need.averageFactor);
  const { riseK, continuousW, hottest } = chokeThermal(need, conductor, surfaceM2, coreHeatW);
  const safePowerW = continuousW / need.averageFactor;
  return { riseK, continuousW, safePowerW, safePowerByMode: powerByMode(continuousW), hottest };
}
