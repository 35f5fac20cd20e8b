/**
 * Loss of a transformer and impedance of a choke over a range of frequencies, with what the tolerances of the core allow: for plots.
 * µ′ and µ″ are taken at their corners apart; the limits are those of transformer.ts and choke.ts.
 */
import { type Complex, complex } from '../base/complex';
import { coreOf } from '../catalog/cores';
import { muAt } from '../catalog/ferrites';
import { bandsInSeries, chokeBand, chokeImpedance, type ImpedanceBand, inSeries } from './choke';
import type { ChokeBuild } from './choke-need';
import { permeabilityTolerance } from './core-tolerance';
import { swr } from './line';
import { highSideInput, type TransformerModel, transformerState } from './transformer';
import type { TransformerDesign, TransformerNeed } from './transformer-need';
import { modelOf, windingsOf } from './transformer-windings';

export interface LossPoint {
  readonly hz: number;
  readonly lossDb: number;
  /** Least and most that the core's tolerance allows. */
  readonly lossRangeDb: readonly [number, number];
  /** On the line, into the load that the ratio is made for. */
  readonly swr: number;
}

function designModel(need: TransformerNeed, design: TransformerDesign): TransformerModel {
  const core = coreOf(design.core);
  const bare = modelOf(need, core, design, windingsOf(need, core, design));
  return { ...bare, compensationF: design.capacitorPf * 1e-12 };
}

/** What a design shows of any load, at any frequency of the permeability tables. */
export function transformerInput(
  need: TransformerNeed,
  design: TransformerDesign,
): (hz: number, load: Complex) => Complex {
  const model = designModel(need, design);
  const { mix } = coreOf(design.core);
  return (hz, load) => transformerState(model, muAt(mix, hz), hz, load).input;
}

/** The same from the high side, of a load on the low one. */
export function transformerHighInput(
  need: TransformerNeed,
  design: TransformerDesign,
): (hz: number, load: Complex) => Complex {
  const model = designModel(need, design);
  const { mix } = coreOf(design.core);
  return (hz, load) => highSideInput(model, muAt(mix, hz), hz, load);
}

/** Into the load that the ratio is made for. */
export function transformerCurve(
  need: TransformerNeed,
  design: TransformerDesign,
  hzs: readonly number[],
): LossPoint[] {
  const load = complex(need.lineOhm * need.ratio);
  return transformerLosses(
    need,
    design,
    hzs.map((hz) => ({ hz, load })),
  );
}

/** Into any load at each frequency. */
export function transformerLosses(
  need: TransformerNeed,
  design: TransformerDesign,
  points: TransformerNeed['points'],
): LossPoint[] {
  const core = coreOf(design.core);
  const model = designModel(need, design);
  const { below, above } = permeabilityTolerance(core);
  const parts = [1 - below, 1 + above];
  return points.map(({ hz, load }) => {
    const { muReal, muImag } = muAt(core.mix, hz);
    const nominal = transformerState(model, { muReal, muImag }, hz, load);
    const corners = parts.flatMap((real) =>
      parts.map((loss) => transformerState(model, { muReal: muReal * real, muImag: muImag * loss }, hz, load).lossDb),
    );
    const range = [Math.min(...corners), Math.max(...corners)] as const;
    return { hz, lossDb: nominal.lossDb, lossRangeDb: range, swr: swr(nominal.input, need.lineOhm) };
  });
}

export interface ImpedancePoint extends ImpedanceBand {
  readonly hz: number;
}

export function chokeCurve(
  { core: id, count, turns, conductor }: ChokeBuild,
  hzs: readonly number[],
): ImpedancePoint[] {
  const core = coreOf(id);
  const tolerance = permeabilityTolerance(core);
  return hzs.map((hz) => {
    const mu = muAt(core.mix, hz);
    const windings = turns.map((n) => chokeBand({ ring: core, count, turns: n, conductor }, mu, hz, tolerance));
    return { hz, ...bandsInSeries(windings) };
  });
}

/** Where in its tolerance a core lies: µ′ and µ″ together. */
export const coreLots = ['low', 'nominal', 'high'] as const;
export type CoreLot = (typeof coreLots)[number];

/** Common-mode impedance of a build at any frequency of the permeability tables. */
export function chokeAt({ core: id, count, turns, conductor }: ChokeBuild): (hz: number, lot: CoreLot) => Complex {
  const core = coreOf(id);
  const { below, above } = permeabilityTolerance(core);
  const parts: Readonly<Record<CoreLot, number>> = { low: 1 - below, nominal: 1, high: 1 + above };
  return (hz, lot) => {
    const { muReal, muImag } = muAt(core.mix, hz);
    const mu = { muReal: muReal * parts[lot], muImag: muImag * parts[lot] };
    return inSeries(turns.map((n) => chokeImpedance({ ring: core, count, turns: n, conductor }, mu, hz)));
  };
}
