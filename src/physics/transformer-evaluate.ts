/**
 * One transformer build on one need: loss, standing-wave ratio, heat, flux, volts, band by band, and which limit it overruns.
 *
 * Limits used, all common practice without a source: 1 dB of loss and SWR 1.6 into the load the ratio is made for, 40 K of rise, half of
 * the flux density at the maker's test field, a quarter-wave of wire on the high side. One layer; wire tails 0.1 m.
 */
import { complex } from '../base/complex';
import { C0 } from '../base/constants';
import { type Core, coreOf, type RingSize } from '../catalog/cores';
import { ferrites, muAt, type Permeability } from '../catalog/ferrites';
import { type WireId, wires } from '../catalog/wires';
import { conductorLengthM, turnLengthM, turnsThatFit } from './conductor-on-core';
import { heatForRiseW, temperatureRiseK } from './core-heat';
import { permeabilityTolerance } from './core-tolerance';
import { autoPart, LEAD_H, LEAKAGE_FACTOR, multifilarLeakageH, spacedLeakageH } from './leakage';
import { swr } from './line';
import { stackMassKg, stackSurfaceM2 } from './toroid';
import { capacitorA, type TransformerModel, transformerFluxT, transformerState } from './transformer';
import type {
  TransformerBuild,
  TransformerDesign,
  TransformerNeed,
  TransformerPoint,
  TransformerShortfall,
  WindingKind,
} from './transformer-need';
import { windingCapacitanceF } from './winding-capacitance';
import { type WindingMaterial, wireToWind } from './wound-conductor';

export const MAX_LOSS_DB = 1;
export const MAX_SWR = 1.6;
export const RISE_LIMIT_K = 40;
const MAX_WINDING_WAVELENGTHS = 0.25;
const FLUX_PART = 0.5;
const TAIL_M = 0.1;
/** Spread of the low side around the ring. */
const SECTOR_DEG_PER_TURN = 20;
/** Wound wire has more resistance than straight wire: order of size, no source. */
const PROXIMITY_FACTOR = 1.5;
/** Fluoropolymer insulation stands the heat and the volts. */
export const WINDING_WIRE: WireId = 'ptfe-awg22';
const WIRE: WindingMaterial = wireToWind(WINDING_WIRE);
/** Values that capacitors are sold in, pF. */
export const CAPACITORS_PF = [0, 22, 33, 47, 56, 68, 82, 100, 120, 150, 180, 220, 270, 330] as const;

interface Windings {
  readonly strands: number;
  readonly primaryLengthM: number;
  readonly secondaryLengthM: number;
  readonly conductorLengthM: number;
}

/** Judge one build. `capacitorPf` is chosen when left out. */
export function evaluateTransformer(
  need: TransformerNeed,
  build: TransformerBuild,
  capacitorPf?: number,
): TransformerDesign {
  const core = coreOf(build.core);
  const windings = windingsOf(need, core, build);
  const bare = modelOf(need, core, build, windings);
  const capacitor = capacitorPf ?? capacitorFor(need, core, bare);
  const model: TransformerModel = { ...bare, compensationF: capacitor * 1e-12 };
  const surfaceM2 = stackSurfaceM2(core, build.count);
  const points = need.points.map((point) => pointOf(need, core, model, windings, surfaceM2, point));
  const worst = (of: (point: TransformerPoint) => number): number => Math.max(...points.map(of));
  const heatW = worst((point) => point.coreHeatW + point.copperHeatW);
  const continuousW = (need.powerW * need.averageFactor * heatForRiseW(RISE_LIMIT_K, surfaceM2, need.housing)) / heatW;
  const fluxUse = worst((point) => point.fluxDensityT) / (FLUX_PART * ferrites[core.mix].saturation100CT.value);
  const uses: Readonly<Record<TransformerShortfall, number>> = {
    loss: worst((point) => point.lossNominalDb) / MAX_LOSS_DB,
    swr: worst((point) => point.swrNominal) / MAX_SWR,
    heat: worst((point) => point.riseK) / RISE_LIMIT_K,
    flux: fluxUse,
    'winding-too-long': worst((point) => point.windingWavelengths) / MAX_WINDING_WAVELENGTHS,
    'does-not-fit': fitsInHole(need.winding, core, build) ? 0 : Number.POSITIVE_INFINITY,
  };
  const highPeakV = worst((point) => point.highPeakV);
  return {
    ...build,
    ratio: (build.secondaryTurns / build.primaryTurns) ** 2,
    winding: need.winding,
    strands: windings.strands,
    conductor: WINDING_WIRE,
    primaryLengthM: windings.primaryLengthM,
    secondaryLengthM: windings.secondaryLengthM,
    conductorLengthM: windings.conductorLengthM,
    capacitorPf: capacitor,
    leakageH: model.leakageH,
    leakageFactor: LEAKAGE_FACTOR,
    points,
    heatW,
    riseK: temperatureRiseK(heatW, surfaceM2, need.housing),
    riseWorstK: temperatureRiseK(heatW * (1 + permeabilityTolerance(core).above), surfaceM2, need.housing),
    continuousW,
    safePowerW: Math.min(continuousW / need.averageFactor, need.powerW / fluxUse ** 2),
    highPeakV,
    peakVPerTurn: highPeakV / build.secondaryTurns,
    massKg: stackMassKg(core, build.count) + windings.conductorLengthM * WIRE.massKgPerM,
    shortfalls: (Object.keys(uses) as TransformerShortfall[]).filter((key) => uses[key] > 1),
    excess: Math.max(...Object.values(uses)),
  };
}

