/**
 * One transformer build on one need: loss, standing-wave ratio, heat, flux, volts, band by band, and which limit it overruns.
 *
 * Limits used, all common practice without a source: 1 dB of loss and SWR 1.5 into the load the ratio is made for, 40 K of rise, half of
 * the flux density at the maker's test field, a quarter-wave of wire on the high side.
 */
import { complex } from '../base/complex';
import { C0 } from '../base/constants';
import type { CoreSize, Mix } from '../catalog/core-ids';
import { type Core, coreOf } from '../catalog/cores';
import { ferrites, muAt, type Permeability } from '../catalog/ferrites';
import { heatForRiseW, RISE_LIMIT_K, temperatureRiseK } from './core-heat';
import { permeabilityTolerance } from './core-tolerance';
import { LEAKAGE_FACTOR } from './leakage';
import { swr } from './line';
import { powerByMode } from './mode-power';
import { stackMassKg, stackSurfaceM2 } from './toroid';
import { capacitorA, type TransformerModel, transformerFluxT, transformerState } from './transformer';
import {
  type TransformerBuild,
  type TransformerDesign,
  type TransformerNeed,
  type TransformerPoint,
  type TransformerShortfall,
  transformerShortfalls,
} from './transformer-need';
import { fitsInHole, modelOf, WINDING_WIRE, WIRE, type Windings, windingsOf } from './transformer-windings';

export const MAX_LOSS_DB = 1;
export const MAX_SWR = 1.5;
const MAX_WINDING_WAVELENGTHS = 0.25;
const FLUX_PART = 0.5;
/** Values that capacitors are sold in, pF. */
export const CAPACITORS_PF = [0, 22, 33, 47, 56, 68, 82, 100, 120, 150, 180, 220, 270, 330] as const;

interface Assembly {
  readonly core: Core;
  readonly windings: Windings;
  readonly model: TransformerModel;
  readonly capacitorPf: number;
  readonly surfaceM2: number;
  readonly massKg: number;
}

/** What a search compares: how a build stands, without the figures behind it. */
export interface TransformerSketch {
  readonly build: TransformerBuild;
  readonly mix: Mix;
  readonly size: CoreSize;
  readonly coreCount: number;
  readonly massKg: number;
  readonly riseK: number;
  readonly excess: number;
  readonly shortage: number;
}

/** Judge one build. `capacitorPf` is chosen when left out. */
export function evaluateTransformer(
  need: TransformerNeed,
  build: TransformerBuild,
  capacitorPf?: number,
): TransformerDesign {
  const assembly = assemble(need, coreOf(build.core), build, capacitorPf);
  const { core, windings, surfaceM2 } = assembly;
  const points = need.points.map((point) => pointOf(need, assembly, point, muAt(core.mix, point.hz)));
  const worst = (of: (point: TransformerPoint) => number): number => Math.max(...points.map(of));
  const heatW = worst((point) => point.coreHeatW + point.copperHeatW);
  const continuousW = (need.powerW * need.averageFactor * heatForRiseW(RISE_LIMIT_K, surfaceM2, need.housing)) / heatW;
  const uses = points.map((point) => usesOf(core, point));
  const fits = fitsInHole(need.winding, core, build.primaryTurns, build.secondaryTurns);
  const highPeakV = worst((point) => point.highPeakV);
  const fluxLimitW = need.powerW / Math.max(...uses.map((use) => use.flux)) ** 2;
  return {
    ...build,
    ratio: (build.secondaryTurns / build.primaryTurns) ** 2,
    winding: need.winding,
    ...windings,
    conductor: WINDING_WIRE,
    capacitorPf: assembly.capacitorPf,
    leakageH: assembly.model.leakageH,
    leakageFactor: LEAKAGE_FACTOR,
    points,
    heatW,
    riseK: temperatureRiseK(heatW, surfaceM2, need.housing),
    riseWorstK: temperatureRiseK(heatW * (1 + permeabilityTolerance(core).above), surfaceM2, need.housing),
    continuousW,
    safePowerW: Math.min(continuousW / need.averageFactor, fluxLimitW),
    safePowerByMode: powerByMode(continuousW, fluxLimitW),
    fluxLimitW,
    surfaceM2,
    highPeakV,
    peakVPerTurn: highPeakV / build.secondaryTurns,
    massKg: assembly.massKg,
    shortfalls: transformerShortfalls.filter((key) =>
      key === 'does-not-fit' ? !fits : uses.some((use) => use[key] > 1),
    ),
    excess: fits ? Math.max(...uses.flatMap((use) => Object.values(use))) : Number.POSITIVE_INFINITY,
  };
}

/** How far from meeting a need: what less power does not cure weighs more. 1 is met. */
const shortageOf = (electrical: number, power: number): number => Math.max(1, electrical) ** 3 * Math.max(1, power);

/** The same in short, for a build that fits; undefined as soon as its shortage is more than `worth`. `mus` belong to the need's points. */
export function sketchTransformer(
  need: TransformerNeed,
  core: Core,
  build: TransformerBuild,
  mus: readonly Permeability[],
  worth: number,
): TransformerSketch | undefined {
  const assembly = assemble(need, core, build);
  const { massKg } = assembly;
  let riseK = 0;
  let electrical = 0;
  let power = 0;
  for (const [i, at] of need.points.entries()) {
    const point = pointOf(need, assembly, at, mus[i] as Permeability);
    riseK = Math.max(riseK, point.riseK);
    const { loss, swr: mismatch, heat, flux, 'winding-too-long': length } = usesOf(core, point);
    electrical = Math.max(electrical, loss, mismatch, length);
    power = Math.max(power, heat, flux);
    if (shortageOf(electrical, power) > worth) return undefined;
  }
  const excess = Math.max(electrical, power);
  const { mix, size } = core;
  return { build, mix, size, coreCount: build.count, massKg, riseK, excess, shortage: shortageOf(electrical, power) };
}

function assemble(need: TransformerNeed, core: Core, build: TransformerBuild, capacitorPf?: number): Assembly {
  const windings = windingsOf(need, core, build);
  const bare = modelOf(need, core, build, windings);
  const chosenPf = capacitorPf ?? capacitorFor(need, core, bare);
  return {
    core,
    windings,
    model: { ...bare, compensationF: chosenPf * 1e-12 },
    capacitorPf: chosenPf,
    surfaceM2: stackSurfaceM2(core, build.count),
    massKg: stackMassKg(core, build.count) + windings.conductorLengthM * WIRE.massKgPerM,
  };
}

/** Part used of each limit at one frequency. */
const usesOf = (
  core: Core,
  point: TransformerPoint,
): Record<Exclude<TransformerShortfall, 'does-not-fit'>, number> => ({
  loss: point.lossNominalDb / MAX_LOSS_DB,
  swr: point.swrNominal / MAX_SWR,
  heat: point.riseK / RISE_LIMIT_K,
  flux: point.fluxDensityT / (FLUX_PART * ferrites[core.mix].saturation100CT.value),
  'winding-too-long': point.windingWavelengths / MAX_WINDING_WAVELENGTHS,
});

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
  { model, windings, surfaceM2 }: Assembly,
  { hz, load }: TransformerNeed['points'][number],
  mu: Permeability,
): TransformerPoint {
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