/** Turns that pass the hole: an autotransformer's high side contains its low side. */
const turnsInHole = (winding: WindingKind, { primaryTurns, secondaryTurns }: TransformerBuild): number =>
  winding === 'auto' ? secondaryTurns : primaryTurns + secondaryTurns;

export const fitsInHole = (winding: WindingKind, core: RingSize, build: TransformerBuild): boolean =>
  turnsInHole(winding, build) <= turnsThatFit(core, WIRE.outerM);

/** Wires wound as one when the turns ratio is 2 or 3 and the windings join; otherwise two windings. */
function windingsOf(need: TransformerNeed, core: Core, build: TransformerBuild): Windings {
  const { primaryTurns, secondaryTurns, count } = build;
  const turnsRatio = secondaryTurns / primaryTurns;
  const strands = need.winding === 'auto' && (turnsRatio === 2 || turnsRatio === 3) ? turnsRatio : 1;
  const turnM = turnLengthM(core, count, WIRE.outerM);
  const pieces = strands > 1 ? strands : 2;
  const woundTurns = turnsInHole(need.winding, build);
  return {
    strands,
    primaryLengthM: primaryTurns * turnM,
    secondaryLengthM: secondaryTurns * turnM,
    conductorLengthM: conductorLengthM(core, count, woundTurns, WIRE.outerM, pieces * TAIL_M),
  };
}

function modelOf(need: TransformerNeed, core: Core, build: TransformerBuild, windings: Windings): TransformerModel {
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

/** The capacitor that cancels what is left of the leakage at the highest frequency into the nominal load, in values that are sold. */
function capacitorFor(need: TransformerNeed, core: Core, model: TransformerModel): number {
  const hz = Math.max(...need.points.map((point) => point.hz));
  const { input } = transformerState(model, muAt(core.mix, hz), hz, complex(need.lineOhm * ratioOf(model)));
  const wantedPf = (input.im / (input.re ** 2 + input.im ** 2) / (2 * Math.PI * hz)) * 1e12;
  return CAPACITORS_PF.reduce((best, pf) => (Math.abs(pf - wantedPf) < Math.abs(best - wantedPf) ? pf : best));
}

const ratioOf = ({ primaryTurns, secondaryTurns }: TransformerModel): number => (secondaryTurns / primaryTurns) ** 2;

function pointOf(
  need: TransformerNeed,
  core: Core,
  model: TransformerModel,
  windings: Windings,
  surfaceM2: number,
  { hz, load }: TransformerNeed['points'][number],
): TransformerPoint {
  const mu: Permeability = muAt(core.mix, hz);
  const real = transformerState(model, mu, hz, load);
  const nominal = transformerState(model, mu, hz, complex(need.lineOhm * need.ratio));
  const averageW = need.powerW * need.averageFactor;
  const coreHeatW = averageW * real.coreShare;
  const copperHeatW = averageW * real.copperShare;
  const peakRootW = Math.sqrt(2 * need.powerW);
  return {
    hz,
    input: real.input,
    swr: swr(real.input, need.lineOhm),
    swrNominal: swr(nominal.input, need.lineOhm),
    lossDb: real.lossDb,
    lossNominalDb: nominal.lossDb,
    coreHeatW,
    copperHeatW,
    riseK: temperatureRiseK(coreHeatW + copperHeatW, surfaceM2, need.housing),
    fluxDensityT: transformerFluxT(model, real, hz, need.powerW),
    lowPeakV: real.lowVPerRootW * peakRootW,
    highPeakV: real.highVPerRootW * peakRootW,
    capacitorA: capacitorA(model, real, hz, need.powerW),
    windingWavelengths: (windings.secondaryLengthM * hz) / C0,
  };
}
